using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Statements.Lines;

/// <summary>One line of a statement, as the bank shows it.</summary>
/// <remarks>All texts are in one line, free of control characters, and empty where the bank gives none.</remarks>
/// <param name="Date">The booking date as the bank wrote it; no time zone moves it.</param>
/// <param name="Amount">Above zero comes in, below zero goes out.</param>
public sealed record StatementLine(LocalDate Date, Money Amount)
{
    /// <summary>The day from which the bank counts interest; null where it doesn't say.</summary>
    public LocalDate? ValueDate { get; init; }

    /// <summary>What the bank says of its kind.</summary>
    public LineKind Kind { get; init; }

    /// <summary>The other side's name.</summary>
    public string Party { get; init; } = "";

    /// <summary>The other side's account.</summary>
    public string PartyAccount { get; init; } = "";

    /// <summary>What it is for, the parts in the file's order.</summary>
    public string Text { get; init; } = "";

    /// <summary>The mandate or the creditor's identifier of a direct debit: the strongest sign of a bill.</summary>
    public string Mandate { get; init; } = "";

    /// <summary>The bank's own reference. Banks change and reuse it: alone it neither parts nor joins two lines.</summary>
    public string BankId { get; init; } = "";

    /// <summary>The payer's or payee's reference.</summary>
    public string Reference { get; init; } = "";

    /// <summary>The number of a cheque.</summary>
    public string ChequeNumber { get; init; } = "";

    /// <summary>Whether it undoes an earlier line, by the bank's mark.</summary>
    public bool IsReversal { get; init; }

    /// <summary>How many payments it stands for; 1 but for a batch.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The payments of a batch, where the bank gives all of them and they add up to the amount; else empty.</summary>
    public ImmutableArray<LinePart> Parts { get; init; } = [];

    /// <summary>The account's balance after it, where the file has such a column.</summary>
    public Money? BalanceAfter { get; init; }

    /// <summary>The line of the file where it begins, from 1.</summary>
    public int Place { get; init; }
}
