using System.Collections.Immutable;

namespace Payday.Core.CardPurchases;

/// <summary>A row of a list, split into cells.</summary>
/// <param name="Number">The line of the text at which it begins, from 1.</param>
/// <param name="Text">The row as it was, with its quotes and separators.</param>
/// <param name="Cells">Its cells without the quotes around them, in their order; an empty cell is an empty text.</param>
public sealed record ListRow(int Number, string Text, ImmutableArray<string> Cells);
