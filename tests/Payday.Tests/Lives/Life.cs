using System.Text.Json.Nodes;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Store;
using Payday.Tests.Commands;

namespace Payday.Tests.Lives;

/// <summary>Plays acts by commands and in the model, and holds all that the commands say against it.</summary>
internal sealed class Life : IDisposable
{
    private readonly TestShell shell = new();
    private readonly ModelBook book = new();
    private readonly ModelWeeks weeks;
    private readonly ModelViews views;
    private readonly List<string> played = [];
    private long seenAtTheBank;

    public Life()
    {
        weeks = new ModelWeeks(book);
        views = new ModelViews(book, weeks);
        On(LifeHousehold.Start);
        Run("import", shell.File("household.json", LifeHousehold.File)).Fine();
    }

    public ModelBook Book => book;

    public ModelWeeks Weeks => weeks;

    /// <summary>The day.</summary>
    public DateOnly Today { get; private set; }

    public void On(DateOnly day)
    {
        Today = day;
        shell.Today = LocalDate.FromDateOnly(day);
    }

    /// <summary>Looks at the routine of a payday and closes it.</summary>
    /// <param name="on">The payday, where it is not the next one.</param>
    /// <param name="came">By source, what came in.</param>
    /// <param name="oneOffs">Income of no source.</param>
    public void Close(DateOnly? on = null, Dictionary<string, long>? came = null, Dictionary<string, long>? oneOffs = null)
    {
        var payday = new ModelPayday(book, on ?? book.NextPayday, came, oneOffs);
        string[] more =
        [
            .. on is { } date ? (string[])["--on", ModelViews.Iso(date)] : [],
            .. (came ?? []).SelectMany(income => (string[])["--income", $"{income.Key}={ModelViews.Plain(income.Value)}"]),
            .. (oneOffs ?? []).SelectMany(income => (string[])["--one-off", $"{income.Key}={ModelViews.Plain(income.Value)}"]),
        ];
        Is(views.Run(payday, closed: false), ["run", .. more]);
        JsonObject closed = views.Run(payday, closed: true);
        JsonNode run = Is(closed, ["run", "--accept", .. more]);
        JsonNode slip = Json("slip");
        Holds(ModelNotes.Faults(book, payday, run["withdrawal"]!, slip));
        payday.Close(ModelNotes.Reused(slip));
    }

    /// <summary>Takes the last closed payday up again, as the full screen does.</summary>
    public void Reopen()
    {
        played.Add($"{Today:yyyy-MM-dd} reopen");
        using (BookStore store = BookStore.Open(shell.Data))
        {
            Book closed = store.Load()!;
            store.Save(closed, Reopening.Of(closed, shell.Today).Value!);
        }

        ModelClosed last = book.Closed[^1];
        book.Closed.RemoveAt(book.Closed.Count - 1);
        book.Ledger.Undo(last.Act);
        foreach (ModelPart part in book.Marks.Keys.Where(part => part.Payday == last.On).ToList())
        {
            book.Marks.Remove(part);
            book.Assumed.Remove(part);
            book.Ledger.Undo($"fill {part}");
        }
    }

    public void Fill(params string[] skipped)
    {
        Is(views.Fills(Today), "fill");
        Run(["fill", "--done", .. skipped.SelectMany(pot => (string[])["--skip", pot])]).Fine();
        weeks.Fill(Today, skipped);
        Is(new JsonObject { ["fills"] = new JsonArray() }, "fill");
    }

    public ModelPurchase Spend(string pot, long amount, DateOnly? on = null)
    {
        JsonNode said = Json("spend", pot, ModelViews.Plain(amount), "--on", ModelViews.Iso(on ?? Today), "--what", "shop");
        ModelPurchase purchase = weeks.Spend(pot, amount, on ?? Today);
        JsonNode row = said["purchases"]![0]!;
        Assert.Equal(
            (purchase.Number, ModelViews.Plain(amount), book.Pot(pot).Cash ? ModelViews.Plain(purchase.OwedBack) : (string?)row["owedBack"]),
            ((int)row["number"]!, (string)row["amount"]!, (string?)row["owedBack"]));
        return purchase;
    }

    public void Undo(ModelPurchase purchase)
    {
        Run("spend", "--undo", $"{purchase.Number}").Fine();
        weeks.Undo(purchase);
    }

    /// <summary>Looks at a count and confirms it.</summary>
    public void Count(DateOnly on, Dictionary<string, long> left, Dictionary<string, long>? differences = null, Dictionary<string, string>? then = null)
    {
        Is(views.Count(on), "count", "--on", ModelViews.Iso(on));
        differences ??= [];
        Run([
            "count", "--on", ModelViews.Iso(on), .. left.Select(pot => $"{pot.Key}={ModelViews.Plain(pot.Value)}"),
            .. differences.SelectMany(pot => pot.Value > 0 ? (string[])["--missing", $"{pot.Key}={ModelViews.Plain(pot.Value)}"] : ["--found", pot.Key]),
            .. differences.Count > 0 ? (string[])["--name", "odd"] : [],
            .. (then ?? []).SelectMany(pot => (string[])["--move", $"{pot.Key}={pot.Value}"])]).Fine();
        weeks.Count(on, left, differences, then ?? []);
    }

    public void Return(params string[] stays)
    {
        string[] leaves = [.. stays.SelectMany(pot => (string[])["--leave", pot])];
        ReturnIs(stays, ["return", .. leaves]);
        string[] going = ReturnIs(stays, ["return", "--confirm", .. leaves]);
        weeks.Return(Today, going);
    }

    /// <summary>Moves money; undone, it is as if it had not been.</summary>
    public void Move(string from, string to, long amount, bool isUndone = false)
    {
        Run("move", from, to, ModelViews.Plain(amount), "--why", "better there").Fine();
        weeks.Move(from, to, amount, Today);
        if (isUndone)
        {
            LedgerIs();
            Run("move", "--undo", $"{book.Moves}").Fine();
            book.Ledger.Undo($"move {book.Moves}");
        }
    }

    /// <summary>Enters what came in, or what went out, which is below zero.</summary>
    public void Enter(string kind, string purpose, long amount, bool isUndone = false)
    {
        Run("entry", amount > 0 ? "in" : "out", ModelViews.Plain(Math.Abs(amount)), "--for", purpose, "--kind", kind, "--what", kind).Fine();
        weeks.Enter(kind, purpose, amount, Today);
        if (isUndone)
        {
            LedgerIs();
            Run("entry", "--undo", $"{book.Entries}").Fine();
            book.Ledger.Undo($"entry {book.Entries}");
        }
    }

    /// <summary>The bank gave the same in fives: no amount changes by it.</summary>
    public void GetFives()
    {
        JsonObject asked = Json("slip")["withdraw"]!.AsObject();
        if (asked.Any(note => note.Key != "5"))
        {
            Run("fill", "--got", $"5={ModelNotes.Worth(asked) / 500}").Fine();
        }
    }

    /// <summary>Holds the account against a bank that shows what is older than some days.</summary>
    /// <param name="days">How many days a line is on its way.</param>
    /// <param name="off">What the bank has more than that, as by a fee that nobody entered.</param>
    /// <param name="name">What that is called.</param>
    public void Reconcile(int days, long off = 0, string? name = null)
    {
        JsonNode open = Json("reconcile");
        long here = book.Ledger.In("account").Sum(end => end.Has);
        JsonNode[] lines = [.. open["lines"]!.AsArray().Select(line => line!)];
        string[] at = [.. lines.Where(line => DateOnly.Parse((string)line["date"]!, null) <= Today.AddDays(-days)).SelectMany(line => (string[])["--at", line["number"]!.ToString()])];
        long onItsWay = lines.Where(line => DateOnly.Parse((string)line["date"]!, null) > Today.AddDays(-days)).Sum(line => Cents((string)line["amount"]!));
        JsonNode done = Json(["reconcile", "--balance", ModelViews.Plain(here - onItsWay + off), .. at, "--accept", .. name is null ? [] : (string[])["--name", name]]);
        Assert.Equal(
            (ModelViews.Plain(here), ModelViews.Plain(onItsWay), ModelViews.Plain(off), name, true),
            ((string)done["here"]!, (string)done["onItsWay"]!, (string)done["difference"]!, (string?)done["name"], (bool)done["stored"]!));

        // Whatever was at the bank before, and what is open, is all that ever passed the account.
        seenAtTheBank += lines.Where(line => at.Contains(line["number"]!.ToString())).Sum(line => Cents((string)line["amount"]!));
        Assert.Equal(here, LifeHousehold.Account + seenAtTheBank + onItsWay);
        book.Bank = (Today, off, name);
    }

    /// <summary>Takes a statement of the bank's, of all that is older than some days and a fee that nobody knew; undone, it is as if it had not been.</summary>
    /// <param name="days">How many days a line is on its way.</param>
    /// <param name="fee">The fee, below zero; or zero for none.</param>
    /// <param name="isUndone">Whether it is taken back.</param>
    public void TakeStatement(int days, long fee, bool isUndone)
    {
        DateOnly until = Today.AddDays(-days);
        (DateOnly On, string Text, long Amount, string Becomes)[] lines =
        [
            .. Json("reconcile")["lines"]!.AsArray()
                .Select(line => (On: DateOnly.Parse((string)line!["date"]!, null), Text: "As booked", Amount: Cents((string)line["amount"]!), Becomes: $"line {line["number"]}"))
                .Where(line => line.On <= until).OrderBy(line => line.On),
            .. fee == 0 ? [] : ((DateOnly, string, long, string)[])[(until, "Account fee", fee, "fee")],
        ];
        if (lines.Length == 0)
        {
            return;
        }

        long has = LifeHousehold.Account + seenAtTheBank;
        string csv = "Date,Text,Amount,Balance\n" + string.Concat(lines.Select(line => $"{ModelViews.Iso(line.On)},{line.Text},{ModelViews.Plain(line.Amount)},{ModelViews.Plain(has += line.Amount)}\n"));
        string file = shell.File("bank.csv", csv);
        string[] takes =
        [
            .. Json("statement", file)["lines"]!.AsArray().Where(line => line!["number"] is not null)
                .SelectMany(line => (string[])["--take", $"{line!["number"]}={lines.First(one => one.Amount == Cents((string)line["amount"]!) && ModelViews.Iso(one.On) == (string)line["date"]!).Becomes}"]),
        ];
        Run(["statement", file, .. takes, "--accept"]).Fine();
        if (fee != 0)
        {
            weeks.Enter("fee", "buffer", fee, until);
        }

        LedgerIs();
        if (isUndone)
        {
            Run("statement", "--undo").Fine();
            book.Ledger.Undo($"entry {book.Entries}");
            return;
        }

        seenAtTheBank += lines.Sum(line => line.Amount);
        book.Bank = (until, 0, null);
    }

    /// <summary>A bill comes to something else from now on.</summary>
    public void ChangeBill(string bill, long amount)
    {
        int at = Array.FindIndex(book.Bills, known => known.Name == bill);
        string file = Run("export").Fine().Out;
        string changed = file.Replace($"\"amount\": \"{ModelViews.Plain(book.Bills[at].Amount)}\"", $"\"amount\": \"{ModelViews.Plain(amount)}\"", StringComparison.Ordinal);
        Assert.NotEqual(file, changed);
        Run("import", shell.File("changed.json", changed)).Fine();
        book.Bills[at] = book.Bills[at] with { Amount = amount };
    }

    /// <summary>Every view, for today.</summary>
    public void Look()
    {
        LedgerIs();
        JsonNode shown = Json("show");
        shown["purposes"] = new JsonArray([.. shown["purposes"]!.AsArray().Select(purpose => purpose!.DeepClone()).OrderBy(purpose => purpose.ToJsonString(), StringComparer.Ordinal)]);
        Holds(Same.Differences(views.Overview(), shown, "show"));
        PotsAre();
        Is(views.Bills(), "show", "bills");
        Is(views.Debts(Today), "show", "debts");
        JsonNode calendar = Json("show", "calendar");
        calendar["events"] = new JsonArray([.. calendar["events"]!.AsArray().Select(day => day!.DeepClone()).OrderBy(day => day.ToJsonString(), StringComparer.Ordinal)]);
        Holds(Same.Differences(views.Calendar(Today), calendar, "show calendar"));
        Is(views.Year(Today), "show", "year");
        Is(views.Status(Today), "status");
        Is(views.Fills(Today), "fill");
        Is(views.Count(Today), "count", "--on", ModelViews.Iso(Today));
        ReturnIs([], ["return"]);
    }

    public void Check() => Run("check").Fine();

    public void Dispose() => shell.Dispose();

    // For each day: what each end holds by the movements that stand is what the model says.
    private void LedgerIs()
    {
        JsonNode[] all = [.. Json("show", "ledger")["movements"]!.AsArray().Select(movement => movement!)];
        HashSet<long> undone = [.. all.Select(movement => movement["reverses"]).OfType<JsonNode>().Select(number => (long)number!)];
        Fact[] live = [.. all
            .Where(movement => movement["reverses"] is null && !undone.Contains((long)movement["number"]!))
            .Select(movement => new Fact(DateOnly.Parse((string)movement["date"]!, null), (string)movement["from"]!, (string)movement["to"]!, Cents((string)movement["amount"]!), ""))];
        Holds(Changes(live).Except(Changes(book.Ledger.Facts)).Select(change => $"show ledger: {change}, which the model hasn't"));
        Holds(Changes(book.Ledger.Facts).Except(Changes(live)).Select(change => $"show ledger: no {change}, which the model has"));
    }

    private static IEnumerable<(DateOnly On, string End, long Change)> Changes(IEnumerable<Fact> facts) => facts
        .SelectMany(fact => new[] { (fact.On, End: fact.From, Change: -fact.Amount), (fact.On, End: fact.To, Change: fact.Amount) })
        .GroupBy(change => (change.On, change.End))
        .Select(end => (end.Key.On, end.Key.End, end.Sum(change => change.Change)))
        .Where(end => end.Item3 != 0);

    // The pots whose cash goes: all but those that stay, and those that no notes make it for.
    private string[] ReturnIs(string[] stays, string[] args)
    {
        JsonNode said = Json(args);
        JsonNode[] pots = [.. said["pots"]!.AsArray().Select(pot => pot!)];
        Holds(Same.Differences(views.Return()["pots"], new JsonArray([.. pots.Select(pot => new JsonObject { ["pot"] = pot["pot"]!.DeepClone(), ["owes"] = pot["owes"]!.DeepClone() })]), "return"));
        JsonNode[] going = [.. pots.Where(pot => (bool)pot["goes"]!)];
        Holds(pots.Where(pot => (bool)pot["goes"]! == (stays.Contains((string)pot["pot"]!) || (pot["notes"] is null && pot["advice"] is { } advice && ((string)advice!).StartsWith("No notes", StringComparison.Ordinal))))
            .Select(pot => $"return: {pot["pot"]} goes: {pot["goes"]}"));
        Holds(going.Where(pot => pot["notes"] is JsonObject notes && ModelNotes.Worth(notes) != Cents((string)pot["owes"]!)).Select(pot => $"return: the notes of {pot["pot"]} don't come to {pot["owes"]}"));
        long total = going.Sum(pot => Cents((string)pot["owes"]!));
        Assert.Equal(ModelViews.Plain(total), (string)said["total"]!);
        Assert.Equal(total, ModelNotes.Worth(said["slip"]!.AsObject()) + Cents((string)said["unlisted"]!));
        return [.. going.Select(pot => (string)pot["pot"]!)];
    }

    // A plan is held against the routine in the core; here it only has to go with what the pot has. Loose notes of a pot are in none of the others.
    private void PotsAre()
    {
        JsonNode said = Json("show", "pots");
        foreach (JsonObject pot in said["pots"]!.AsArray().Select(pot => pot!.AsObject()))
        {
            JsonNode? plan = pot["plan"]?.DeepClone();
            pot.Remove("plan");
            long over = plan is null ? 0 : Cents((string)plan["planned"]!) + Cents((string)plan["ahead"]!) - Cents((string)pot["balance"]!) - Cents((string)pot["keptBack"]!);
            Holds(((string)pot["kind"]! == "spending" && plan is not null) || over < 0 ? [$"show pots: the plan of {pot["name"]} is {plan?.ToJsonString()}"] : []);
        }

        Holds(Same.Differences(views.Pots(Today), said, "show pots"));
    }

    private JsonNode Is(JsonNode expected, params string[] args)
    {
        JsonNode said = Json(args);
        Holds(Same.Differences(expected, said, string.Join(' ', args)));
        return said;
    }

    private JsonNode Json(params string[] args)
    {
        Ran ran = Run([.. args, "--json"]);
        return ran.Out.Length > 0 ? JsonNode.Parse(ran.Out)! : throw new Xunit.Sdk.XunitException($"{ran.Error}\n{Played}");
    }

    private Ran Run(params string[] args)
    {
        played.Add($"{Today:yyyy-MM-dd} payday {string.Join(' ', args)}");
        Ran ran = shell.Run(args);
        return ran is { Exit: 0 } or { Error: "" } ? ran : throw new Xunit.Sdk.XunitException($"{ran.Error}\n{Played}");
    }

    private void Holds(IEnumerable<string> differences)
    {
        string[] all = [.. differences];
        if (all.Length > 0)
        {
            throw new Xunit.Sdk.XunitException($"{string.Join('\n', all.Take(8))}\n{Played}");
        }
    }

    private string Played => string.Join('\n', played.Where(line => !line.EndsWith("--json", StringComparison.Ordinal) || line.Contains("accept", StringComparison.Ordinal) || line.Contains("spend", StringComparison.Ordinal)).TakeLast(12));

    private static long Cents(string plain) => (long)(decimal.Parse(plain, System.Globalization.CultureInfo.InvariantCulture) * 100);
}
