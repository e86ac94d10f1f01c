using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of moves that can't be made.</summary>
internal static class MoveTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(MoveFault fault, NumberStyle style) => fault switch
    {
        MoveFault.NotAboveZero => "Write an amount above zero.",
        MoveFault.SameEnd => "Both are the same; choose another one to move it to.",
        MoveFault.BeforeStart before => $"{DateText.Day(before.Date)} is before the household began, {DateText.Day(before.Start)}.",
        MoveFault.NotFrom => "Nothing can be moved from there; choose a pot, a bill, the buffer or the loose notes.",
        MoveFault.NotTo => "Nothing can be moved there; choose a pot, a bill, a debt, the buffer or the loose notes.",
        MoveFault.HasLess less => HasLess(less.From, less.Name, less.Has, less.Amount, style),
        MoveFault.AccountHasLess less => $"With its overdraft the account gives {less.Has.ToString(style)} in cash at most, less than {less.Amount.ToString(style)}; fetch that much at most.",
        MoveFault.OwesLess less => $"{less.Owed.ToString(style)} is owed on {less.Debt}, less than {less.Amount.ToString(style)}; move that much at most.",
        MoveFault.NotesDiffer differ => NotesDiffer(differ.Notes, differ.Amount, style),
        MoveFault.NoNotesMove => "No notes change hands by this; leave them out.",
        MoveFault.NotesNotThere { Name: null } => NotLoose,
        MoveFault.NotesNotThere not => $"Those notes aren't in {not.Name}; name others, or count it by notes first.",
        MoveFault.NotInNotes not => NotInNotes(not.Amount, style),
        MoveFault.NotesNeeded => "Say which notes are fetched: loose ones are known by their values.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>That notes aren't among the loose ones.</summary>
    public const string NotLoose = "Those notes aren't among the loose ones; name others.";

    /// <summary>That something has less than is taken from it.</summary>
    public static string HasLess(LedgerEnd end, string? name, Money has, Money amount, NumberStyle style) =>
        $"{Name(end, name)} {(IsLoose(end) ? "come to" : "has")} {has.ToString(style)}, less than {amount.ToString(style)}; write that much at most.";

    /// <summary>That notes aren't worth an amount.</summary>
    public static string NotesDiffer(Money notes, Money amount, NumberStyle style) =>
        $"The notes come to {notes.ToString(style)}, not {amount.ToString(style)}.";

    /// <summary>That the loose notes don't make an amount.</summary>
    public static string NotInNotes(Money amount, NumberStyle style) => $"The loose notes can't make {amount.ToString(style)} exactly; write an amount that they make.";

    private static bool IsLoose(LedgerEnd end) => end is LedgerEnd.At { Place: Place.Cash, Purpose.Kind: PurposeKind.Buffer };

    private static string Name(LedgerEnd end, string? name) => end switch
    {
        LedgerEnd.At { Purpose.Kind: PurposeKind.KeptBack } => $"What is not in notes for {name}",
        LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace } => "What is left to place",
        _ when IsLoose(end) => "The loose notes",
        _ => name ?? "The buffer",
    };
}
