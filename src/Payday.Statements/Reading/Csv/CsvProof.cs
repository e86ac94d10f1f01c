using NodaTime;

namespace Payday.Statements.Reading.Csv;

/// <summary>How well a reading follows the column of balances.</summary>
/// <param name="Holds">How many balances follow from the one before and the amount.</param>
/// <param name="Steps">How many could.</param>
/// <param name="Order">The rows of each account, oldest first, in the order in which the balances follow.</param>
internal sealed record CsvProof(int Holds, int Steps, List<int[]> Order)
{
    // A column that follows this often is the balance, and where it doesn't a line is missing.
    private const int LeastHolding = 80;

    // By chance a balance follows once, not over and over.
    private const int FewestSteps = 2;

    /// <summary>Whether every balance follows.</summary>
    public bool IsWhole => Holds == Steps;

    /// <summary>Whether it proves the reading.</summary>
    public bool IsProof => Holds >= FewestSteps && Holds * 100 >= Steps * LeastHolding;

    /// <summary>Tries the orders that banks list in: oldest or newest first, by the file or within each day.</summary>
    public static CsvProof Of(CsvGrid grid, long?[] amounts, CsvNumbers balance, IReadOnlyList<LocalDate?>? dates)
    {
        List<List<int[]>> orders = [.. Orders(grid.Groups, dates)];
        if (dates is not null && orders.Exists(order => RunsUp(order, dates)))
        {
            orders.RemoveAll(order => !RunsUp(order, dates));
        }

        CsvProof best = In(orders[0], amounts, balance);
        for (int i = 1; i < orders.Count && !best.IsWhole; i++)
        {
            CsvProof other = In(orders[i], amounts, balance);
            best = other.Holds > best.Holds ? other : best;
        }

        return best;
    }

    // Oldest first is by the dates, wherever they run one way: with equal amounts the balances would agree backwards too.
    private static bool RunsUp(List<int[]> order, IReadOnlyList<LocalDate?> dates) =>
        order.TrueForAll(group => group.Zip(group.Skip(1)).All(pair => dates[pair.First] is not { } first || dates[pair.Second] is not { } second || first <= second));

    private static IEnumerable<List<int[]>> Orders(List<int[]> groups, IReadOnlyList<LocalDate?>? dates)
    {
        yield return groups;
        List<int[]> reversed = [.. groups.Select(group => group.Reverse().ToArray())];
        yield return reversed;
        if (dates is not null)
        {
            yield return ByDay(groups, dates);
            yield return ByDay(reversed, dates);
        }
    }

    private static List<int[]> ByDay(List<int[]> groups, IReadOnlyList<LocalDate?> dates) =>
        [.. groups.Select(group => group.OrderBy(row => dates[row] ?? LocalDate.MaxIsoValue).ToArray())];

    private static CsvProof In(List<int[]> order, long?[] amounts, CsvNumbers balance)
    {
        int holds = 0;
        int steps = 0;
        foreach (int[] group in order)
        {
            for (int i = 1; i < group.Length; i++)
            {
                steps++;
                bool known = amounts[group[i]] is not null && balance.Cells[group[i]].Ok && balance.Cells[group[i - 1]].Ok;
                holds += known && (Int128)balance[group[i - 1]] + amounts[group[i]]!.Value == balance[group[i]] ? 1 : 0;
            }
        }

        return new CsvProof(holds, steps, order);
    }
}
