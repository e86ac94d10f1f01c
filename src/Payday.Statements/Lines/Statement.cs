using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Statements.Lines;

/// <summary>What the bank sent of one account and one period.</summary>
/// <param name="Format">What it came in.</param>
/// <param name="Currency">The account's currency; all lines are in it.</param>
public sealed record Statement(StatementFormat Format, Currency Currency)
{
    /// <summary>The account's number as the file writes it, without blanks; empty where it doesn't say.</summary>
    public string Account { get; init; } = "";

    /// <summary>The bank's name for the statement; may be empty.</summary>
    public string Id { get; init; } = "";

    /// <summary>The statement's number in the bank's sequence; null where there is none.</summary>
    public long? Number { get; init; }

    /// <summary>Whether it is of a card: what is owed is below zero.</summary>
    public bool IsCard { get; init; }

    /// <summary>The first day: stated, else of the first line or balance; null where nothing says.</summary>
    public LocalDate? From { get; init; }

    /// <summary>The last day: stated, else of the last line or balance; null where nothing says.</summary>
    public LocalDate? To { get; init; }

    /// <summary>The booked balance before the first line; null where the format or the file has none.</summary>
    public Balance? Opening { get; init; }

    /// <summary>The booked balance after the last line; in OFX the ledger balance. Null where there is none that can be used.</summary>
    public Balance? Closing { get; init; }

    /// <summary>The booked lines, oldest first; lines of one day in the order of the bank. Only they count.</summary>
    public ImmutableArray<StatementLine> Lines { get; init; } = [];

    /// <summary>Lines that aren't on the account yet: they are shown and never count.</summary>
    public ImmutableArray<StatementLine> Pending { get; init; } = [];

    /// <summary>How many booked lines couldn't be read and are not among the lines; each has its fault.</summary>
    public int LinesLeftOut { get; init; }
}
