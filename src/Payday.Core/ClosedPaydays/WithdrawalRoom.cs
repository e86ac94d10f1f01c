using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>What the account can give for a payday's withdrawal, once all else of the day has come in and gone out.</summary>
/// <param name="Asked">What is withdrawn.</param>
/// <param name="Has">What the account can give, zero or more; see <see cref="CashRoom"/>.</param>
public sealed record WithdrawalRoom(Money Asked, Money Has)
{
    /// <summary>Whether more is asked for than the account can give.</summary>
    public bool IsTooLittle => Asked > Has;

    /// <summary>Of a payday; null where no overdraft limits what is withdrawn.</summary>
    public static WithdrawalRoom? Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Income.Overdraft.Rest.IsZero)
        {
            return null;
        }

        Money asked = plan.Withdrawal.Plan.WithdrawTotal;
        Book book = plan.Book;
        Money limit = book.Household.Settings.Overdraft ?? Money.Zero(asked.Currency);
        Money after = book.Ledger.Balances.After([.. ClosingMovements.Of(plan)]).In(Place.Account);
        return new WithdrawalRoom(asked, (after + asked + limit).ClampToZero());
    }
}
