using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;

namespace Payday.Core.Status;

/// <summary>A debt at a glance: what is owed, and how far it has come since the household began to write it down.</summary>
/// <param name="Debt">The debt.</param>
/// <param name="Balance">What is owed, zero or more.</param>
/// <param name="AtStart">What was owed then.</param>
public sealed record DebtGlance(Debt Debt, Money Balance, Money AtStart)
{
    /// <summary>How much less is owed than at the start; zero where it is more.</summary>
    public Money Paid => (AtStart - Balance).ClampToZero();

    /// <summary>How much of it is paid, in hundredths, rounded down; 0 to 100.</summary>
    public int Percent => !Balance.IsPositive ? 100 : AtStart.IsPositive ? (int)((Int128)Paid.MinorUnits * 100 / AtStart.MinorUnits) : 0;

    /// <summary>All debts of a book, in the household's order.</summary>
    public static ImmutableArray<DebtGlance> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return
        [
            .. book.Household.Debts.Select(debt => new DebtGlance(debt, book.Ledger.Balances.OwedOn(debt.Id), debt.Opening)),
        ];
    }
}
