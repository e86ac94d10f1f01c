using System.Drawing;
using Payday.Screens.Frames;
using Payday.Screens.Shell;

namespace Payday.Tests.Screens.Shell;

public class PageScreenTests
{
    private static readonly Size Complete = TextFrame.Complete;

    [Fact]
    public void Draw_WhatItComesFromIsTheSame_MakesThePageOnce()
    {
        var page = new CountedPage { From = "one" };
        page.Draw(Complete);
        page.Draw(Complete);
        Assert.Equal(1, page.Made);

        page.From = "two";
        Assert.StartsWith(" two", page.Draw(Complete).Lines[2].Text, StringComparison.Ordinal);
        page.Draw(Complete with { Width = 70 });
        Assert.Equal(3, page.Made);
    }

    [Fact]
    public void Draw_NothingSaidOfWhatItComesFrom_MakesThePageEachTime()
    {
        var page = new CountedPage();
        page.Draw(Complete);
        page.Draw(Complete);
        Assert.Equal(2, page.Made);
    }

    // Headings that have gone by stay while rows are in view, and no row is passed over by who turns whole pages.
    [Fact]
    public void Draw_OfALongTable_KeepsItsHeadingsAndShowsEachRow()
    {
        var page = new TablePage();
        var seen = new HashSet<string>();
        for (int turn = 0; turn < 10; turn++)
        {
            string[] lines = [.. page.Draw(new Size(80, 20)).Lines.Select(line => line.Text.Trim())];
            seen.UnionWith(lines.Where(line => line.StartsWith("row ", StringComparison.Ordinal)));
            if (lines.Any(line => line.StartsWith("row ", StringComparison.Ordinal)) && turn < 3)
            {
                Assert.True(Array.IndexOf(lines, "heading") >= 0 && Array.IndexOf(lines, "heading") < Array.FindIndex(lines, line => line.StartsWith("row ", StringComparison.Ordinal)));
                Assert.Single(lines, "heading");
            }

            page.Bindings.Single(key => key.Name == "PgDn").Do();
        }

        Assert.Equal(TablePage.Rows, seen.Count);
        Assert.Contains("after", page.Draw(new Size(80, 20)).Lines.Select(line => line.Text.Trim()));
    }

    private sealed class TablePage : PageScreen
    {
        public const int Rows = 50;

        public override string Title => "Page";

        protected override PageTable? Table => new PageTable(3, 2, Rows);

        protected override IEnumerable<FrameLine> Lines(int width) =>
        [
            FrameLine.Of("one"), FrameLine.Of("two"), FrameLine.Of("three"), FrameLine.Of("heading"), FrameLine.Rule(width),
            .. Enumerable.Range(1, Rows).Select(row => FrameLine.Of($"row {row}")), FrameLine.Of("after"),
        ];
    }

    private sealed class CountedPage : PageScreen
    {
        public string? From { get; set; }

        public int Made { get; private set; }

        public override string Title => "Page";

        protected override object? Source => From;

        protected override IEnumerable<FrameLine> Lines(int width)
        {
            Made++;
            return [FrameLine.Of($" {From}")];
        }
    }
}
