using System.Globalization;
using System.Text.Json.Nodes;

namespace Payday.Faults.Households;

/// <summary>What must hold of a book at any time, read from what its commands say.</summary>
internal sealed class BookChecks(CommandPlayer player, OddMoney money, long limit)
{
    private const string OwedBack = "to pay back, ";
    private const string Overdraft = "overdraft";

    /// <summary>Whether the account has an overdraft.</summary>
    public bool IsOverdrawn => Rows(player.Fine("show").Json, "purposes").Any(purpose => Field(purpose, "purpose") == Overdraft);

    /// <summary>Purposes add up to their places, nothing is below zero but what is owed back, and the same from the ledger, on each day.</summary>
    public void Balances()
    {
        JsonNode shown = player.Fine("show").Json;
        SortedDictionary<string, long> now = Ledger();
        foreach (string place in (string[])["account", "cash"])
        {
            var purposes = Rows(shown, "purposes").Where(purpose => Field(purpose, "place") == place).ToList();
            long total = money.Minor(Field(shown, place));
            Must(purposes.Sum(purpose => money.Minor(Field(purpose, "amount"))) == total, "SUM", $"the purposes in {place} don't add up to {Field(shown, place)}");
            Must(place != "cash" || total >= 0, "NEGATIVE", $"cash is {Field(shown, place)}");
            foreach (JsonNode purpose in purposes)
            {
                string word = Field(purpose, "purpose");
                Must(MayBeOwed(place, word) || !Field(purpose, "amount").StartsWith('-'), "NEGATIVE", $"{place}: {word} has {Field(purpose, "amount")}");
                Must(word != Overdraft || Field(purpose, "amount").StartsWith('-'), "OVERDRAFT", $"more was paid off than the overdraft was: {Field(purpose, "amount")}");
                Must(now.GetValueOrDefault($"{place}: {word}") == money.Minor(Field(purpose, "amount")), "LEDGER", $"{place}: {word} is {Field(purpose, "amount")}, but its movements come to {money.Plain(now.GetValueOrDefault($"{place}: {word}"))}");
            }

            Must(now.Where(end => end.Key.StartsWith(place + ": ", StringComparison.Ordinal)).Sum(end => end.Value) == total, "LEDGER", $"the movements of {place} don't add up to {Field(shown, place)}");
        }
    }

    /// <summary>Every due from the start up to a day is paid as often as it came round, or waits in the next payday.</summary>
    /// <param name="dues">How often each bill was due until then.</param>
    /// <param name="until">The last day of the last closed payday's period.</param>
    public void Dues(IReadOnlyDictionary<string, int> dues, DateOnly until)
    {
        // Where pay has ended there is no next payday to say what waits.
        if (player.Run("run", "--json") is not { Exit: 0 } said)
        {
            return;
        }

        JsonNode next = said.Json;
        ILookup<string, string> paid = Live().Select(movement => Field(movement, "to")).Where(end => end.StartsWith("paid: ", StringComparison.Ordinal)).ToLookup(end => end[6..]);
        ILookup<string, JsonNode> waiting = Rows(next, "due").Where(due => Date(due, "date") <= until).ToLookup(due => Field(due, "bill"));
        foreach ((string bill, int count) in dues)
        {
            Must(paid[bill].Count() + waiting[bill].Count() == count, "DUES", $"{bill} was due {count} times until {until:yyyy-MM-dd}, but {paid[bill].Count()} are paid and {waiting[bill].Count()} wait");
        }
    }

    /// <summary>Check finds nothing, and what is exported is taken by an empty folder and comes out the same.</summary>
    public void Stored(CommandPlayer empty)
    {
        Said check = player.Run("check", "--json");
        Must(check.Exit == 0, "CHECK", check.Out + check.Error);
        Said file = player.Run("export");
        Must(file.Exit == 0, "EXPORT", file.Error);
        empty.Today = player.Today;
        Said taken = empty.On(file.Out, "import", "-");
        Must(taken.Exit == 0, "IMPORT", taken.Error);
        Said again = empty.Run("export");
        Must(again.Out == file.Out, "EXPORT", "what was exported comes out another way once imported");
    }

    /// <summary>A closed payday: nothing is left to place, its notes are what its pots get.</summary>
    public void Closed(JsonNode run)
    {
        Must(money.Minor(Field(run, "leftToPlace")) == 0, "PLACE", $"closed with {Field(run, "leftToPlace")} left to place");
        Must(Rows(run, "unpayable").Count == 0, "PLACE", "closed with something that can't be paid");
        long came = ((string[])["cameIn", "carriedOver", "fromBuffer"]).Sum(part => money.Minor(Field(run, part)));
        long gone = ((string[])["toOverdraft", "bills", "debtPayments", "fills", "placed"]).Sum(part => money.Minor(Field(run, part)));
        Must(came == gone, "PLACE", $"{money.Plain(came)} came in, {money.Plain(gone)} has a purpose");
        JsonNode slip = player.Fine("slip").Json;
        long filled = Rows(slip, "filling").Sum(part => Worth(part["notes"]!));
        long withdrawn = money.Minor(Field(slip, "withdrawTotal"));
        Must(Worth(slip["withdraw"]!) == withdrawn, "NOTES", "the slip's notes don't come to its total");
        Must(filled - withdrawn == money.Minor(Field(run["withdrawal"]!, "reused")), "NOTES", $"{money.Plain(filled)} is in the pots, {money.Plain(withdrawn)} withdrawn, {Field(run["withdrawal"]!, "reused")} reused");
        Must(withdrawn == 0 || !IsOverdrawn || money.Minor(Field(player.Fine("show").Json, "account")) + limit >= 0, "OVERDRAFT", $"{money.Plain(withdrawn)} was withdrawn from an account that had less");
        Must(withdrawn == money.Minor(Field(run["withdrawal"]!, "total")), "NOTES", "the slip is another than what was closed");
    }

    /// <summary>The rows of a list in an answer.</summary>
    public static List<JsonNode> Rows(JsonNode node, string list) => [.. node[list]!.AsArray().Select(row => row!)];

    public static string Field(JsonNode node, string field) => (string)node[field]!;

    public static DateOnly Date(JsonNode node, string field) => DateOnly.Parse(Field(node, field), CultureInfo.InvariantCulture);

    private long Worth(JsonNode notes) => notes.AsObject().Sum(note => money.Minor(note.Key) * (int)note.Value!);

    private SortedDictionary<string, long> Ledger()
    {
        var now = new SortedDictionary<string, long>(StringComparer.Ordinal);
        foreach (IGrouping<string, JsonNode> day in Live().GroupBy(movement => Field(movement, "date")).OrderBy(day => day.Key, StringComparer.Ordinal))
        {
            foreach (JsonNode movement in day)
            {
                long amount = money.Minor(Field(movement, "amount"));
                now[Field(movement, "from")] = now.GetValueOrDefault(Field(movement, "from")) - amount;
                now[Field(movement, "to")] = now.GetValueOrDefault(Field(movement, "to")) + amount;
            }

            foreach ((string end, long has) in now)
            {
                bool inAPlace = end.StartsWith("cash: ", StringComparison.Ordinal) || (end.StartsWith("account: ", StringComparison.Ordinal) && !MayBeOwed("account", end["account: ".Length..]));
                Must(!inAPlace || has >= 0, "NEGATIVE", $"{end} has {money.Plain(has)} at the end of {day.Key}");
                Must(!end.StartsWith("owed: ", StringComparison.Ordinal) || has <= 0, "NEGATIVE", $"{end} is overpaid by {money.Plain(has)} at the end of {day.Key}");
            }
        }

        return now;
    }

    // What was undone has left no trace.
    private List<JsonNode> Live()
    {
        List<JsonNode> all = Rows(player.Fine("show", "ledger").Json, "movements");
        HashSet<long> undone = [.. all.Where(movement => movement["reverses"] is not null).Select(movement => (long)movement["reverses"]!)];
        return [.. all.Where(movement => movement["reverses"] is null && !undone.Contains((long)movement["number"]!))];
    }

    private static bool MayBeOwed(string place, string purpose) =>
        place == "account" && (purpose.StartsWith(OwedBack, StringComparison.Ordinal) || purpose == Overdraft);

    private void Must(bool holds, string kind, string detail)
    {
        if (!holds)
        {
            throw player.Fail(kind, detail);
        }
    }
}
