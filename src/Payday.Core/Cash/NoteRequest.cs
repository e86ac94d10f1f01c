using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>What <c>NotePlanner</c> is asked.</summary>
/// <param name="Notes">The notes in use: at least one, all above zero, of one currency; any order.</param>
/// <param name="Loose">
/// Loose notes that can be used again: value in minor units to count, both zero or more. A value that is not
/// in use can be used up here but not fetched.
/// </param>
/// <param name="Source">Where new notes come from.</param>
/// <param name="Parts">
/// The parts, in the order in which they matter: where a machine's limit is too low, earlier ones are served first.
/// </param>
public sealed record NoteRequest(
    ImmutableArray<Money> Notes,
    Notes Loose,
    CashSource Source,
    ImmutableArray<NotePart> Parts)
{
    /// <summary>The currency of all of it.</summary>
    public Currency Currency => Notes[0].Currency;

    /// <summary>The notes that can be fetched, in any order.</summary>
    public ImmutableArray<Money> Fetched => Source is CashSource.Machine machine ? machine.Notes : Notes;

    /// <summary>The smallest note that a part would take and that is at home or can be fetched; null where there is none.</summary>
    /// <param name="part">The part.</param>
    /// <remarks>A part of less than that can't be paid at all; of more, other parts may have got the notes at home.</remarks>
    public Money? SmallestFor(NotePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        Money[] taken = [.. Fetched
            .Concat(Loose.Where(note => note.Value > 0).Select(note => Money.FromMinorUnits(note.Key, Currency)))
            .Where(note => part.Wishes.TopNote is not { } top || note <= top)];
        return taken.Length == 0 ? null : taken.Min();
    }
}
