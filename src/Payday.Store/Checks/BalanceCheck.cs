using Payday.Core.Books;
using Payday.Core.Ledgers;

using Payday.Store.Texts;

namespace Payday.Store.Checks;

/// <summary>Looks for what has less than nothing: versions before this check let it come to that.</summary>
internal static class BalanceCheck
{
    /// <summary>What is below zero and may not be.</summary>
    public static IEnumerable<Finding> Of(Book book) => LedgerCheck
        .Overdrawn(book.Ledger.Balances)
        .Select(fault => new Finding("ledger", LedgerTexts.Of(fault, book.Household.Settings.Numbers), "", "The next payday makes it good first, from what comes in or from the buffer."));
}
