using System.Text.Json;
using System.Text.Json.Nodes;
using Payday.Store.Fields;

namespace Payday.Faults.Households;

/// <summary>A household file at the edges of what one may hold: names, dates, notes, amounts and schedules; the same for the same seed.</summary>
internal sealed class RandomHousehold
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };
    private static readonly DateOnly[] Starts =
        [new(2026, 3, 5), new(2027, 12, 31), new(2028, 2, 29), new(2026, 1, 31), new(2028, 1, 1), new(2026, 4, 30), new(2027, 2, 28)];

    private readonly Random chance;

    // Of its own, so that households are otherwise what they were before amounts changed and accounts began below zero.
    private readonly Random more;
    private readonly JsonObject file;

    private RandomHousehold(int seed)
    {
        chance = new Random(seed);
        more = new Random(seed + 7);
        Start = Starts[chance.Next(Starts.Length)];
        Money = OddMoney.Pick(chance);
        file = Settings();
        file["sources"] = Items(chance.Next(4) == 0 ? 3 : 1, Source);
        file["bills"] = Items(Count(7), Bill);
        file["debts"] = Items(Count(4), Debt);
        file["pots"] = Items(Count(9), Pot);
        file["opening"] = Opening();
        ChangeAmounts();
        if (more.Next(4) == 0)
        {
            BeginBelowZero();
        }
    }

    public DateOnly Start { get; }

    public OddMoney Money { get; }

    /// <summary>The file.</summary>
    public string Text => file.ToJsonString(Indented);

    /// <summary>How far below zero the bank lets the account go, in minor units.</summary>
    public long Limit => file["overdraft"] is { } limit ? Money.Minor((string)limit!) : 0;

    public static RandomHousehold Of(int seed) => new(seed);

    // None, few, or now and then many.
    private int Count(int usual) => chance.Next(8) switch { 0 => 0, 1 => 3 * usual, _ => chance.Next(1, usual + 1) };

    private JsonObject Settings() => new()
    {
        ["version"] = 3,
        ["name"] = OddNames.Pick(chance, 0),
        ["start"] = OddSchedules.Iso(Start),
        ["currency"] = Money.Code,
        ["notes"] = new JsonArray([.. Money.Notes.Select(note => (JsonNode)Money.Plain(note))]),
        ["coins"] = new JsonArray(),
        ["fillDay"] = OddSchedules.Weekday(chance),
        ["holidays"] = Any("US", "GB-EW", "TARGET", "none"),
        ["setAsides"] = Any("level", "level", "asTheyFall"),
        ["bank"] = chance.Next(3) == 0
            ? new JsonObject { ["kind"] = "machine", ["notes"] = new JsonArray(Money.Plain(Money.Notes[chance.Next(Money.Notes.Length)])) }
            : new JsonObject { ["kind"] = "teller" },
        ["bufferKeeps"] = Money.Plain(chance.Next(2) == 0 ? 0 : Money.Amount(chance)),
        ["cardRounding"] = Any("up", "exact"),
        ["surplusOrder"] = Any("balance", "rate"),
    };

    private JsonObject Source(int place) => new()
    {
        ["name"] = OddNames.Pick(chance, place),
        ["schedule"] = OddSchedules.Pay(chance, Start),
        ["shift"] = OddSchedules.Shift(chance),
        ["expected"] = Money.Plain(Money.Amount(chance, least: 8)),
    };

    private JsonObject Bill(int place)
    {
        var bill = new JsonObject
        {
            ["name"] = OddNames.Pick(chance, place),
            ["amount"] = Money.Plain(Money.Amount(chance)),
            ["schedule"] = OddSchedules.Any(chance, Start),
            ["shift"] = OddSchedules.Shift(chance),
            ["essential"] = chance.Next(2) == 0,
        };
        if (chance.Next(5) == 0)
        {
            bill["until"] = OddSchedules.Iso(Start.AddDays(chance.Next(1, 300)));
        }

        return bill;
    }

    private JsonObject Debt(int place) => new()
    {
        ["name"] = OddNames.Pick(chance, place),
        ["balance"] = Money.Plain(chance.Next(5) == 0 ? 0 : 10 * Money.Amount(chance)),
        ["rate"] = Any("0", "0.0001", "0.1999", "0.0649", "10"),
        ["minimum"] = chance.Next(2) == 0
            ? new JsonObject { ["fixed"] = Money.Plain(Money.Amount(chance) / 4) }
            : new JsonObject { ["percent"] = Any("0", "0.02", "1"), ["floor"] = Money.Plain(Money.Amount(chance) / 8) },
        ["due"] = OddSchedules.Day(chance),
    };

    private JsonObject Pot(int place)
    {
        bool cash = chance.Next(3) > 0;
        JsonObject pot = chance.Next(6) switch
        {
            0 => new JsonObject { ["kind"] = "sinking", ["target"] = Money.Plain(Money.Amount(chance, 1)), ["by"] = OddSchedules.Iso(Start.AddDays(chance.Next(1, 400))) },
            1 => new JsonObject
            {
                ["kind"] = "ladder", ["unit"] = Money.Plain(Math.Max(1, Money.Amount(chance) / 50)), ["steps"] = chance.Next(4) == 0 ? 1 : chance.Next(2, 53), ["order"] = Any("rising", "falling", "even"),
            },
            2 => new JsonObject { ["kind"] = "reserve", ["level"] = Money.Plain(10 * Money.Amount(chance)), ["perPayday"] = Money.Plain(Money.Amount(chance)) },
            _ => new JsonObject { ["kind"] = "spending", ["amount"] = Money.Plain(Money.Amount(chance)), ["per"] = Any("week", "week", "payday", "month", "monthSpread") },
        };
        pot["name"] = OddNames.Pick(chance, place);
        pot["held"] = cash ? "cash" : "account";
        pot["floor"] = Money.Plain(chance.Next(2) == 0 ? 0 : Money.Amount(chance) / 2);
        if (cash && chance.Next(2) == 0)
        {
            pot["topNote"] = Money.Plain(Money.Notes[chance.Next(Money.Notes.Length)]);
        }

        if (cash && chance.Next(6) == 0)
        {
            pot["leftOver"] = "buffer";
        }

        if (chance.Next(3) == 0)
        {
            pot["has"] = Money.Plain(Money.Amount(chance));
        }

        return pot;
    }

    private JsonObject Opening()
    {
        long held = file["pots"]!.AsArray().Where(pot => (string?)pot!["held"] == "account" && pot["has"] is not null).Sum(pot => Money.Minor((string)pot!["has"]!));
        var opening = new JsonObject { ["account"] = Money.Plain(held + (chance.Next(3) == 0 ? 0 : 10 * Money.Amount(chance))) };
        if (chance.Next(2) == 0)
        {
            opening["notesOnHand"] = new JsonObject(Money.Notes.Select(note => KeyValuePair.Create(Money.Plain(note), (JsonNode?)chance.Next(0, 9))));
        }

        return opening;
    }

    private void ChangeAmounts()
    {
        foreach (JsonNode? item in file["sources"]!.AsArray().Concat(file["bills"]!.AsArray()).Concat(file["pots"]!.AsArray()).Where(item => (string?)item!["kind"] != "ladder"))
        {
            if (more.Next(4) > 0)
            {
                continue;
            }

            double least = item!["expected"] is null ? 0 : 8;
            item["later"] = new JsonArray([.. Enumerable.Range(0, more.Next(1, 4)).Select(_ => more.Next(0, 400)).Distinct().Order().Select(days => (JsonNode)new JsonObject
            {
                ["from"] = OddSchedules.Iso(Start.AddDays(days)),
                ["amount"] = Money.Plain(Money.Amount(more, least)),
            })]);
        }
    }

    // What is below zero holds nothing for a pot.
    private void BeginBelowZero()
    {
        foreach (JsonNode? pot in file["pots"]!.AsArray().Where(pot => (string?)pot!["held"] == "account"))
        {
            pot!.AsObject().Remove("has");
        }

        file["opening"]!["account"] = Money.Plain(-more.Next(1, 12) * Money.Amount(more));
        if (more.Next(2) == 0)
        {
            file["overdraft"] = Money.Plain(5 * Money.Amount(more));
        }
    }

    private static JsonArray Items(int count, Func<int, JsonObject> make) => new([.. Enumerable.Range(0, count).Select(make)]);

    private string Any(params string[] words) => words[chance.Next(words.Length)];
}
