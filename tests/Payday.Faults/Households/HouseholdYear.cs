using System.Globalization;
using System.Text.Json.Nodes;
using static Payday.Faults.Households.BookChecks;

namespace Payday.Faults.Households;

/// <summary>A household's year, played by commands: each payday, and what a person does between two.</summary>
internal sealed class HouseholdYear
{
    private readonly RandomHousehold household;
    private readonly Random chance;
    private readonly CommandPlayer player;
    private readonly BookChecks checks;
    private readonly Dictionary<string, int> dues = new(StringComparer.Ordinal);
    private readonly int most;
    private DateOnly calendarUntil;
    private DateOnly coversTo;

    /// <param name="seed">The same seed gives the same household and the same year.</param>
    /// <param name="player">Where it is played.</param>
    /// <param name="most">The most paydays.</param>
    public HouseholdYear(int seed, CommandPlayer player, int most = int.MaxValue)
    {
        household = RandomHousehold.Of(seed);
        chance = new Random(seed + 1);
        this.player = player;
        this.most = most;
        player.Today = household.Start;
        checks = new BookChecks(player, household.Money, household.Limit);
        calendarUntil = household.Start.AddDays(-1);
        coversTo = calendarUntil;
    }

    /// <summary>The file it begins with.</summary>
    public string File => household.Text;

    /// <summary>Plays it to its end.</summary>
    /// <param name="empty">A folder to import into at the end.</param>
    /// <returns>Whether the household was taken at all, and how many paydays were closed.</returns>
    /// <exception cref="CommandFailure">Something was not as it must be.</exception>
    public (bool Taken, int Closed) Play(CommandPlayer empty)
    {
        Said taken = player.On(File, "import", "-");
        if (taken.Exit != 0)
        {
            return (false, 0);
        }

        int closed = 0;
        foreach (DateOnly payday in Paydays().Take(most))
        {
            Weeks(payday);

            // Now and then a person is some days late.
            Day(payday.AddDays(chance.Next(5) == 0 ? chance.Next(0, 9) : 0));
            closed += Payday(payday) ? 1 : 0;
            checks.Balances();
        }

        Dues();
        checks.Stored(empty);
        return (true, closed);
    }

    private List<DateOnly> Paydays() =>
        [.. Rows(player.Fine("paydays", "--from", OddSchedules.Iso(household.Start), "--to", OddSchedules.Iso(household.Start.AddYears(1))).Json, "paydays").Select(payday => Date(payday, "date"))];

    // True once it is closed. Where it can't be, a gift may help; else it is left out, as a few others are, and the one after it comes in its place.
    private bool Payday(DateOnly payday)
    {
        string on = OddSchedules.Iso(payday);
        return chance.Next(12) > 0
            && player.Run("run", "--on", on, "--json").Exit == 0
            && (Accept("--on", on) || (checks.IsOverdrawn && Accept("--on", on, "--overdraft", "0")) || Accept("--on", on, "--one-off", $"Gift={household.Money.Plain(4000 * household.Money.Size)}"));
    }

    private bool Accept(params string[] more)
    {
        Said closed = player.Run([.. (string[])["run", "--accept", "--json"], .. more]);
        if (closed.Exit != 0)
        {
            return false;
        }

        checks.Closed(closed.Json);
        coversTo = Date(closed.Json, "coversTo");
        return true;
    }

    private void Weeks(DateOnly payday)
    {
        for (DateOnly day = player.Today.AddDays(chance.Next(1, 5)); day < payday; day = day.AddDays(chance.Next(2, 30)))
        {
            Day(day);
            Errand();
            Errand();
        }
    }

    private void Errand()
    {
        List<JsonNode> pots = Rows(player.Fine("show", "pots").Json, "pots");
        JsonNode? pot = pots.Count == 0 ? null : pots[chance.Next(pots.Count)];
        switch (chance.Next(7))
        {
            case 0:
                player.Run("fill", "--done");
                break;
            case 1 when pot is not null:
                player.Run("fill", "--skip", Field(pot, "name"));
                break;
            case 2 or 3 when pot is not null:
                Spend(pot);
                break;
            case 4:
                Count();
                break;
            case 5:
                player.Run("return", "--confirm", "--json");
                break;
            default:
                player.Run("status");
                break;
        }
    }

    private void Spend(JsonNode pot)
    {
        long has = household.Money.Minor(Field(pot, "balance"));
        long amount = chance.Next(4) == 0 ? has : Math.Max(1, (long)(has * chance.NextDouble()));
        DateOnly on = player.Today.AddDays(-chance.Next(0, 6));
        Said spent = player.Run("spend", Field(pot, "name"), household.Money.Plain(amount), "--what", OddNames.Pick(chance, 0), "--on", OddSchedules.Iso(on), "--json");
        if (spent.Exit == 0 && chance.Next(3) == 0)
        {
            player.Run("spend", "--undo", ((long)Rows(spent.Json, "purchases")[0]["number"]!).ToString(CultureInfo.InvariantCulture), "--json");
        }
    }

    private void Count()
    {
        string on = OddSchedules.Iso(player.Today.AddDays(-chance.Next(0, 10)));
        Said proposed = player.Run("count", "--on", on, "--json");
        if (proposed.Exit != 0)
        {
            return;
        }

        string[] left = [.. Rows(proposed.Json, "pots").Where(_ => chance.Next(4) > 0).Select(pot =>
            $"{Field(pot, "pot")}={household.Money.Plain((long)(household.Money.Minor(Field(pot, "expected")) * (chance.Next(3) == 0 ? 0 : chance.NextDouble())))}")];
        if (left.Length > 0)
        {
            player.Run([.. (string[])["count", "--on", on, "--json"], .. left]);
        }
    }

    private void Day(DateOnly day) => player.Today = day > player.Today ? day : player.Today;

    // The calendar is asked from each day up to which it is known, so each due is seen once.
    private void Dues()
    {
        DateOnly now = player.Today;
        HashSet<string> dueNames = [.. Rows(player.Fine("show", "bills").Json, "bills").Select(bill => Field(bill, "name"))];
        dueNames.ExceptWith(Rows(player.Fine("show", "debts").Json, "debts").Select(debt => Field(debt, "name")));
        while (calendarUntil < coversTo)
        {
            player.Today = calendarUntil.AddDays(1);
            DateOnly until = player.Today.AddMonths(3) < coversTo ? player.Today.AddMonths(3) : coversTo;
            foreach (JsonNode due in Rows(player.Fine("show", "calendar").Json, "events").Where(due => Field(due, "what") is "due" or "paid" && dueNames.Contains(Field(due, "name")) && Date(due, "date") <= until && due["amount"] is not null && household.Money.Minor(Field(due, "amount")) > 0))
            {
                dues[Field(due, "name")] = dues.GetValueOrDefault(Field(due, "name")) + 1;
            }

            calendarUntil = until;
        }

        player.Today = now;
        checks.Dues(dues, coversTo);
    }
}
