using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Store.Files;
using Payday.Store.Starts;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Starts;

public sealed class StartFileTests : IDisposable
{
    private readonly ScratchFolder scratch = new();

    private string Path => System.IO.Path.Combine(scratch.Data.Path, "start.json");

    private StartFile File => new(scratch.Data);

    public StartFileTests() => Directory.CreateDirectory(scratch.Data.Path);

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Read_WhatWasWritten_IsTheSame()
    {
        StartDraft start = StartDraft.Fresh(new LocalDate(2026, 3, 2)) with
        {
            Passed = ["Bills", "Name and currency"],
            Begun = new() { Debt = new() { Name = "Card", Minimum = new() { Kind = MinimumKind.Part, Percent = 0.02m } }, Pot = new() { Kind = PotUse.Ladder, Place = Place.Cash } },
            Statements = StartStatements.None.Take("bill Rent").TakeAsDebt("bill Loan").Leave("pot Cash") with { Files = [new("/home/mira/2026 \u00E4.csv", [1, 0]), new("/home/mira/b.xml", [])] },
        };
        start = start with { Household = start.Household with { Name = "Alder flat", Settings = start.Household.Settings with { Currency = Currency.FromCode("EUR") } } };

        Assert.False(File.Exists);
        Assert.Null(File.Read());
        File.Write(start);
        StartDraft again = File.Read()!;

        Assert.True(File.Exists);
        Assert.StartsWith("{\n  \"version\": 1,\n  \"parts\": [", System.IO.File.ReadAllText(Path), StringComparison.Ordinal);
        Assert.Equal(start.Household, again.Household);
        Assert.True(start.Passed.SetEquals(again.Passed));
        Assert.Equal(start.Begun, again.Begun);
        Assert.Equal(start.Statements, again.Statements);
        File.Delete();
        Assert.False(File.Exists);
    }

    [Fact]
    public void Write_WithoutStatements_SaysNothingOfThem()
    {
        File.Write(StartDraft.Fresh(new LocalDate(2026, 3, 2)));

        Assert.DoesNotContain("statements", System.IO.File.ReadAllText(Path), StringComparison.Ordinal);
        Assert.True(File.Read()!.Statements.IsEmpty);
    }

    [Theory]
    [InlineData("""{"files":7}""")]
    [InlineData("""{"files":[{"path":7}]}""")]
    [InlineData("""{"files":[{"path":"a","answers":["x"]}]}""")]
    [InlineData("""{"taken":{}}""")]
    public void Read_StatementsThatCantBeRead_AreRefusedAsAWhole(string statements)
    {
        System.IO.File.WriteAllText(Path, $$"""{"version":1,"parts":[],"household":{},"statements":{{statements}}}""");

        Assert.Throws<StoreException>(() => File.Read());
    }

    // As a program before kept it: without a version, and an item with what only its form had.
    [Fact]
    public void Read_OneWithoutAVersion_GoesOnWithIt()
    {
        System.IO.File.WriteAllText(Path, """
            {"parts":["Bills"],"household":{"version":2,"start":"2026-03-02","numbers":"1,234.56","fillDay":"Friday","holidays":{"set":"none"},"bank":{"kind":"teller"},
              "opening":{"account":"0"},"name":"Alder flat","currency":"EUR","notes":["50","20"],"coins":["2"]},
             "begun":{"debts":{"minimum":{"kind":"fixed"},"name":"Card"},"sources":{"schedule":{"kind":"twiceMonthly","anchor":"2026-03-06"},"shift":"before","name":"Mira"}}}
            """);

        StartDraft start = File.Read()!;

        Assert.Equal(("Alder flat", "EUR"), (start.Household.Name, start.Household.Settings.Currency!.Value.Code));
        Assert.Equal([50, 20], start.Household.Settings.Notes!.Value);
        Assert.Equal(["Bills"], start.Passed);
        Assert.Equal("Card", start.Begun.Debt!.Name);
        Assert.Equal(ScheduleKind.TwiceMonthly, start.Begun.Source!.Schedule!.Kind);
    }

    [Theory]
    [InlineData("{\"version\":2,\"parts\":[],\"household\":{\"version\":2}}")]
    [InlineData("{\"version\":1,\"parts\":[]}")]
    [InlineData("{\"version\":1,\"parts\":[],\"household\":{\"version\":2,\"name\":5}}")]
    [InlineData("{\"version\":1,\"parts\":[],\"household\":{\"version\":2")]
    [InlineData("")]
    public void Read_WhatCannotBeRead_SaysSoAndKeepsIt(string text)
    {
        System.IO.File.WriteAllText(Path, text);

        StoreException fault = Assert.Throws<StoreException>(() => File.Read());

        Assert.Equal($"{Path} can't be read, so the household begun there can't be taken up. Nothing was changed; move the file away to begin anew.", fault.Said());
        Assert.Equal(text, System.IO.File.ReadAllText(Path));
    }

    [Fact]
    public void Write_EachTime_SyncsTheNameToo()
    {
        var synced = new List<string>();
        try
        {
            FolderSync.Syncing = synced.Add;
            File.Write(StartDraft.Fresh(new LocalDate(2026, 3, 2)));
        }
        finally
        {
            FolderSync.Syncing = null;
        }

        Assert.Equal([scratch.Data.Path], synced.Where(folder => folder == scratch.Data.Path));
        Assert.Equal(["start.json"], Directory.EnumerateFiles(scratch.Data.Path).Select(System.IO.Path.GetFileName));
    }
}
