using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.CashReturns;

/// <summary>Cash that a pot owes the account and that is not there yet.</summary>
/// <param name="Key">What it is owed for.</param>
/// <param name="PotId">The pot.</param>
/// <param name="Date">The day of the purchase, the count or the move.</param>
/// <param name="What">What was bought, or why it was moved; empty for what moves on.</param>
/// <param name="Amount">The cash owed at first.</param>
/// <param name="Left">The cash still owed, above zero.</param>
/// <param name="Short">
/// For a purchase what the account is still short of, zero or more; the rest of <paramref name="Left"/> is rounding,
/// and goes to the buffer.
/// </param>
/// <param name="Target">For what moves on: where to.</param>
public sealed record OwedItem(
    OwedKey Key,
    PotId PotId,
    LocalDate Date,
    string What,
    Money Amount,
    Money Left,
    Money Short,
    MoveTarget? Target)
{
    /// <summary>For what was moved: the purpose in the account, or the debt, that gets it; for what a card bought that is a debt where it waits for that; null else.</summary>
    public LedgerEnd? To { get; init; }
}
