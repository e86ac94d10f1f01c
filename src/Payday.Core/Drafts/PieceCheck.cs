using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Drafts;

/// <summary>Makes notes and coins of drafts.</summary>
public static class PieceCheck
{
    /// <summary>Checks values of notes or coins, in any order.</summary>
    /// <returns>The values, largest first, each once.</returns>
    public static ImmutableArray<Money> Pieces(ImmutableArray<decimal> pieces, DraftMember member, DraftPlace of, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        check.NotTooMany(pieces.Length, HouseholdLimits.MostPieces, of.Then(member));
        var sorted = new SortedSet<Money>();
        foreach ((int i, decimal value) in pieces.Index())
        {
            DraftPlace place = of.Then(member, i);
            Money piece = check.AmountAboveZero(value, place);
            if (check.IsSound(place) && !sorted.Add(piece))
            {
                check.Refuse(new DraftFault.PieceTwice(place, piece));
            }
        }

        return [.. sorted.Reverse()];
    }

    /// <summary>Checks values of notes, at least one, each of them among those in use where these are known.</summary>
    /// <inheritdoc cref="Pieces"/>
    public static ImmutableArray<Money> Notes(ImmutableArray<decimal> notes, DraftMember member, DraftPlace of, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        DraftPlace place = of.Then(member);
        ImmutableArray<Money> sorted = Pieces(notes, member, of, check);
        if (check.IsSound(place) && sorted.IsEmpty)
        {
            check.Refuse(new DraftFault.NoNotes(place));
        }
        else if (check.IsSound(place) && !check.Notes.IsEmpty && sorted.Except(check.Notes).ToArray() is [Money stranger, ..])
        {
            check.Refuse(new DraftFault.NoteNotInUse(place, stranger, check.Notes));
        }

        return sorted;
    }

    /// <summary>Checks the value of one note, which is among those in use where these are known.</summary>
    public static Money Note(decimal? note, DraftPlace place, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        Money value = check.AmountAboveZero(note, place);
        if (check.IsSound(place) && !check.Notes.IsEmpty && !check.Notes.Contains(value))
        {
            check.Refuse(new DraftFault.NoteNotInUse(place, value, check.Notes));
        }

        return value;
    }

    /// <summary>Checks how many notes there are of each value.</summary>
    /// <returns>By value in minor units.</returns>
    public static ImmutableSortedDictionary<long, int> Counts(ImmutableArray<NoteCountDraft> counts, DraftMember member, DraftPlace of, DraftCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        check.NotTooMany(counts.Length, HouseholdLimits.MostPieces, of.Then(member));
        var made = ImmutableSortedDictionary.CreateBuilder<long, int>();
        foreach ((int i, NoteCountDraft entry) in counts.Index())
        {
            DraftPlace place = of.Then(member, i);
            int count = check.Count(entry.Count, 0, HouseholdLimits.MostOfOneNote, place);
            Money note = entry.Note < 0 ? -check.Amount(-entry.Note, place) : check.Amount(entry.Note, place);
            bool isSound = check.IsSound(place);
            if (isSound && (!note.IsPositive || (!check.Notes.IsEmpty && !check.Notes.Contains(note))))
            {
                check.Refuse(new DraftFault.NoteNotInUse(place, note, check.Notes));
            }
            else if (isSound && !made.TryAdd(note.MinorUnits, count))
            {
                check.Refuse(new DraftFault.NoteCountedTwice(place, note));
            }
        }

        return made.ToImmutable();
    }
}
