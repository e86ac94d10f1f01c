namespace Payday.Tests.Lives;

/// <summary>A payday as the model sees it: all steps, computed from the rules of the design alone.</summary>
internal sealed class ModelPayday
{
    private const int MonthsAhead = 13;
    private readonly ModelBook book;

    /// <param name="book">The book.</param>
    /// <param name="on">The payday.</param>
    /// <param name="came">By source: what really came in, where that isn't what was expected.</param>
    /// <param name="oneOffs">Income of no source.</param>
    public ModelPayday(ModelBook book, DateOnly on, IReadOnlyDictionary<string, long>? came = null, IReadOnlyDictionary<string, long>? oneOffs = null)
    {
        this.book = book;
        var paydays = book.Paydays(on).TakeWhile(payday => payday.On <= on.AddMonths(MonthsAhead)).ToList();
        (On, Extra, Until) = (on, paydays[0].Extra, paydays[1].On.AddDays(-1));
        FillDays = [.. Enumerable.Range(0, Until.DayNumber - On.DayNumber + 1).Select(On.AddDays).Where(day => day.DayOfWeek == DayOfWeek.Friday)];
        Income =
        [
            .. paydays[0].Pays.Select(source => (source.Name, source.On(on), came?.GetValueOrDefault(source.Name, source.On(on)) ?? source.On(on))),
            .. (oneOffs ?? new Dictionary<string, long>()).Select(income => (income.Key, 0L, income.Value)),
        ];
        CarriedOver = book.Ledger.Has(ModelLedger.Unplaced);
        long toPlace = CarriedOver + Income.Sum(income => income.Came);

        Dues = [.. Standing(Until).OrderBy(due => due.Date)];
        (string Bill, DateOnly On, long Amount)[] later = [.. Later().OrderBy(due => due.On)];
        Held = book.Bills.ToDictionary(bill => bill.Name, bill => book.Ledger.Has(ModelLedger.SetAside(bill.Name)));
        long planned = ModelSetAside.Level(
            Held.Values.Sum(),
            [(On, toPlace), .. paydays.Skip(1).Select(payday => (payday.On, payday.Pays.Sum(source => source.On(payday.On))))],
            [.. Dues.Select(due => (due.Date > On ? due.Date : On, due.Amount)), .. later.Select(due => (due.On, due.Amount))]);
        long needed = Math.Max(0, Dues.Sum(due => due.Amount) - Held.Values.Sum());
        Debts = ModelMinimums.Of(book, On, Until);
        long minimums = Minimums;

        // Where it falls short the buffer helps above what it keeps, then the pots are cut, then less is set aside for later.
        Wanted = book.Pots.ToDictionary(pot => pot.Name, pot => ModelFills.Wanted(book, this, pot));
        long wanted = Math.Max(planned, needed) + minimums + Wanted.Values.Sum();
        FromBuffer = Math.Min(Math.Max(0, wanted - toPlace), Math.Max(0, book.Ledger.Has(ModelLedger.Buffer) - LifeHousehold.BufferKeeps));
        toPlace += FromBuffer;
        Fills = ModelFills.Cut(book.Pots, Wanted, wanted - toPlace);
        long left = toPlace - Math.Max(planned, needed) - minimums - Fills.Values.Sum();
        long eased = Math.Min(Math.Max(0, -left), Math.Max(planned, needed) - needed);
        SetAside = Math.Max(planned, needed) - eased;
        Surplus = left + eased;
        HeldAfter = ModelSetAside.After(
            Held, book.Bills.ToDictionary(bill => bill.Name, bill => Dues.Where(due => due.Bill == bill.Name).Sum(due => due.Amount)), SetAside, later);
        Placements = Place();
        Parts = [.. book.Pots.Where(pot => pot.Cash).SelectMany(PartsOf)];
    }

    public DateOnly On { get; }

    /// <summary>The day before the next payday.</summary>
    public DateOnly Until { get; }

    public bool Extra { get; }

    public DateOnly[] FillDays { get; }

    public (string Name, long Expected, long Came)[] Income { get; }

    public long CarriedOver { get; }

    /// <summary>What the buffer gives to a payday that falls short.</summary>
    public long FromBuffer { get; }

    public ModelDue[] Dues { get; }

    /// <summary>By bill, before.</summary>
    public Dictionary<string, long> Held { get; }

    /// <summary>By bill, with today's part and before anything is paid.</summary>
    public Dictionary<string, long> HeldAfter { get; }

    public long SetAside { get; }

    public IReadOnlyList<ModelMinimum> Debts { get; }

    /// <summary>What today gives for them.</summary>
    public long Minimums => book.Debts.Sum(debt => ModelMinimums.Taken(book, Debts, debt.Name));

    /// <summary>By pot.</summary>
    public Dictionary<string, long> Wanted { get; }

    /// <summary>By pot, with what a shortfall cuts.</summary>
    public Dictionary<string, long> Fills { get; }

    /// <summary>What is left once all have theirs; below zero where it doesn't fit.</summary>
    public long Surplus { get; }

    /// <summary>Where the surplus goes: a debt, or null for the buffer.</summary>
    public (string? Debt, long Amount)[] Placements { get; }

    public ModelPart[] Parts { get; }

    /// <summary>A cash pot's fill with what was kept back before.</summary>
    public long InNotes(ModelPot pot) => Fills[pot.Name] + book.Ledger.Has(ModelLedger.KeptBack(pot.Name));

    /// <summary>What no note can make stays in the account.</summary>
    public long KeptBack(ModelPot pot) => InNotes(pot) - Parts.Where(part => part.Pot == pot.Name).Sum(part => part.Amount);

    /// <summary>Writes it.</summary>
    /// <param name="reused">What of the loose notes went into pots.</param>
    public void Close(long reused)
    {
        ModelLedger ledger = book.Ledger;
        var closed = new ModelClosed(On, Until, Dues, Fills, Parts, [.. Debts]);
        foreach ((string name, _, long came) in Income)
        {
            ledger.Move(On, $"income: {name}", ModelLedger.Unplaced, came, closed.Act);
        }

        ledger.Move(On, ModelLedger.Buffer, ModelLedger.Unplaced, FromBuffer, closed.Act);
        foreach (string bill in Held.Keys)
        {
            ledger.Move(On, ModelLedger.SetAside(bill), ModelLedger.Unplaced, Held[bill] - HeldAfter[bill], closed.Act);
            ledger.Move(On, ModelLedger.Unplaced, ModelLedger.SetAside(bill), HeldAfter[bill] - Held[bill], closed.Act);
        }

        foreach (ModelDue due in Dues.Where(due => due.Paid))
        {
            // On its own day where the money was there by then.
            DateOnly on = ledger.LeastFrom(ModelLedger.SetAside(due.Bill), due.Date) >= due.Amount ? due.Date : On;
            ledger.Move(on, ModelLedger.SetAside(due.Bill), $"paid: {due.Bill}", due.Amount, closed.Act);
        }

        foreach ((string debt, long taken) in book.Debts.Select(debt => (debt.Name, ModelMinimums.Taken(book, Debts, debt.Name))).ToArray())
        {
            ledger.Move(On, ModelLedger.ForDebt(debt), ModelLedger.Unplaced, -taken, closed.Act);
            ledger.Move(On, ModelLedger.Unplaced, ModelLedger.ForDebt(debt), taken, closed.Act);
        }

        foreach (ModelMinimum minimum in Debts)
        {
            if (minimum.Due is { } due && due <= On)
            {
                ledger.Move(due, ModelLedger.Owed(minimum.Debt), $"interest: {minimum.Debt}", minimum.Interest, closed.Act);
                ledger.Move(minimum.On, ModelLedger.ForDebt(minimum.Debt), ModelLedger.Owed(minimum.Debt), minimum.Payment, closed.Act);
            }
        }

        foreach (ModelPot pot in book.Pots)
        {
            ledger.Move(On, ModelLedger.Unplaced, pot.Cash ? ModelLedger.KeptBack(pot.Name) : ModelLedger.InAccount(pot.Name), Fills[pot.Name], closed.Act);
            ledger.Move(On, ModelLedger.KeptBack(pot.Name), ModelLedger.Home(pot.Name), Parts.Where(part => part.Pot == pot.Name).Sum(part => part.Amount), closed.Act);
        }

        foreach ((string? debt, long amount) in Placements)
        {
            ledger.Move(On, ModelLedger.Unplaced, debt is null ? ModelLedger.Buffer : ModelLedger.Owed(debt), amount, closed.Act);
        }

        // Loose notes went into pots, and the account has their worth in their stead.
        ledger.Move(On, ModelLedger.Loose, ModelLedger.Buffer, reused, closed.Act);
        book.Closed.Add(closed);
    }

    // Every due from the start on that is not paid.
    private IEnumerable<ModelDue> Standing(DateOnly until) =>
        from bill in book.Bills
        from i in Enumerable.Range(0, bill.Dates.Length)
        where bill.Dates[i] >= LifeHousehold.Start && bill.Dates[i] <= until
            && !book.IsPaid(bill.Name, i)
        select new ModelDue(bill.Name, i, bill.Dates[i], bill.On(bill.Dates[i]), bill.Dates[i] <= On);

    private IEnumerable<(string Bill, DateOnly On, long Amount)> Later() =>
        from bill in book.Bills
        from date in bill.Dates
        where date > Until && date <= On.AddMonths(MonthsAhead)
        select (bill.Name, date, bill.On(date));

    // The smallest balance first, in a tie the higher rate; what no debt needs is buffer.
    private (string? Debt, long Amount)[] Place()
    {
        var placed = new List<(string? Debt, long Amount)>();
        long left = Math.Max(0, Surplus);
        Dictionary<string, long> owed = book.Debts.ToDictionary(debt => debt.Name, debt => Math.Max(0, Debts.Last(row => row.Debt == debt.Name).Then - Debts.Where(row => row.Debt == debt.Name).Sum(row => row.Expected)));
        foreach (ModelDebt debt in book.Debts.Where(debt => owed[debt.Name] > 0).OrderBy(debt => owed[debt.Name]).ThenByDescending(debt => debt.Rate))
        {
            long amount = Math.Min(left, owed[debt.Name]);
            left -= amount;
            if (amount > 0)
            {
                placed.Add((debt.Name, amount));
            }
        }

        return [.. placed, .. left > 0 ? new (string?, long)[] { (null, left) } : []];
    }

    // Week by week for what is used so; all at once, on the first fill day, for other spending; in its envelope for what is saved.
    private IEnumerable<ModelPart> PartsOf(ModelPot pot)
    {
        long units = InNotes(pot) / pot.Unit;
        int weeks = pot.Kind == "week" ? Math.Max(1, FillDays.Length) : 1;
        long[] wants = [.. Enumerable.Range(0, weeks).Select(week => pot.Kind == "week" && FillDays.Length > 0 ? pot.On(FillDays[week]) : 1)];
        long[] shares = [.. wants.Select(want => units * want / wants.Sum())];

        // What is left of the units goes one by one to those that lack most of their part.
        foreach (int week in Enumerable.Range(0, weeks).OrderByDescending(week => (units * wants[week]) - (shares[week] * wants.Sum())).Take((int)(units - shares.Sum())).ToArray())
        {
            shares[week]++;
        }

        for (int week = 0; week < weeks; week++)
        {
            long share = shares[week];
            if (InNotes(pot) > 0)
            {
                yield return new ModelPart(On, pot.Spends && FillDays.Length > 0 ? FillDays[week] : null, pot.Name, share * pot.Unit);
            }
        }
    }
}
