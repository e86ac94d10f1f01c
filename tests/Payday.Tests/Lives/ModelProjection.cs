namespace Payday.Tests.Lives;

/// <summary>The way out of debt, month by month (design, 5.6): minimums, and what paid-off debts set free, to the smallest balance.</summary>
internal static class ModelProjection
{
    /// <summary>By debt: the month in which it is paid off, 1 for the first, and the interest until then.</summary>
    /// <param name="debts">The debts.</param>
    /// <param name="owed">What is owed on each.</param>
    /// <param name="begins">By debt: how many months its next minimum comes after the first month.</param>
    public static Dictionary<string, (int Month, long Interest)> Of(ModelDebt[] debts, IReadOnlyDictionary<string, long> owed, IReadOnlyDictionary<string, int> begins)
    {
        Dictionary<string, long> balance = new(owed);
        Dictionary<string, long> nominal = debts.ToDictionary(debt => debt.Name, debt => owed[debt.Name] > 0 ? debt.Nominal(owed[debt.Name]) : 0);
        Dictionary<string, long> interest = debts.ToDictionary(debt => debt.Name, _ => 0L);
        Dictionary<string, (int, long)> paid = debts.Where(debt => owed[debt.Name] == 0).ToDictionary(debt => debt.Name, _ => (0, 0L));
        for (int month = 1; balance.Values.Any(left => left > 0); month++)
        {
            long free = 0;
            foreach (ModelDebt debt in debts)
            {
                if (month <= begins[debt.Name])
                {
                    continue;
                }

                if (balance[debt.Name] == 0)
                {
                    free += nominal[debt.Name];
                    continue;
                }

                nominal[debt.Name] = debt.Nominal(balance[debt.Name]);
                long charged = debt.Interest(balance[debt.Name]);
                long minimum = debt.Minimum(balance[debt.Name]);
                interest[debt.Name] += charged;
                balance[debt.Name] += charged - minimum;
                free += nominal[debt.Name] - minimum;
            }

            while (free > 0 && debts.Where(debt => balance[debt.Name] > 0).OrderBy(debt => balance[debt.Name]).ThenByDescending(debt => debt.Rate).FirstOrDefault() is { } first)
            {
                long part = Math.Min(free, balance[first.Name]);
                balance[first.Name] -= part;
                free -= part;
            }

            foreach (ModelDebt debt in debts.Where(debt => balance[debt.Name] == 0 && !paid.ContainsKey(debt.Name)))
            {
                paid[debt.Name] = (month, interest[debt.Name]);
            }
        }

        return paid;
    }
}
