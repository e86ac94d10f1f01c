using Payday.Core.Books;
using Payday.Core.Ledgers;

namespace Payday.Store.Checks;

/// <summary>Looks for what has less than nothing: versions before this check let it come to that.</summary>
internal static class BalanceCheck
{
    /// <summary>What is below zero and may not be.</summary>
    public static IEnumerable<Finding> Of(Book book) => LedgerCheck
        .Overdrawn(book.Ledger.Balances)
        .Select(fault => new Finding(CheckPart.Ledger, new CheckFault.BelowZero(fault, book.Household.Settings.Numbers), null, new Remedy.NextPayday()));
}
