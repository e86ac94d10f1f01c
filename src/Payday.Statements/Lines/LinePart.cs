using Payday.Core.Amounts;

namespace Payday.Statements.Lines;

/// <summary>One payment within a line that stands for several.</summary>
/// <param name="Amount">Signed like its line's amount.</param>
/// <param name="Party">The other side's name; may be empty.</param>
/// <param name="Text">What it is for; may be empty.</param>
public sealed record LinePart(Money Amount, string Party, string Text);
