using System.Collections.Immutable;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Notes for each part in minor units.</summary>
/// <param name="Notes">Part by part, value to count.</param>
/// <param name="Proven">Whether no better choice exists.</param>
internal sealed record SolvedNotes(ImmutableArray<Notes> Notes, bool Proven)
{
    /// <summary>What a part is paid.</summary>
    public long Paid(int part) => Notes[part].Sum(note => note.Key * note.Value);

    /// <summary>The value that has to be fetched, given the notes on hand.</summary>
    public long Fetched(Notes onHand)
    {
        Dictionary<long, long> left = onHand.ToDictionary(note => note.Key, note => (long)note.Value);
        long fetched = 0;
        foreach ((long value, int count) in Notes.SelectMany(notes => notes))
        {
            long reused = Math.Min(count, left.GetValueOrDefault(value));
            left[value] = left.GetValueOrDefault(value) - reused;
            fetched += value * (count - reused);
        }

        return fetched;
    }
}
