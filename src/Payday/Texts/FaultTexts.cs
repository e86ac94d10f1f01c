using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.HouseholdChanges;
using Payday.Core.ItemLines;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Outlooks;
using Payday.Core.Receiving;
using Payday.Core.Reconciling;
using Payday.Core.Routines;
using Payday.Core.StatementTaking;
using Payday.Core.Undo;
using Payday.Statements.Taking;
using Payday.Store.Files;
using Payday.Store.Texts;

namespace Payday.Texts;

/// <summary>What a screen says of a fault: each feature's texts are in a file of their own, and all are reached from here.</summary>
internal static class FaultTexts
{
    /// <summary>What is wrong and how to mend it, in one sentence.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="style">How the household writes numbers.</param>
    public static string Of(Fault fault, NumberStyle style = default) => fault switch
    {
        AmountFault amount => AmountTexts.Of(amount),
        DateFault date => DateTexts.Of(date),
        NoteFault note => NoteTexts.Of(note, style),
        LedgerFault ledger => LedgerTexts.Of(ledger, style),
        Obstacle obstacle => UndoTexts.Of(obstacle, style),
        FillFault fill => FillTexts.Of(fill, style),
        ReceivingFault receiving => ReceivingTexts.Of(receiving, style),
        CountFault count => CountTexts.Of(count, style),
        ReturnFault cash => ReturnTexts.Of(cash, style),
        ReconcileFault reconcile => ReconcileTexts.Of(reconcile),
        PurchaseFault purchase => PurchaseTexts.Of(purchase, style),
        ListFault list => PurchaseTexts.Of(list, style),
        TakingFault taking => TakingTexts.Of(taking, style),
        PlanFault plan => TakingTexts.Of(plan, style),
        DueFault due => DueTexts.Of(due, style),
        MoveFault move => MoveTexts.Of(move, style),
        EntryFault entry => EntryTexts.Of(entry, style),
        RoutineFault routine => RoutineTexts.Of(routine, style),
        SinkingFault sinking => RoutineTexts.Of(sinking),
        Dropped dropped => RoutineTexts.Of(dropped, style),
        OddPeriod odd => OddPeriodTexts.Of(odd),
        ClosingFault closing => ClosingTexts.Of(closing, style),
        ReopeningFault reopening => ClosingTexts.Of(reopening, style),
        UndoingFault undoing => ClosingTexts.Of(undoing, style),
        StoreFault store => StoreTexts.Of(store),
        ChangeFault change => ChangeTexts.Of(change, style),
        LineFault line => LineTexts.Of(line),
        OutlookFault outlook => OutlookTexts.Of(outlook),
        EdgeFault edge => EdgeTexts.Of(edge, style),
        FileThere there => there.Saying("give another name, or say that it may be replaced"),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>The sentences of all, one after the other.</summary>
    /// <param name="faults">The faults, the first thing to mend first.</param>
    /// <param name="style">How the household writes numbers.</param>
    public static string Of(IEnumerable<Fault> faults, NumberStyle style = default) => string.Join(' ', faults.Select(fault => Of(fault, style)));
}
