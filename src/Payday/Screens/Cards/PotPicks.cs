using System.Collections.Immutable;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Screens.Shell;

namespace Payday.Screens.Cards;

/// <summary>What a card purchase can be for and be paid by, to pick from.</summary>
internal static class PotPicks
{
    /// <summary>The pots in their order, and the buffer.</summary>
    public static ImmutableArray<PickItem<PotId?>> Of(BookSession session) =>
    [
        .. session.Book.Household.Pots.Select(pot => new PickItem<PotId?>(pot.Id, pot.Name, PotsReport.Place(pot))),
        new PickItem<PotId?>(null, "Buffer", "account"),
    ];

    /// <summary>The account, and the debts whose cards can have paid.</summary>
    public static ImmutableArray<PickItem<DebtId?>> Cards(BookSession session) =>
    [
        new PickItem<DebtId?>(null, "the account", "its card"),
        .. session.Book.Household.Debts.Select(debt => new PickItem<DebtId?>(debt.Id, debt.Name, "a debt's card")),
    ];
}
