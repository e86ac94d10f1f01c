using Payday.Core.Households;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;
using Payday.Tests.Commands;
using Payday.Tests.Slips;

namespace Payday.Tests.Stored;

/// <summary>Household files with one of everything, and what is written where they were read.</summary>
public sealed class HouseholdFixtureTests
{
    private const string Least = """
        {"version":2,"name":"Least","start":"2026-03-05","currency":"GBP","numbers":"1,234.56","fillDay":"Monday","holidays":"none",
         "setAsides":"level","cardRounding":"up","surplusOrder":"balance","bank":{"kind":"teller"},
         "sources":[{"name":"Wage","schedule":{"kind":"monthly","day":1},"shift":"none","expected":"0"}],
         "debts":[{"name":"Loan","balance":"10","rate":"0.1","minimum":{"fixed":"1"},"due":5}],
         "pots":[{"name":"Food","kind":"spending","amount":"40","per":"payday","weeks":"once","held":"cash","leftOver":"stays"},
                 {"name":"Ladder","kind":"ladder","unit":"5","steps":10,"order":"rising","held":"cash"}]}
        """;

    public static TheoryData<string> Names => [.. Directory.GetFiles(Folder, "*.json").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    private static string Folder => StoreFixture.PathOf(4, Path.Combine("..", "households"));

    [Theory]
    [MemberData(nameof(Names))]
    public void ReadAndWrite_EachFile_IsAsRecorded(string name) =>
        Golden.Equal($"household-{name}", Lines(HouseholdFile.Write(HouseholdFile.Read(File.ReadAllText(Path.Combine(Folder, name + ".json"))).Value!)));

    [Theory]
    [MemberData(nameof(Names))]
    public void ReadAndWrite_WhatWasWritten_IsTheSameAgain(string name)
    {
        string written = HouseholdFile.Write(HouseholdFile.Read(File.ReadAllText(Path.Combine(Folder, name + ".json"))).Value!);

        Assert.Equal(written, HouseholdFile.Write(HouseholdFile.Read(written).Value!));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ImportAndExport_EachFile_IsAsRecorded(string name)
    {
        using var shell = new TestShell();
        shell.Run("import", Path.Combine(Folder, name + ".json")).Fine();

        Golden.Equal($"household-{name}", shell.Run("export").Fine().Lines);
    }

    /// <summary>Each word of each choice, and what is written where it was read.</summary>
    [Fact]
    public void ReadAndWrite_EachWord_IsAsRecorded() => Golden.Equal("household-words", new (string There, string[] Words)[]
    {
        ("\"fillDay\":\"Monday\"", [.. Quoted("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday").Select(day => $"\"fillDay\":{day}")]),
        ("\"numbers\":\"1,234.56\"", [.. Quoted("1,234.56", "1.234,56", "1 234,56", "1'234.56", "1234.56").Select(sample => $"\"numbers\":{sample}")]),
        ("\"holidays\":\"none\"", [.. Quoted("none", "US", "GB-EW", "TARGET").SelectMany(set => (string[])[$"\"holidays\":{set}", $"\"holidays\":{{\"set\":{set},\"extra\":[\"2026-05-04\"]}}"])]),
        ("\"setAsides\":\"level\"", ["\"setAsides\":\"level\"", "\"setAsides\":\"asTheyFall\""]),
        ("\"cardRounding\":\"up\"", ["\"cardRounding\":\"up\"", "\"cardRounding\":\"exact\""]),
        ("\"surplusOrder\":\"balance\"", ["\"surplusOrder\":\"balance\"", "\"surplusOrder\":\"rate\""]),
        ("{\"kind\":\"teller\"}", ["{\"kind\":\"teller\"}", "{\"kind\":\"machine\",\"notes\":[\"20\"]}", "{\"kind\":\"machine\",\"notes\":[\"20\",\"10\"],\"limit\":\"300\"}"]),
        ("\"shift\":\"none\"", [.. Quoted("none", "before", "after").Select(word => $"\"shift\":{word}")]),
        ("{\"kind\":\"monthly\",\"day\":1}",
        [
            "{\"kind\":\"weekly\",\"anchor\":\"2026-03-06\"}", "{\"kind\":\"fortnightly\",\"anchor\":\"2026-03-06\"}",
            "{\"kind\":\"everyWeeks\",\"weeks\":1,\"anchor\":\"2026-03-06\"}", "{\"kind\":\"everyWeeks\",\"weeks\":2,\"anchor\":\"2026-03-06\"}", "{\"kind\":\"everyWeeks\",\"weeks\":3,\"anchor\":\"2026-03-06\"}",
            "{\"kind\":\"twiceMonthly\",\"days\":[1,15]}", "{\"kind\":\"twiceMonthly\",\"days\":[\"last\",{\"nth\":1,\"weekday\":\"Friday\"}]}",
            "{\"kind\":\"monthly\",\"day\":31}", "{\"kind\":\"monthly\",\"day\":\"last\"}", "{\"kind\":\"monthly\",\"day\":\"lastWorkingDay\"}", "{\"kind\":\"monthly\",\"day\":{\"nth\":4,\"weekday\":\"Sunday\"}}",
            "{\"kind\":\"everyMonths\",\"months\":1,\"anchor\":\"2026-03-31\"}", "{\"kind\":\"everyMonths\",\"months\":12,\"anchor\":\"2026-03-31\"}", "{\"kind\":\"yearly\",\"anchor\":\"2028-02-29\"}",
            "{\"kind\":\"dates\",\"dates\":[]}", "{\"kind\":\"dates\",\"dates\":[\"2026-04-01\",\"2026-05-01\"]}",
        ]),
        ("\"minimum\":{\"fixed\":\"1\"}", ["\"minimum\":{\"fixed\":\"1\"}", "\"minimum\":{\"percent\":\"0.02\",\"floor\":\"25\"}"]),
        ("\"per\":\"payday\",\"weeks\":\"once\"", ["\"per\":\"week\"", "\"per\":\"week\",\"weeks\":\"split\"", .. Quoted("payday", "month", "monthSpread").SelectMany(per => (string[])[$"\"per\":{per}", $"\"per\":{per},\"weeks\":\"once\"", $"\"per\":{per},\"weeks\":\"split\""])]),
        ("\"leftOver\":\"stays\"", ["\"leftOver\":\"stays\"", "\"leftOver\":\"buffer\"", "\"leftOver\":{\"pot\":\"Ladder\"}", "\"leftOver\":{\"debt\":\"loan\"}"]),
        ("\"order\":\"rising\"", [.. Quoted("rising", "falling", "even").Select(order => $"\"order\":{order}")]),
        ("\"held\":\"cash\",\"leftOver\":\"stays\"", ["\"held\":\"cash\"", "\"held\":\"account\""]),
    }.SelectMany(choice => choice.Words.SelectMany(word => Written(choice.There, word))));

    private static IEnumerable<string> Quoted(params string[] words) => words.Select(word => $"\"{word}\"");

    // What is written otherwise than of the file with the usual words.
    private static IEnumerable<string> Written(string there, string word)
    {
        Assert.Contains(there, Least, StringComparison.Ordinal);
        JsonReading<Household> read = HouseholdFile.Read(Least.Replace(there, word, StringComparison.Ordinal).Replace("\"weeks\":\"once\",\"held\":\"account\"", "\"held\":\"account\"", StringComparison.Ordinal));
        string[] usual = Lines(HouseholdFile.Write(HouseholdFile.Read(Least).Value!));
        return [word, .. read.Ok ? Lines(HouseholdFile.Write(read.Value)).Except(usual).Select(line => "  " + line) : read.Faults.Select(fault => $"! {fault}"), ""];
    }

    private static string[] Lines(string text) => text.TrimEnd('\n').Split('\n');
}
