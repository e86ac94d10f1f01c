using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of account entries that can't be made, and of their kinds.</summary>
internal static class EntryTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(EntryFault fault, NumberStyle style) => fault switch
    {
        EntryFault.Zero => "Write an amount above zero.",
        EntryFault.BeforeStart before => $"{DateText.Day(before.Date)} is before the household began, {DateText.Day(before.Start)}.",
        EntryFault.WrongWay wrong => $"{Kind(wrong.Kind)} never {(wrong.ComesIn ? "comes in" : "goes out")}; choose another kind.",
        EntryFault.NotFor { Kind: EntryKind.Borrowing } => "What is borrowed comes in for a debt; choose the debt.",
        EntryFault.NotFor { Kind: EntryKind.Loss } => "Only cash is lost; choose a pot in cash or the loose notes.",
        EntryFault.NotFor { For: LedgerEnd.Owed } not => $"{Kind(not.Kind)} isn't for a debt: there a fee or interest goes out, and what is borrowed comes in.",
        EntryFault.NotFor { Name: { } name } not => $"{Kind(not.Kind)} isn't for {name}; choose another kind.",
        EntryFault.NotFor not => $"{Kind(not.Kind)} isn't for that; choose another kind, or what it is for.",
        EntryFault.IsPurchase pot => $"{pot.Pot} is in cash: what the account paid for it is a card purchase, and cash that was spent is found by its count.",
        EntryFault.HasLess less => MoveTexts.HasLess(less.From, less.Name, less.Has, less.Amount, style),
        EntryFault.NotesDiffer differ => MoveTexts.NotesDiffer(differ.Notes, differ.Amount, style),
        EntryFault.NoNotes => "Notes are of cash; leave them out for money of the account.",
        EntryFault.NotesNeeded => "Say which notes came: loose ones are known by their values.",
        EntryFault.NotesNotThere => MoveTexts.NotLoose,
        EntryFault.NotInNotes not => MoveTexts.NotInNotes(not.Amount, style),
        EntryFault.NoCheque => "A cheque goes out of the account; leave its number out.",
        EntryFault.NameNeeded { Kind: EntryKind.Loss } => "Say what it was: a loss goes by its name.",
        EntryFault.NameNeeded => "Say who paid: income of no source goes by its name.",
        EntryFault.CountedTheSame => "The loose notes are just what they are known to be; there is nothing to write.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Kind(EntryKind kind) => kind switch
    {
        EntryKind.Refund => "A refund",
        EntryKind.Interest => "Interest",
        EntryKind.Gift => "A gift",
        EntryKind.Transfer => "A transfer",
        EntryKind.Fee => "A fee",
        EntryKind.Payment => "A payment",
        EntryKind.Income => "Income",
        EntryKind.Borrowing => "Borrowed money",
        EntryKind.Loss => "A loss",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
