namespace Payday.Tests.Lives;

/// <summary>What a payday sets aside (design, 5.2), by the steepest slope from today to any payday to come.</summary>
internal static class ModelSetAside
{
    /// <summary>Today's part of the most even plan that is never late.</summary>
    /// <param name="held">What is held for bills.</param>
    /// <param name="paydays">Each with what it brings, today's first.</param>
    /// <param name="dues">Each with its date, those of the past on today's.</param>
    public static long Level(long held, IReadOnlyList<(DateOnly On, long Brings)> paydays, IReadOnlyList<(DateOnly On, long Amount)> dues)
    {
        long today = 0;
        Int128 income = 0;
        for (int k = 0; k < paydays.Count; k++)
        {
            income += paydays[k].Brings;
            DateOnly end = k + 1 < paydays.Count ? paydays[k + 1].On : DateOnly.MaxValue;
            Int128 need = dues.Where(due => due.On < end).Sum(due => due.Amount) - held;
            Int128 least = Int128.Min(need, income);
            if (least > 0)
            {
                // Today's share of what must be there by then, if every payday gave the same share of its pay.
                Int128 share = least * paydays[0].Brings;
                today = Math.Max(today, (long)((share + income - 1) / income));
            }
        }

        return today;
    }

    /// <summary>Which bill holds how much of it: what is due now first, then later dues by date; what is due now may take from the bill due last.</summary>
    /// <param name="held">What each bill holds.</param>
    /// <param name="now">What each bill needs in this period.</param>
    /// <param name="setAside">Today's part.</param>
    /// <param name="later">Later dues, by date.</param>
    public static Dictionary<string, long> After(
        IReadOnlyDictionary<string, long> held, IReadOnlyDictionary<string, long> now, long setAside, IReadOnlyList<(string Bill, DateOnly On, long Amount)> later)
    {
        Dictionary<string, long> has = new(held);
        foreach (string bill in held.Keys)
        {
            long part = Math.Min(setAside, Math.Max(0, now[bill] - has[bill]));
            has[bill] += part;
            setAside -= part;
        }

        foreach (string bill in held.Keys)
        {
            foreach (string giver in held.Keys.OrderByDescending(other => later.Where(due => due.Bill == other).Select(due => due.On).DefaultIfEmpty(DateOnly.MaxValue).First()))
            {
                long part = Math.Min(Math.Max(0, now[bill] - has[bill]), Math.Max(0, has[giver] - now[giver]));
                has[giver] -= part;
                has[bill] += part;
            }
        }

        Dictionary<string, long> spare = has.ToDictionary(bill => bill.Key, bill => Math.Max(0, bill.Value - now[bill.Key]));
        foreach ((string bill, _, long amount) in later)
        {
            long covered = Math.Min(spare[bill], amount);
            spare[bill] -= covered;
            long part = Math.Min(setAside, amount - covered);
            has[bill] += part;
            setAside -= part;
        }

        return has;
    }
}
