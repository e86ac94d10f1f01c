using System.Collections.Immutable;

namespace Payday.Statements.Files;

/// <summary>What to ask about a file, with the readings that are possible.</summary>
/// <param name="Kind">What is asked.</param>
/// <param name="Line">The line of the file that shows it, from 1; the first, where several do.</param>
/// <param name="Written">What stands there; rows are parted by a slash between blanks.</param>
/// <param name="Choices">The readings; one alone is to be confirmed.</param>
public sealed record CsvQuestion(CsvQuestionKind Kind, int Line, string Written, ImmutableArray<CsvChoice> Choices);
