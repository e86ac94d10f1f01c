namespace Payday.Tests.Lives;

/// <summary>All that the model knows: the household, what stands in the ledger, and what was done.</summary>
internal sealed class ModelBook
{
    public ModelBook()
    {
        long rest = LifeHousehold.Account;
        foreach (ModelBill bill in Bills)
        {
            Open(ModelLedger.SetAside(bill.Name), bill.SetAside);
            rest -= bill.SetAside;
        }

        foreach (ModelPot pot in Pots)
        {
            Open(pot.Cash ? ModelLedger.Home(pot.Name) : ModelLedger.InAccount(pot.Name), pot.Has);
            rest -= pot.Cash ? 0 : pot.Has;
        }

        Open(ModelLedger.Buffer, rest);
        Open(ModelLedger.Loose, LifeHousehold.LooseNotes);
        foreach (ModelDebt debt in Debts)
        {
            Ledger.Move(LifeHousehold.Start, ModelLedger.Owed(debt.Name), ModelLedger.Before, debt.Balance, "opening");
        }
    }

    public ModelSource[] Sources { get; } = LifeHousehold.Sources;

    /// <summary>Changed where a bill's amount changes.</summary>
    public ModelBill[] Bills { get; } = [.. LifeHousehold.Bills];

    public ModelDebt[] Debts { get; } = LifeHousehold.Debts;

    public ModelPot[] Pots { get; } = LifeHousehold.Pots;

    public ModelLedger Ledger { get; } = new();

    public List<ModelClosed> Closed { get; } = [];

    /// <summary>Parts marked as filled (true) or skipped (false).</summary>
    public Dictionary<ModelPart, bool> Marks { get; } = [];

    /// <summary>Those marked as filled that only a purchase or a move took so.</summary>
    public HashSet<ModelPart> Assumed { get; } = [];

    public List<ModelPurchase> Purchases { get; } = [];

    public List<ModelCount> Counts { get; } = [];

    /// <summary>Counts whose difference is cleared up.</summary>
    public HashSet<int> Explained { get; } = [];

    /// <summary>How many moves and account entries there were, undone ones too.</summary>
    public int Moves { get; set; }

    /// <inheritdoc cref="Moves"/>
    public int Entries { get; set; }

    /// <summary>The last reconciliation: its day, its difference and what that is called.</summary>
    public (DateOnly On, long Difference, string? Name)? Bank { get; set; }

    /// <summary>What passed the account and the bank has shown, in all.</summary>
    public long SeenAtTheBank { get; set; }

    /// <summary>The closings of which the bank has shown what they paid on debts.</summary>
    public HashSet<string> ShownExtras { get; } = [];

    /// <summary>What is owed back, oldest first.</summary>
    public List<ModelOwed> Owed { get; } = [];

    public ModelPot Pot(string name) => Pots.Single(pot => pot.Name == name);

    /// <summary>The paydays from a day on, each date once, with who pays and whether it is extra.</summary>
    public IEnumerable<(DateOnly On, ModelSource[] Pays, bool Extra)> Paydays(DateOnly from) => Sources
        .SelectMany(source => source.Dates.Select(date => (date, source)))
        .Where(pay => pay.date >= from)
        .GroupBy(pay => pay.date)
        .OrderBy(day => day.Key)
        .Select(day => (day.Key, day.Select(pay => pay.source).ToArray(), day.All(pay => IsExtra(pay.source, pay.date))));

    /// <summary>The first payday that is open.</summary>
    public DateOnly NextPayday => Paydays(Closed.Count == 0 ? LifeHousehold.Start : Closed[^1].On.AddDays(1)).First().On;

    /// <summary>The last count of a pot.</summary>
    public ModelCount? LastCount(string pot) => Counts.LastOrDefault(count => count.Pot == pot);

    /// <summary>Whether one of a bill's dues is paid.</summary>
    public bool IsPaid(string bill, int index) => Closed.Any(closed => closed.Dues.Any(due => due.Paid && due.Bill == bill && due.Index == index));

    /// <summary>What a paid due came to, or null.</summary>
    public long? PaidAs(string bill, int index) => Closed.SelectMany(closed => closed.Dues).FirstOrDefault(due => due.Paid && due.Bill == bill && due.Index == index)?.Amount;

    /// <summary>Whether a debt's minimum is covered by a payday, and paid or not.</summary>
    public bool IsCovered(string debt, DateOnly due, bool paid) => Closed.Any(closed => closed.Minimums.Any(row => row.Debt == debt && row.Due == due && row.Paid == paid));

    /// <summary>What a payday covered a minimum with, or null.</summary>
    public long? CoveredWith(string debt, DateOnly due) => Closed.SelectMany(closed => closed.Minimums).LastOrDefault(row => row.Debt == debt && row.Due == due)?.Payment;

    private void Open(string end, long amount) => Ledger.Move(LifeHousehold.Start, ModelLedger.Before, end, amount, "opening");

    // A fortnightly wage is usual twice a month; a monthly one never is extra (design, section 2).
    private static bool IsExtra(ModelSource source, DateOnly date) => source.InWeeks
        && source.Dates.Count(other => other.Year == date.Year && other.Month == date.Month && other <= date) > 2;
}
