using System.Text;
using Ical.Net.CalendarComponents;

namespace Payday.Tests.Commands;

/// <summary>The calendar file of the demo household, as a calendar library of others (Ical.Net) reads it.</summary>
public class CalendarCommandTests
{
    [Fact]
    public void Ics_OfTheDemo_HasTheDaysThatTheTableHas()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        string[] table = [.. shell.Run("calendar", "--months", "12").Fine().Lines.Skip(1).Where(line => !line.StartsWith('-') && !line.StartsWith('─'))];

        CalendarEvent[] events = Written(shell);

        Assert.Equal(table.Length, events.Length);
        Assert.Equal(table.Count(line => line.Contains("fill day", StringComparison.Ordinal)), events.Count(one => one.Summary == "Fill the wallet"));
        Assert.Equal(table.Count(line => line.Contains("minimum due", StringComparison.Ordinal)), events.Count(IsMinimum));
        Assert.Equal(table.Count(line => line.Contains("payday", StringComparison.Ordinal)), events.Count(one => one.Summary!.Contains("ayday: ", StringComparison.Ordinal)));
        Assert.All(events, one => Assert.True(one is { IsAllDay: true, Class: "PRIVATE", Transparency: "TRANSPARENT" }));
        Assert.Equal(events.Length, events.Select(one => one.Uid).Distinct().Count());
        CalendarEvent first = events.First(one => one.Summary == "Fill the wallet");
        Assert.Contains("Food: ", first.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Ics_WrittenAgainLater_KnowsEachEventByTheSameId()
    {
        using TestShell shell = TestShell.WithDemo();
        CalendarEvent[] before = Written(shell);
        string file = shell.Run("export").Fine().Out;

        // Another name and another amount of the rent; then a payday that is closed, and the next day.
        string changed = file.Replace("\"name\": \"Rent\"", "\"name\": \"Rent, flat\"", StringComparison.Ordinal).Replace("\"amount\": \"1640.00\"", "\"amount\": \"1680.00\"", StringComparison.Ordinal);
        Assert.NotEqual(file, changed);
        shell.RunOn(changed, "import", "-").Fine();
        shell.Run("run", "--accept").Fine();
        shell.Today = shell.Today.PlusDays(1);
        CalendarEvent[] after = Written(shell);

        ILookup<string?, CalendarEvent> known = before.ToLookup(one => one.Uid);
        CalendarEvent[] again = [.. after.Where(one => known.Contains(one.Uid))];
        Assert.All(again, one => Assert.Equal(known[one.Uid].Single().Start, one.Start));

        // The surplus that was placed ends a debt sooner, so minimums at its end may be gone.
        Assert.Equal(
            before.Where(one => one.Start!.Value >= after[0].Start!.Value && !IsMinimum(one)).Select(one => one.Uid),
            again.Where(one => !IsMinimum(one)).Select(one => one.Uid));
        Assert.Contains(again, IsMinimum);
        Assert.Contains(again, one => one.Summary == "Rent, flat: due" && known[one.Uid].Single().Summary == "Rent: due");
        Assert.Contains(again, one => one.Description != known[one.Uid].Single().Description && one.Summary == "Rent, flat: due");
    }

    [Fact]
    public void Ics_WhereAnotherHasTheFolderOpen_HasTheSameIds()
    {
        using TestShell shell = TestShell.WithDemo();
        IEnumerable<string?> before = [.. Written(shell).Select(one => one.Uid)];

        using (Payday.Store.BookStore.Open(shell.Data))
        {
            Ran ran = shell.Run("calendar", "--ics", shell.In("payday.ics"), "--replace");

            Assert.Equal(0, ran.Exit);
        }

        Assert.Equal(before, Read(shell).Select(one => one.Uid));
    }

    [Fact]
    public void Ics_WhereAFileIsThere_LeavesIt()
    {
        using TestShell shell = TestShell.WithDemo();
        string path = shell.File("mine.ics", "mine");

        Ran ran = shell.Run("calendar", "--ics", path);

        Assert.Equal(new Ran(1, "", $"payday: {path} is already there; give another name, or add --replace.\n"), ran);
        Assert.Equal("mine", File.ReadAllText(path));
        Assert.Equal(new Ran(2, "", "payday: --replace goes with --ics. See payday calendar --help.\n"), shell.Run("calendar", "--replace"));
    }

    private static bool IsMinimum(CalendarEvent one) => one.Summary!.EndsWith(": minimum due", StringComparison.Ordinal);

    private static CalendarEvent[] Written(TestShell shell)
    {
        shell.Run("calendar", "--ics", shell.In("payday.ics"), "--replace").Fine();
        return Read(shell);
    }

    private static CalendarEvent[] Read(TestShell shell) =>
        [.. Ical.Net.Calendar.Load(File.ReadAllText(shell.In("payday.ics"), Encoding.UTF8))!.Events];
}
