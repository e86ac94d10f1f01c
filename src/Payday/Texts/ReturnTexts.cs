using Payday.Core.Amounts;
using Payday.Core.CashReturns;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a cash return that can't be, and of a pot whose notes can't be told.</summary>
internal static class ReturnTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(ReturnFault fault, NumberStyle style) => fault switch
    {
        ReturnFault.NothingOwed => "No pot has cash to pay back.",
        ReturnFault.NothingGoes => "Nothing of what is to pay back goes to the bank this time.",
        ReturnFault.NotesDiffer differ =>
            $"The notes for {differ.Pot} come to {differ.Notes.ToString(style)}, but it has {differ.Owes.ToString(style)} to pay back.",
        ReturnFault.NotOwedYet not => $"{not.Pot} did not have all of it to pay back yet on {DateText.Day(not.Date)}; give a later day.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What the person has to do where the notes aren't told, in one sentence; null where they are.</summary>
    public static string? Advice(ReturnLine line, NumberStyle style) => line.Way switch
    {
        ReturnWay.NotesUnknown => $"Which notes lie in {line.Pot.Name} isn't known: take {line.Owes.ToString(style)} out of it yourself, any notes that make it, or count it by notes first.",
        ReturnWay.NoWay => $"No notes of {line.Pot.Name}, nor a swap with another pot, make {line.Owes.ToString(style)}: leave it for later, or bring change.",
        _ => null,
    };
}
