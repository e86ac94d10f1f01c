using Payday.Core.Counts;
using Payday.Core.Pots;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Shell;

namespace Payday.Screens.Counts;

/// <summary>Where what is left of a counted pot can go.</summary>
internal static class CountTargets
{
    /// <summary>All there are, to pick one; null is the pot itself.</summary>
    /// <param name="session">Whose pots and debts.</param>
    /// <param name="row">The pot that was counted.</param>
    /// <param name="picked">What becomes of the one picked.</param>
    public static PickScreen<MoveTarget?> Picks(BookSession session, CountRow row, Func<MoveTarget?, Way> picked) => new(
        $"What is left of {row.Pot.Name}",
        [
            new PickItem<MoveTarget?>(null, "Stays in the pot", ""),
            new PickItem<MoveTarget?>(MoveTarget.Buffer, "The account's buffer", "account"),
            .. session.Book.Household.Debts.Where(debt => session.Book.Ledger.Balances.OwedOn(debt.Id).IsPositive).Select(debt => new PickItem<MoveTarget?>(MoveTarget.Debt(debt.Id), debt.Name, "debt")),
            .. session.Book.Household.Pots.Where(pot => pot.Id != row.Pot.Id)
                .Select(pot => new PickItem<MoveTarget?>(MoveTarget.Pot(pot.Id), pot.Name, "pot, " + PotsReport.Place(pot))),
        ],
        row.MovesOnTo,
        picked);
}
