using System.Globalization;

namespace Payday.Journeys;

/// <summary>A household of eight cash pots whose first payday of two was eight days ago and is closed.</summary>
internal static class WeekHousehold
{
    private static readonly string[] Pots = ["Food", "Fares", "Fuel", "Soap", "Treats", "Meals", "Socks", "Hair"];

    private static readonly string Reserve = $$"""
        ,{"name":"Reserve","kind":"reserve","level":"900.00","perPayday":"20.00","held":"account","has":"500.00"},
        {"name":"Birthdays","kind":"sinking","target":"300.00","by":"{{Iso(DateOnly.FromDateTime(DateTime.Now).AddYears(1))}}","held":"account"}
        """;

    /// <summary>A bill that falls due in the pay period, three days from today, as a member of its file.</summary>
    public static string Rent => $$""","bills":[{"name":"Rent","amount":"210.00","schedule":{"kind":"monthly","day":{{Today.AddDays(3).Day}}},"shift":"none","essential":true}]""";

    /// <summary>Today, as the program has it.</summary>
    public static DateOnly Today { get; } = DateOnly.FromDateTime(DateTime.Now);

    /// <summary>Stores the household and closes its first payday.</summary>
    /// <param name="folder">Where.</param>
    /// <param name="withReserve">Whether it also has a reserve of 500 and a pot for birthdays, both in the account.</param>
    /// <param name="more">More members of its file, each with a comma before it.</param>
    public static ScratchFolder WithWeeks(this ScratchFolder folder, bool withReserve = false, string more = "")
    {
        string file = folder.In("household.json");
        DateOnly payday = Today.AddDays(-8);
        string pots = string.Join(",\n", Pots.Select((name, i) =>
            $$"""{"name":"{{name}}","kind":"spending","amount":"{{20 + (10 * i)}}.00","per":"week","held":"cash"}"""));
        File.WriteAllText(
            file,
            $$"""
            {"version":2,"name":"Mill lane","start":"{{Iso(payday)}}","currency":"USD","notes":["20","10","5"],"fillDay":"{{payday.DayOfWeek}}","holidays":"none",
            "opening":{"account":"{{(withReserve ? "600.00" : "100.00")}}"},
            "sources":[{"name":"Bakery","schedule":{"kind":"fortnightly","anchor":"{{Iso(payday)}}"},"shift":"none","expected":"1200.00"}],
            "pots":[{{pots}}{{(withReserve ? Reserve : "")}}]{{more}}}
            """);
        ProgramUnderTest.Run("import", file, "--data", folder.Data);
        ProgramUnderTest.Run("run", "--accept", "--data", folder.Data);
        return folder;
    }

    /// <summary>A date as the program takes it.</summary>
    public static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
