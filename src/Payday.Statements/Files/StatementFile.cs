using System.Collections.Immutable;
using Payday.Statements.Faults;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Files;

/// <summary>What was found in one file.</summary>
/// <param name="Statements">One for each account and period, in the file's order; none where it couldn't be read or asks first.</param>
/// <param name="Faults">What is wrong and what was noticed, in the file's order.</param>
public sealed record StatementFile(ImmutableArray<Statement> Statements, ImmutableArray<StatementFault> Faults)
{
    /// <summary>What only the person can say before the file can be read; none where all was found. Only CSV asks.</summary>
    public ImmutableArray<CsvQuestion> Questions { get; init; } = [];

    /// <summary>How a CSV file was read, to be kept for its account; null for other formats and while something is asked.</summary>
    public CsvProfile? Profile { get; init; }

    /// <summary>A file that couldn't be read.</summary>
    internal static StatementFile Refused(FaultKind kind, int line = 0, string found = "", string wanted = "") =>
        new([], [new StatementFault(kind, line, CleanText.Echo(found), wanted)]);
}
