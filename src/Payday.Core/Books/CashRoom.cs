using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>How much cash an account with an overdraft can give.</summary>
/// <remarks>
/// Common practice, no source: a bank gives cash up to the balance and as far below zero as it has agreed to, while a payment
/// that was ordered may go through or come back, at its terms. So cash is held to this, and payments are not: that one has
/// left the account is for the person to say.
/// </remarks>
public static class CashRoom
{
    /// <summary>What the account can give in cash; null where no overdraft limits it.</summary>
    public static Money? Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Of(book.Ledger.Balances, book.Household.Settings);
    }

    internal static Money? Of(Balances balances, HouseholdSettings settings) => balances.Overdrawn.IsZero
        ? null
        : (balances.In(Place.Account) + (settings.Overdraft ?? Money.Zero(balances.Currency))).ClampToZero();
}
