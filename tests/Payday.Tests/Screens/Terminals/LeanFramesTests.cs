using CsCheck;
using Payday.Screens.Terminals;
using Payday.Text;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Tests.Screens.Terminals;

public sealed class LeanFramesTests
{
    private static readonly Attribute Bold = new(Color.None, Color.None, TextStyle.Bold);
    private static readonly Attribute Reverse = new(Color.None, Color.None, TextStyle.Reverse);

    private static readonly Gen<Attribute> Inks = Gen.OneOf(
        Pen.Own,
        Pen.Own,
        Bold,
        Reverse,
        new Attribute(Color.None, Color.None, TextStyle.Faint | TextStyle.Italic),
        new Attribute(Color.None, Color.None, TextStyle.Bold | TextStyle.Faint | TextStyle.Underline),
        new Attribute(Color.None, Color.None, TextStyle.Strikethrough | TextStyle.Blink),
        new Attribute(new Color(ColorName16.BrightCyan), Color.None, TextStyle.Bold),
        new Attribute(new Color(ColorName16.Blue), Color.None),
        new Attribute(new Color(ColorName16.White), new Color(ColorName16.Black)),
        new Attribute(new Color(ColorName16.Black), new Color(ColorName16.White), TextStyle.Bold));

    private static readonly Gen<string> Words = Gen.OneOf(
        Gen.OneOf("Food", "12.00", "──────", "é", "✓", "█▎·", "食費", "e\u0301", "Pots ", "1", ">"),
        Gen.Int[1, 30].Select(blanks => new string(' ', blanks)));

    [Fact]
    public void Next_FrameAfterFrame_ShowsTheFrame() =>
        Frames().Sample(
            frames =>
            {
                var lean = new LeanFrames();
                var terminal = new EmulatedTerminal(frames[0].Length, frames[0][0].Length);
                foreach (ShownCell[][] frame in frames)
                {
                    terminal.Take(lean.Next(frame));
                    Assert.Equal(EmulatedTerminal.RowsOf(frame), terminal.Rows);
                }
            });

    [Fact]
    public void Next_TheSameFrame_SendsNothing() =>
        Frames().Sample(
            frames =>
            {
                var lean = new LeanFrames();
                lean.Next(frames[0]);
                Assert.Equal("", lean.Next([.. frames[0].Select(row => row.ToArray())]));
            });

    [Fact]
    public void Next_AfterForget_SendsAllOfIt()
    {
        ShownCell[][] frame = Page("Food", "Fares");
        var lean = new LeanFrames();
        string first = lean.Next(frame);
        lean.Forget();
        Assert.Equal(first, lean.Next(frame));
        Assert.Equal("\e[m\e[H\e[JFood\r\nFares", first);
    }

    [Fact]
    public void Next_AnotherSize_SendsAllOfIt()
    {
        var lean = new LeanFrames();
        lean.Next(Page("Food", "Fares"));
        Assert.StartsWith("\e[m\e[H\e[J", lean.Next(Page("Food")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Food                    12.00", "Food                    13.00", "\e[1;26H3")]
    [InlineData("Food   12.00  ahead", "Fuel   12.50  ahead", "\e[1;2Huel\e[6C5")]
    [InlineData("Food 12.00", "Fool 13.00", "\e[1;4Hl 13")]
    [InlineData("Food for a week", "Food", "\e[1;6H\e[K")]
    [InlineData("Food abc", "Food", "\e[1;6H   ")]
    [InlineData("Food for two weeks and more 12.00", "Food                        12.00", "\e[1;6H\e[22X")]
    [InlineData("食費 12.00", "食事 12.00", "\e[1;3H事")]
    public void Next_OneRow_SendsTheCheapest(string before, string after, string sent)
    {
        var lean = new LeanFrames();
        lean.Next(Page(before));
        Assert.Equal(sent, lean.Next(Page(after)));
    }

    [Fact]
    public void Next_NextRow_IsReachedByItsLineEnd()
    {
        var lean = new LeanFrames();
        lean.Next(Page("a12", "a34"));
        Assert.Equal("\e[1;2H56\r\na78", lean.Next(Page("a56", "a78")));
    }

    [Fact]
    public void Next_Attributes_ChangesWhatDiffers()
    {
        var lean = new LeanFrames();
        lean.Next([Row("Food", Bold)]);
        Assert.Equal("\e[H\e[7mFood", lean.Next([Row("Food", Reverse with { Style = TextStyle.Bold | TextStyle.Reverse })]));
        Assert.Equal("\e[H\e[mFood", lean.Next([Row("Food", Pen.Own)]));
    }

    [Theory]
    [InlineData(1, "\e[2;9r\e[9H\n\e[r\e[9HThe line of 9")]
    [InlineData(2, "\e[2;9r\e[9H\n\n\e[r\e[8HThe line of 9\r\nThe line of 10")]
    [InlineData(-1, "\e[2;9r\e[2H\eM\e[r\e[2HThe line of 0")]
    public void Next_LinesThatMove_AreMoved(int by, string sent)
    {
        static ShownCell[][] At(int first) => Page(["A page", .. Enumerable.Range(first, 8).Select(line => $"The line of {line}"), "Esc home"]);
        var lean = new LeanFrames();
        lean.Next(At(1));
        Assert.Equal(sent, lean.Next(At(1 + by)));
    }

    [Fact]
    public void Next_LinesMoveWhileItWritesOnABackground_ComeInBlank()
    {
        var lean = new LeanFrames();
        ShownCell[][] before = Page([.. Enumerable.Range(1, 9).Select(line => $"The line of {line}")]);
        before[8] = Row("The line of 9", Reverse);
        ShownCell[][] after = [.. before[1..], Row("", Pen.Own)];
        lean.Next(before);
        Assert.Equal("\e[m\e[1;9r\e[9H\n\e[r", lean.Next(after));
    }

    private static Gen<ShownCell[][]> Rows(int rows, int columns) =>
        Gen.Select(Words, Inks).Array[0, 8].Select(words => Fit(words, columns)).Array[rows];

    // Each frame is the one before with lines moved, some of them new and some words in others.
    private static Gen<ShownCell[][][]> Frames() =>
        from rows in Gen.Int[1, 14]
        from columns in Gen.Int[2, 50]
        from first in Rows(rows, columns)
        from changes in Gen.Select(Gen.Int[0, rows - 1], Gen.Int[0, rows - 1], Gen.Int[-5, 5], Rows(rows, columns), Gen.Int[0, 3], Gen.Int[0, columns - 1]).Array[1, 4]
        select changes.Aggregate(new[] { first }, (frames, change) => [.. frames, Changed(frames[^1], change)]);

    private static ShownCell[][] Changed(ShownCell[][] before, (int Top, int Bottom, int By, ShownCell[][] Others, int New, int Column) change)
    {
        ShownCell[][] after = [.. before.Select(row => row.ToArray())];
        for (int row = change.Top; row <= change.Bottom; row++)
        {
            int from = row + change.By;
            after[row] = from >= change.Top && from <= change.Bottom ? [.. before[from]] : change.Others[row];
        }

        foreach (int row in Enumerable.Range(0, Math.Min(change.New, after.Length)))
        {
            // From a column on the row is another one, unless that would tear a wide character.
            int at = change.Column;
            if (!after[row][at].IsSecond && !change.Others[row][at].IsSecond)
            {
                after[row] = [.. after[row][..at], .. change.Others[row][at..]];
            }
        }

        return after;
    }

    private static ShownCell[] Fit((string Text, Attribute Ink)[] words, int columns)
    {
        var cells = new List<ShownCell>();
        foreach ((string text, Attribute ink) in words)
        {
            foreach (string cluster in TextColumns.Clusters(text).Where(cluster => cells.Count + TextColumns.ClusterWidth(cluster) <= columns))
            {
                ShownCell.Append(cells, cluster, ink);
            }
        }

        cells.AddRange(Enumerable.Repeat(ShownCell.Blank, columns - cells.Count));
        return [.. cells];
    }

    private static ShownCell[][] Page(params string[] lines) => [.. lines.Select(line => Row(line, Pen.Own))];

    private static ShownCell[] Row(string text, Attribute ink) => Fit([(text, ink)], 40);
}
