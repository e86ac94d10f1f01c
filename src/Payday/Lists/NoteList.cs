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
    private const int Most = 10_000;

    /// <summary>Reads notes and coins that the household knows.</summary>
    public static Result<Notes> Read(Household household, string text)
    {
        Notes notes = Notes.None;
        CashPieces cash = household.Settings.Cash;
        foreach (string part in text.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string[] pair = part.Split('=', StringSplitOptions.TrimEntries);
            if (pair.Length != 2 || !int.TryParse(pair[1], NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count > Most)
            {
                return Result.Refused<Notes>(new NotesTextFault.NoNotes(part));
            }

            Result<Money> value = Money.Parse(pair[0], household.Currency, household.Settings.Numbers);
            if (!value.Ok || !cash.Notes.Concat(cash.Coins).Contains(value.Value))
            {
                return Result.Refused<Notes>(new NotesTextFault.NotInUse(pair[0], [.. cash.Notes.Select(note => household.Settings.Numbers.Written(note.ToPiece()))]));
            }

            notes = notes.With(value.Value.MinorUnits, notes[value.Value.MinorUnits] + count);
        }

        return notes.IsEmpty ? Result.Refused<Notes>(new NotesTextFault.NoNotes("")) : Result.Of(notes);
    }

    /// <summary>Notes as <see cref="Read"/> takes them.</summary>
    public static string Write(Household household, Notes notes) => string.Join(",", notes.Reverse().Select(note =>
        string.Create(CultureInfo.InvariantCulture, $"{household.Settings.Numbers.Written(Money.FromMinorUnits(note.Key, household.Currency).ToPiece())}={note.Value}")));
}
