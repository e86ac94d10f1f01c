using System.Collections.Immutable;

namespace Payday.Core.Drafts;

/// <summary>Makes the ranks of pots of a draft.</summary>
internal static class RankCheck
{
    /// <summary>
    /// The ranks that are given; the pots without one get the numbers left over, in the order of the list: where no rank
    /// is given, the rank is the position.
    /// </summary>
    public static ImmutableArray<int> Of(ImmutableArray<PotDraft> pots, DraftCheck check)
    {
        var taken = new Dictionary<int, string>();
        int?[] given = [.. pots.Select((pot, i) => One(pot, DraftPlace.Of(HouseholdDraft.Members.Pots, i).Then(PotDraft.Members.Rank), taken, check))];
        int next = 0;
        var ranks = ImmutableArray.CreateBuilder<int>(pots.Length);
        foreach (int? rank in given)
        {
            if (rank is null)
            {
                do
                {
                    next++;
                }
                while (taken.ContainsKey(next));
            }

            ranks.Add(rank ?? next);
        }

        return ranks.MoveToImmutable();
    }

    private static int? One(PotDraft pot, DraftPlace place, Dictionary<int, string> taken, DraftCheck check)
    {
        if (pot.Rank is null)
        {
            return null;
        }

        int rank = check.Count(pot.Rank, 1, HouseholdLimits.HighestRank, place);
        if (check.IsSound(place) && !taken.TryAdd(rank, pot.Name ?? ""))
        {
            check.Refuse(new DraftFault.RankTaken(place, rank, taken[rank]));
        }

        return rank;
    }
}
