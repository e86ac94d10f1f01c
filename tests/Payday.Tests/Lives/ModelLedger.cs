namespace Payday.Tests.Lives;

/// <summary>An amount that went from one end to another on a day, and the act that it belongs to.</summary>
internal sealed record Fact(DateOnly On, string From, string To, long Amount, string Act);

/// <summary>All that stands. What is undone is taken out, so that it leaves no trace in any figure (design, section 4).</summary>
internal sealed class ModelLedger
{
    public const string Buffer = "account: buffer";
    public const string Loose = "cash: buffer";
    public const string Unplaced = "account: left to place";
    public const string Before = "before the start";

    /// <summary>Where what comes in or goes out outside a payday comes from and goes to, other than for a pot.</summary>
    public static readonly string[] EntryKinds = ["fee", "interest", "gift"];

    private readonly List<Fact> facts = [];

    /// <summary>In the order of entry.</summary>
    public IReadOnlyList<Fact> Facts => facts;

    public static string SetAside(string bill) => $"account: set aside for {bill}";

    public static string KeptBack(string pot) => $"account: not in notes, {pot}";

    public static string InAccount(string pot) => $"account: {pot}";

    public static string Home(string pot) => $"cash: {pot}";

    public static string Wallet(string pot) => $"cash: wallet, {pot}";

    /// <summary>Cash that waits to be taken to the bank.</summary>
    public static string OwedCash(string pot) => $"cash: to pay back, {pot}";

    /// <summary>What the account paid in a pot's stead: below zero.</summary>
    public static string OwedBack(string pot) => $"account: to pay back, {pot}";

    public static string ForDebt(string debt) => $"account: set aside for {debt}";

    public static string Owed(string debt) => $"owed: {debt}";

    public static string Spent(string pot) => $"spent: {pot}";

    public static string Missing(string pot) => $"missing: {pot}";

    /// <summary>Moves an amount above zero.</summary>
    public void Move(DateOnly on, string from, string to, long amount, string act)
    {
        if (amount > 0)
        {
            facts.Add(new Fact(on, from, to, amount, act));
        }
    }

    /// <summary>Takes an act out.</summary>
    public void Undo(string act) => facts.RemoveAll(fact => fact.Act == act);

    /// <summary>What an end holds at the end of a day; or by all that is known.</summary>
    public long Has(string end, DateOnly? on = null) => facts
        .Where(fact => on is not { } day || fact.On <= day)
        .Sum(fact => (fact.To == end ? fact.Amount : 0) - (fact.From == end ? fact.Amount : 0));

    /// <summary>The least that an end holds from a day on: what can be taken out on that day.</summary>
    public long LeastFrom(string end, DateOnly day) => facts
        .Where(fact => fact.On > day && (fact.From == end || fact.To == end)).Select(fact => fact.On).Append(day).Distinct()
        .Min(on => Has(end, on));

    /// <summary>All ends that hold something now, in a place.</summary>
    public IEnumerable<(string End, long Has)> In(string place) => facts
        .SelectMany(fact => new[] { fact.From, fact.To }).Distinct()
        .Where(end => end.StartsWith(place + ": ", StringComparison.Ordinal))
        .Select(end => (end, Has(end)))
        .Where(end => end.Item2 != 0);

    /// <summary>What is owed on a debt.</summary>
    public long OwedOn(string debt) => -Has(Owed(debt));

    /// <summary>All that a pot has: in its place and kept back for its next fill.</summary>
    public long HasNow(string pot) => InItsPlace(pot) + Has(KeptBack(pot));

    /// <summary>What was owed on a debt when a day began.</summary>
    public long OwedAtTheBeginning(string debt, DateOnly day) => -Has(Owed(debt), day.AddDays(-1))
        + facts.Where(fact => fact.On == day && fact.From == Owed(debt) && fact.To == Before).Sum(fact => fact.Amount);

    /// <summary>What a pot has in its place.</summary>
    public long InItsPlace(string pot) => Has(InAccount(pot)) + Has(Home(pot)) + Has(Wallet(pot));
}
