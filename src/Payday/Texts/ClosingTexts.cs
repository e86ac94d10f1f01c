using Payday.Core.Amounts;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Pots;
using Payday.Store.Texts;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a payday that can't be closed or reopened, and of a movement that isn't undone alone.</summary>
internal static class ClosingTexts
{
    /// <summary>One sentence, as a screen says it.</summary>
    public static string Of(ClosingFault fault, NumberStyle style) => fault switch
    {
        ClosingFault.BufferAsked asked => Asked(asked, "say in the Income step what it gives", style),
        ClosingFault.BufferHasLess less => $"The buffer has {less.Has.ToString(style)}, so it can't give {less.Gives.ToString(style)}.",
        ClosingFault.BufferGivesBelowZero => "What the buffer gives is below zero; place what it is to get in the Surplus step.",
        ClosingFault.CantPay cant => CantPay(cant.Unpayable, style),
        ClosingFault.LeftToPlace left => $"{left.Amount.ToString(style)} is left to place.",
        ClosingFault.PlacedTooMuch more => $"{more.Amount.ToString(style)} more is placed than there is.",
        ClosingFault.IncomeBelowZero => "An income is below zero.",
        ClosingFault.FillBelowZero => "A fill is below zero.",
        ClosingFault.MoreThanOwed more => $"More is placed on {more.Debt} than is owed.",
        ClosingFault.AccountHasLess less => $"{less.Amount.ToString(style)} is withdrawn, and with what is left of the overdraft the account gives {less.Has.ToString(style)} in cash at most; pay off more of it, lower a cash pot, or enter in the household how far below zero the bank lets the account go.",
        ClosingFault.NotesAbove notes => $"The notes for {notes.Pot} are {notes.Amount.ToString(style)} more than it has.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>All of them, one after the other, as a command says them.</summary>
    public static string ForCommands(IEnumerable<Fault> faults, NumberStyle style) => string.Join(' ', faults.Select(fault => fault is ClosingFault.BufferAsked asked
        ? Asked(asked, "say in the Income step, or with --buffer AMOUNT, what it gives", style)
        : FaultTexts.Of(fault, style)));

    /// <summary>The question of what the buffer gives, with the way in which it is answered here.</summary>
    public static string Asked(ClosingFault.BufferAsked asked, string way, NumberStyle style) =>
        $"The payday is {asked.Short.ToString(style)} short, and the buffer has {asked.Has.ToString(style)}: {way}; 0 gives nothing."
        + (asked.IsAll ? "" : " Without it:");

    private static string CantPay(Unpayable unpayable, NumberStyle style) => unpayable.Obligation is { Kind: ObligationKind.Pot } pot
        ? $"{Name(pot)} can't be filled: {unpayable.Short.ToString(style)} of its {pot.Amount.ToString(style)} is not there; lower it by hand."
        : $"{Name(unpayable.Obligation)} can't be paid in full: {unpayable.Short.ToString(style)} short by {DateText.Day(unpayable.Obligation.Due)}.";

    /// <summary>What an obligation is called.</summary>
    public static string Name(Obligation obligation) => (obligation.IsOverdrawn, obligation.Name) switch
    {
        (true, "") => "What was placed before",
        (true, var name) => $"{name}, paid beyond what was set aside,",
        (_, var name) => name,
    };

    /// <summary>One sentence or two.</summary>
    public static string Of(ReopeningFault fault, NumberStyle style) => fault switch
    {
        ReopeningFault.NoneClosed => "No payday has been closed yet, so there is none to reopen.",
        ReopeningFault.Unsound unsound => $"The payday of {DateText.Day(unsound.Payday)} can't be reopened. {LedgerTexts.Of(unsound.Why, style)}",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>One sentence.</summary>
    public static string Of(UndoingFault fault, NumberStyle style) => fault switch
    {
        UndoingFault.ReasonLength reason => $"Say why it is undone, in 1 to {reason.Most} characters.",
        UndoingFault.MovesNotes moves => $"Ledger line {moves.Number} moves notes, so it isn't undone alone; reopen its payday, or count the pot instead.",
        UndoingFault.IsOpening opening => $"Ledger line {opening.Number} is an opening balance; until a payday is closed or a pot counted, correct it in the household, under Opening balances.",
        UndoingFault.GoneOn gone =>
            $"Part of that money has gone on since: undoing it would leave {gone.Rest.ToString(style)} there; undo first what took it.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
