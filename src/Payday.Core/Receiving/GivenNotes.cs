using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.NotePlanning;
using Payday.Core.Pots;

namespace Payday.Core.Receiving;

/// <summary>Which of the notes that are there go to which pot and week.</summary>
/// <remarks>
/// Rule (design, section 5, rule 17): wishes give way before money does. It is found out what the notes can pay at most
/// where no pot wishes anything; then each pot, those that matter most first, gets back as many of its wishes as leave
/// that as it is: its week shares, its top note, its small money.
/// </remarks>
internal sealed class GivenNotes
{
    private readonly Household household;
    private readonly Notes hand;
    private readonly ImmutableArray<ClosedPart> planned;
    private readonly ImmutableArray<PotId> pots;

    private GivenNotes(Household household, Notes hand, ImmutableArray<ClosedPart> planned)
    {
        this.household = household;
        this.hand = hand;
        this.planned = planned;
        Dictionary<PotId, int> ranks = household.Pots.ToDictionary(pot => pot.Id, pot => pot.Rank);
        pots = [.. planned.Select(part => part.PotId).Distinct().OrderBy(pot => ranks.GetValueOrDefault(pot, int.MaxValue))];
    }

    private enum Keeps
    {
        All,
        WeeksAndTopNote,
        Weeks,
        Nothing,
    }

    /// <summary>The parts anew, in the same order; none is worth more than it was in all of its pot.</summary>
    /// <param name="household">The household.</param>
    /// <param name="hand">The notes that are there.</param>
    /// <param name="planned">The parts as the payday planned them.</param>
    public static ImmutableArray<ClosedPart> Of(Household household, Notes hand, ImmutableArray<ClosedPart> planned) =>
        new GivenNotes(household, hand, planned).Best();

    private ImmutableArray<ClosedPart> Best()
    {
        Dictionary<PotId, Keeps> keeps = pots.ToDictionary(pot => pot, _ => Keeps.All);
        ImmutableArray<ClosedPart> wished = Plan(keeps);
        keeps = pots.ToDictionary(pot => pot, _ => Keeps.Nothing);
        ImmutableArray<ClosedPart> best = Plan(keeps);
        if (Worth(wished) >= Worth(best))
        {
            return wished;
        }

        foreach (PotId pot in pots)
        {
            foreach (Keeps level in new[] { Keeps.All, Keeps.WeeksAndTopNote, Keeps.Weeks })
            {
                ImmutableArray<ClosedPart> tried = Plan(new Dictionary<PotId, Keeps>(keeps) { [pot] = level });
                if (Worth(tried) >= Worth(best))
                {
                    keeps[pot] = level;
                    best = tried;
                    break;
                }
            }
        }

        return best;
    }

    private ImmutableArray<ClosedPart> Plan(Dictionary<PotId, Keeps> keeps)
    {
        (PotId Pot, int[] At)[] asked =
        [
            .. pots.SelectMany(pot => keeps[pot] == Keeps.Nothing
                ? [(pot, Indices(pot).ToArray())]
                : Indices(pot).Select(at => (pot, new[] { at })).ToArray()),
        ];
        ImmutableArray<Notes> paid = HandPlan.Of(
            household.Settings.Cash.Notes,
            hand,
            [.. asked.Select(part => new NotePart(part.Pot, part.Pot.Text, planned[part.At[0]].Week, Money.Sum(part.At.Select(Amount), household.Currency), Wishes(part.Pot, keeps[part.Pot])))]);
        ClosedPart[] parts = [.. planned];
        foreach (((PotId _, int[] at), Notes notes) in asked.Zip(paid))
        {
            foreach ((int index, Notes share) in at.Zip(OverWeeks(notes, [.. at.Select(index => Amount(index).MinorUnits)])))
            {
                parts[index] = planned[index] with { Notes = share };
            }
        }

        return [.. parts];
    }

    // Each note, the largest first, goes to the week that lacks most; of equal ones to the earlier.
    private static Notes[] OverWeeks(Notes notes, long[] lacks)
    {
        if (lacks.Length == 1)
        {
            return [notes];
        }

        List<(long Value, int Count)>[] weeks = [.. lacks.Select(_ => new List<(long Value, int Count)>())];
        foreach ((long value, int count) in notes.Reverse())
        {
            for (int i = 0; i < count; i++)
            {
                int week = Array.IndexOf(lacks, lacks.Max());
                weeks[week].Add((value, 1));
                lacks[week] -= value;
            }
        }

        return [.. weeks.Select(Notes.Of)];
    }

    private IEnumerable<int> Indices(PotId pot) => Enumerable.Range(0, planned.Length).Where(at => planned[at].PotId == pot);

    private Money Amount(int at) => planned[at].Notes.Worth(household.Currency);

    private NoteWishes Wishes(PotId potId, Keeps keeps)
    {
        NoteWishes wishes = household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Notes ?? NoteWishes.None;
        return keeps switch
        {
            Keeps.All => wishes,
            Keeps.WeeksAndTopNote => wishes with { Small = null },
            _ => NoteWishes.None,
        };
    }

    private static long Worth(ImmutableArray<ClosedPart> parts) => parts.Sum(part => part.Notes.Sum(note => note.Key * note.Value));
}
