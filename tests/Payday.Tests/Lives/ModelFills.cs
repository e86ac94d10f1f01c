namespace Payday.Tests.Lives;

/// <summary>What each pot asks for (design, 5.3 and 11), and what a shortfall cuts (5.5).</summary>
internal static class ModelFills
{
    public static long Wanted(ModelBook book, ModelPayday payday, ModelPot pot) => pot.Kind switch
    {
        "week" => payday.FillDays.Sum(pot.On),
        "payday" => pot.Amount,
        "month" => Month(book, payday, pot, spread: false),
        "spread" => Month(book, payday, pot, spread: true),
        "sinking" => Sinking(book, payday, pot),
        "ladder" => Ladder(book, pot),
        _ => Math.Min(pot.Amount, Math.Max(0, pot.On(payday.On) - book.Ledger.HasNow(pot.Name))),
    };

    /// <summary>The fills once so much is cut: the highest rank number first, in whole units down to the floors, then the odd parts above them.</summary>
    public static Dictionary<string, long> Cut(ModelPot[] pots, IReadOnlyDictionary<string, long> wanted, long lacking)
    {
        Dictionary<string, long> fills = new(wanted);
        foreach (bool whole in new[] { true, false })
        {
            foreach (ModelPot pot in pots.OrderByDescending(pot => pot.Rank))
            {
                long room = Math.Max(0, fills[pot.Name] - Math.Min(pot.Floor, wanted[pot.Name]));
                long cut = whole
                    ? Math.Min(room / pot.Unit, (Math.Max(0, lacking) + pot.Unit - 1) / pot.Unit) * pot.Unit
                    : Math.Min(room, Math.Max(0, lacking));
                fills[pot.Name] -= cut;
                lacking -= cut;
            }
        }

        return fills;
    }

    // What the month still lacks, over the usual paydays that it still has; an extra one gets what was missed.
    private static long Month(ModelBook book, ModelPayday payday, ModelPot pot, bool spread)
    {
        (DateOnly On, bool Extra)[] month = [.. book.Paydays(new DateOnly(payday.On.Year, payday.On.Month, 1))
            .TakeWhile(other => other.On.Month == payday.On.Month && other.On.Year == payday.On.Year)
            .Select(other => (other.On, other.Extra))];
        long filled = book.Closed.Where(closed => month.Any(other => other.On == closed.On)).Sum(closed => closed.Fills[pot.Name]);
        DateOnly[] shares = [.. month.Where(other => spread || !other.Extra).Select(other => other.On)];
        int at = Array.IndexOf(shares, payday.On);
        long[] planned = [.. shares.Select((day, i) => PlannedShare(pot.On(day), i, shares.Length, pot.Unit))];
        if (at >= 0 && planned[at..].Length > 1 && pot.On(shares[at]) != pot.On(shares[^1]))
        {
            // It changes within the month: what holds today, with a part of what was missed, or less what was too much.
            long missed = planned[..at].Sum() - filled;
            return Math.Max(0, planned[at] + (missed < 0 ? missed : Share(missed, shares.Length - at, pot.Unit)));
        }

        int left = at < 0 ? 0 : shares.Length - at;
        return Share(Math.Max(0, planned.Sum() - filled), Math.Max(1, left), pot.Unit);
    }

    /// <summary>What a sinking pot asks: spent before its date it counts as bought; past its date, and not full, it waits for another date.</summary>
    public static string? Asks(ModelBook book, DateOnly on, ModelPot pot) => pot.Kind != "sinking" || book.Ledger.HasNow(pot.Name) >= pot.Amount ? null
        : PutIn(book, pot) >= pot.Amount ? "bought"
        : on >= pot.By ? "date"
        : null;

    private static long Sinking(ModelBook book, ModelPayday payday, ModelPot pot)
    {
        long has = book.Ledger.HasNow(pot.Name);
        if (has >= pot.Amount || Asks(book, payday.On, pot) is not null)
        {
            return 0;
        }

        int left = book.Paydays(payday.On).TakeWhile(other => other.On < pot.By).Count();
        return Share(Math.Max(0, pot.Amount - has), left, pot.Unit);
    }

    // The step in progress: what was ever put in, against 1, 3, 6, 10 ... units.
    private static long Ladder(ModelBook book, ModelPot pot)
    {
        long putIn = PutIn(book, pot);
        for (long step = 1, sum = pot.Amount; step <= pot.Most; step++, sum += step * pot.Amount)
        {
            if (sum > putIn)
            {
                return sum - putIn;
            }
        }

        return 0;
    }

    private static long PutIn(ModelBook book, ModelPot pot) => book.Ledger.HasNow(pot.Name) + book.Ledger.Has(ModelLedger.Spent(pot.Name)) + book.Ledger.Has(ModelLedger.Missing(pot.Name));

    // Level shares in whole units, the spare ones first; the last one has what is less than a unit.
    private static long PlannedShare(long amount, int at, int count, long unit)
    {
        long units = amount / unit;
        return (((units / count) + (at < units % count ? 1 : 0)) * unit) + (at == count - 1 ? amount % unit : 0);
    }

    // The first of so many level shares in whole units; the last one is exact.
    private static long Share(long amount, int shares, long unit)
    {
        long units = amount / unit;
        return shares <= 1 ? amount : ((units / shares) + (units % shares > 0 ? 1 : 0)) * unit;
    }
}
