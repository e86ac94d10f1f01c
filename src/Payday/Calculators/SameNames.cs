using System.Collections.Immutable;
using Payday.Core.Drafts;

namespace Payday.Calculators;

/// <summary>Names are all that a calculator tells debts or sources by, so that each has its own.</summary>
internal static class SameNames
{
    /// <summary>Refuses each of a list that has a name of another.</summary>
    public static void Refuse<T>(ImmutableArray<T> items, Func<T, string> name, DraftMember list, bool areDebts, DraftCheck check)
    {
        Dictionary<string, int> counts = items.CountBy(name, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        for (int i = 0; i < items.Length; i++)
        {
            if (counts[name(items[i])] > 1 && check.IsSound(DraftPlace.Of(list, i)))
            {
                check.Refuse(new DraftFault.SameName(DraftPlace.Of(list, i), areDebts));
            }
        }
    }
}
