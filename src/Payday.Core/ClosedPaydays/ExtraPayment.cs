using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>What a payday pays on debts above their minimums. No due reminds of it: the person has to make the payment.</summary>
/// <param name="DebtId">The debt.</param>
/// <param name="Amount">Above zero.</param>
public sealed record ExtraPayment(DebtId DebtId, Money Amount)
{
    /// <summary>Those of a payday that is closed; of one that isn't yet, as it stands.</summary>
    /// <param name="book">The book.</param>
    /// <param name="payday">Its record, or what closing it would leave (<see cref="ClosingRecord.AsPlanned"/>).</param>
    /// <returns>In the order in which they were placed.</returns>
    public static ImmutableArray<ExtraPayment> Of(Book book, ClosedPayday payday)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(payday);
        return payday.LastMovement < payday.FirstMovement
            ? Planned(book, payday.Draft)
            :
            [
                .. book.Ledger.Movements
                    .Skip((int)payday.FirstMovement - 1)
                    .Take((int)(payday.LastMovement - payday.FirstMovement + 1))
                    .Where(movement => movement.From == LedgerEnd.InAccount(Purpose.LeftToPlace) && movement.To is LedgerEnd.Owed && book.Ledger.Stands(movement))
                    .Select(movement => new ExtraPayment(((LedgerEnd.Owed)movement.To).DebtId, movement.Amount)),
            ];
    }

    private static ImmutableArray<ExtraPayment> Planned(Book book, RoutineDraft draft) => Routine.Plan(book, draft) is { Ok: true, Value: { } plan }
        ? [.. plan.Surplus.Placements.Where(one => one.Target is MoveTarget.ToDebt && one.Amount.IsPositive).Select(one => new ExtraPayment(((MoveTarget.ToDebt)one.Target).Id, one.Amount))]
        : [];
}
