using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Texts;

namespace Payday.Lists;

/// <summary>Notes by value as a person writes them: <c>20=2,10=1</c> is two twenties and a ten.</summary>
internal static class NoteList
{
    /// <summary>Reads notes and coins that the household has in use, at least one.</summary>
    public static Result<Notes> Read(Household household, string text)
    {
        CashPieces cash = household.Settings.Cash;
        NumberStyle style = household.Settings.Numbers;
        return NotesInput.Read(text, household.Currency, style).Then(notes =>
        {
            foreach (Money value in notes.Select(note => Money.FromMinorUnits(note.Key, household.Currency)).Where(value => !cash.Notes.Concat(cash.Coins).Contains(value)))
            {
                return Result.Refused<Notes>(new NotesTextFault.NotInUse(style.Written(value.ToPiece()), [.. cash.Notes.Select(note => style.Written(note.ToPiece()))]));
            }

            return notes.IsEmpty ? Result.Refused<Notes>(new NotesTextFault.NoNotes("")) : Result.Of(notes);
        });
    }

    /// <summary>Notes as <see cref="Read"/> takes them.</summary>
    public static string Write(Household household, Notes notes) => string.Join(",", notes.Reverse().Select(note =>
        string.Create(CultureInfo.InvariantCulture, $"{household.Settings.Numbers.Written(Money.FromMinorUnits(note.Key, household.Currency).ToPiece())}={note.Value}")));
}
