using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Core.BankLines;

/// <summary>What the bank would show as one line: one income, one payment, one whole withdrawal, one deposit.</summary>
/// <param name="Number">The number of its first movement, by which it is known.</param>
/// <param name="Date">The day on which it happened; the bank's may be a few days later.</param>
/// <param name="Amount">Above zero what came into the account, below what left it; never zero.</param>
/// <param name="Kind">What the bank would call it.</param>
/// <param name="Other">The end outside the account of its first movement.</param>
/// <param name="What">What it was, in the words of its record or of the ledger.</param>
/// <param name="Payday">The payday that wrote it, or null.</param>
/// <param name="Cheque">The number of the cheque it was paid by, or null.</param>
/// <param name="Movements">The numbers of its movements, rising.</param>
public sealed record AccountLine(
    long Number,
    LocalDate Date,
    Money Amount,
    AccountLineKind Kind,
    LedgerEnd Other,
    string What,
    LocalDate? Payday,
    long? Cheque,
    ImmutableArray<long> Movements)
{
    /// <summary>Where the rest was spent, of a purchase over several pots; empty for one.</summary>
    public ImmutableArray<LedgerEnd> Further { get; init; } = [];
}
