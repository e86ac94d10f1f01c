using System.Collections.Immutable;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>The ranks of the pots in a household file.</summary>
internal static class PotRanks
{
    /// <summary>
    /// Reads the ranks that are written, and gives the pots without one the numbers left over, in the order
    /// of the list: where no rank is written, the rank is the position.
    /// </summary>
    public static ImmutableArray<int> Read(ImmutableArray<NamedItem> items)
    {
        var taken = new Dictionary<int, string>();
        List<int?> written = [.. items.Select(item => ReadOne(item, taken))];
        int next = 0;
        var ranks = ImmutableArray.CreateBuilder<int>(items.Length);
        foreach (int? rank in written)
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

    private static int? ReadOne(NamedItem item, Dictionary<int, string> taken)
    {
        if (item.Fields.Optional("rank") is not { } field)
        {
            return null;
        }

        int rank = field.Count(1, 10_000);
        if (field.IsSound && !taken.TryAdd(rank, item.Name))
        {
            field.Refuse($"Rank {rank} is already that of \"{SafeText.Shown(taken[rank])}\"; give each pot its own, or leave it out.");
        }

        return rank;
    }
}
