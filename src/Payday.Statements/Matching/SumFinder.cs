using System.Collections.Immutable;
using NodaTime;
using Payday.Statements.Lines;

namespace Payday.Statements.Matching;

/// <summary>Finds account lines of one kind that add up to a statement line: returns taken to the bank at once, purchases taken at once.</summary>
/// <remarks>
/// A subset sum over few lines (Horowitz and Sahni 1974 for more). By chance a wanted sum of 2, 3 or 4 of 20 unrelated real amounts
/// exists in about 5% of cases each, so: one kind, one window, and only where there is just one such sum.
/// </remarks>
internal static class SumFinder
{
    private const int MostEntries = 20;
    private const int MostParts = 5;
    private const int MostDays = 7;

    private static readonly AccountLineKind[] Summed = [AccountLineKind.Deposit, AccountLineKind.CardPurchase, AccountLineKind.Withdrawal];

    /// <summary>The proposal for a line, or null.</summary>
    /// <param name="line">The bank's.</param>
    /// <param name="open">The account lines that are without a partner.</param>
    public static SumProposal? Find(StatementLine line, IReadOnlyList<AccountLine> open)
    {
        long wanted = Math.Abs(line.Amount.MinorUnits);
        SumProposal? found = null;
        foreach (AccountLineKind kind in Summed)
        {
            AccountLine[] parts =
            [
                .. open
                    .Where(entry => entry.Kind == kind && entry.MinorUnits > 0 == line.Amount.IsPositive && Math.Abs(entry.MinorUnits) < wanted && entry.MinorUnits != 0
                        && Period.DaysBetween(entry.Date, line.Date) is >= -1 and <= MostDays)
                    .OrderByDescending(entry => entry.Date)
                    .Take(MostEntries)
                    .OrderByDescending(entry => Math.Abs(entry.MinorUnits)),
            ];
            var sums = new List<AccountLine[]>();
            Collect(parts, 0, wanted, [], sums);
            if (sums.Count > 1 || (sums.Count == 1 && found is not null))
            {
                return null;
            }

            found = sums.Count == 1 ? new SumProposal(line, [.. sums[0].OrderBy(entry => entry.Date).ThenBy(entry => entry.Number)]) : found;
        }

        return found;
    }

    // Largest first, so that what is left to find shrinks fast. Two sums are as good as many: neither is proposed.
    private static void Collect(AccountLine[] parts, int from, long wanted, List<AccountLine> taken, List<AccountLine[]> sums)
    {
        if (wanted == 0 && taken.Count >= 2)
        {
            sums.Add([.. taken]);
            return;
        }

        for (int i = from; i < parts.Length && taken.Count < MostParts && sums.Count < 2; i++)
        {
            long size = Math.Abs(parts[i].MinorUnits);
            if (size <= wanted)
            {
                taken.Add(parts[i]);
                Collect(parts, i + 1, wanted - size, taken, sums);
                taken.RemoveAt(taken.Count - 1);
            }
        }
    }
}
