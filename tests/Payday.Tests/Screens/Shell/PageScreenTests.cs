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
