using System.Globalization;
using System.Text.Json.Nodes;

namespace Payday.Faults.Households;

/// <summary>Schedules of every kind, with days at the edges of months and years.</summary>
internal static class OddSchedules
{
    private static readonly string[] Weekdays = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
    private static readonly string[] Shifts = ["before", "after", "none"];

    /// <summary>A schedule that comes round at least a few times in two years.</summary>
    public static JsonObject Pay(Random chance, DateOnly start) => chance.Next(8) switch
    {
        0 => Anchored("weekly", start.AddDays(chance.Next(-9, 60))),
        1 or 2 => Anchored("fortnightly", start.AddDays(chance.Next(-20, 30))),
        3 => new JsonObject { ["kind"] = "everyWeeks", ["weeks"] = chance.Next(3, 6), ["anchor"] = Iso(start.AddDays(chance.Next(-100, 200))) },
        4 => new JsonObject { ["kind"] = "twiceMonthly", ["days"] = new JsonArray(chance.Next(1, 16), chance.Next(2) == 0 ? "last" : chance.Next(16, 32)) },
        5 => Dates(chance, start, 14),
        _ => new JsonObject { ["kind"] = "monthly", ["day"] = Day(chance) },
    };

    /// <summary>Any schedule.</summary>
    public static JsonObject Any(Random chance, DateOnly start) => chance.Next(6) switch
    {
        0 => Anchored("yearly", start.AddDays(chance.Next(-400, 400))),
        1 => new JsonObject { ["kind"] = "everyMonths", ["months"] = chance.Next(1, 8), ["anchor"] = Iso(start.AddDays(chance.Next(-40, 40))) },
        2 => Dates(chance, start, 3),
        _ => Pay(chance, start),
    };

    /// <summary>A day within any month.</summary>
    public static JsonNode Day(Random chance) => chance.Next(5) switch
    {
        0 => "last",
        1 => "lastWorkingDay",
        2 => new JsonObject { ["nth"] = chance.Next(1, 6), ["weekday"] = Weekday(chance) },
        3 => chance.Next(28, 32),
        _ => chance.Next(1, 32),
    };

    public static string Shift(Random chance) => Shifts[chance.Next(Shifts.Length)];

    public static string Weekday(Random chance) => Weekdays[chance.Next(Weekdays.Length)];

    public static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static JsonObject Anchored(string kind, DateOnly anchor) => new() { ["kind"] = kind, ["anchor"] = Iso(anchor) };

    private static JsonObject Dates(Random chance, DateOnly start, int most) => new()
    {
        ["kind"] = "dates",
        ["dates"] = new JsonArray([.. Enumerable.Range(0, chance.Next(2, most + 1)).Select(_ => start.AddDays(chance.Next(0, 500))).Distinct().Order().Select(date => (JsonNode)Iso(date))]),
    };
}
