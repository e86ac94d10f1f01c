using System.Globalization;
using System.Text.RegularExpressions;
using Payday.Screens.Terminals;
using Payday.Text;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Tests.Screens.Terminals;

/// <summary>What a terminal shows of what it is sent, as ECMA-48 and the VT100 have it; what it doesn't know is a fault.</summary>
/// <remarks>Erasing leaves the background, lines and turned colours of the moment, as on the most careless terminal.</remarks>
internal sealed partial class EmulatedTerminal
{
    private readonly string[][] cells;
    private readonly int rows;
    private readonly int columns;
    private (int Row, int Column) at;
    private (int Top, int Bottom) moving;
    private Style now = Style.Own;

    public EmulatedTerminal(int rows, int columns)
    {
        (this.rows, this.columns) = (rows, columns);
        moving = (0, rows - 1);
        cells = [.. Enumerable.Range(0, rows).Select(_ => Enumerable.Repeat("stale", columns).ToArray())];
    }

    /// <summary>Each row, with what can be seen of each cell's attributes.</summary>
    public IEnumerable<string> Rows => cells.Select(row => string.Join('|', row));

    /// <summary>The same of cells as they should show.</summary>
    public static IEnumerable<string> RowsOf(ShownCell[][] wanted) => wanted.Select(row => string.Join('|', row.Select(cell => Seen(cell.Text, Style.Of(cell.Attribute)))));

    /// <summary>Takes what is sent. Whatever a frame ends with, the whole terminal moves again and the cursor is put elsewhere.</summary>
    public void Take(string sent)
    {
        foreach (Match part in Parts().Matches(sent))
        {
            int[] figures = [.. part.Groups["figures"].Value.Split(';').Select(figure => figure.Length == 0 ? 0 : int.Parse(figure, CultureInfo.InvariantCulture))];
            switch (part.Groups["end"].Value)
            {
                case "" when part.Value[0] == '\e':
                    Assert.Equal("\eM", part.Value);
                    Back();
                    break;
                case "":
                    Text(part.Value);
                    break;
                case "m":
                    now = figures.Aggregate(now, (style, code) => style.After(code));
                    break;
                case "r":
                    moving = figures is [0] ? (0, rows - 1) : (figures[0] - 1, figures[1] - 1);
                    Assert.InRange(moving.Top, 0, moving.Bottom - 1);
                    Assert.True(moving.Bottom < rows);
                    at = (0, 0);
                    break;
                default:
                    Control(part.Groups["end"].Value, figures);
                    break;
            }
        }

        Assert.Equal((0, rows - 1), moving);
        at = (rows / 2, columns / 2);
    }

    private void Control(string end, int[] figures)
    {
        int count = Math.Max(1, figures[0]);
        switch (end)
        {
            case "H":
                at = (Math.Min(count, rows) - 1, Math.Min(Math.Max(1, figures.ElementAtOrDefault(1)), columns) - 1);
                break;
            case "C":
                at.Column = Math.Min(at.Column + count, columns - 1);
                break;
            case "X":
                Erase(at.Row, at.Column, Math.Min(at.Column + count, columns));
                break;
            case "K":
                Assert.True(at.Column < columns, "some terminals erase the last column then, and some don't");
                Erase(at.Row, at.Column, columns);
                break;
            case "J":
                Erase(at.Row, at.Column, columns);
                Enumerable.Range(at.Row + 1, rows - at.Row - 1).ToList().ForEach(row => Erase(row, 0, columns));
                break;
            default:
                Assert.Fail($"not every terminal knows {end}");
                break;
        }
    }

    private void Text(string text)
    {
        foreach (string cluster in TextColumns.Clusters(text))
        {
            if (cluster is "\r" or "\n" or "\r\n")
            {
                at.Column = cluster == "\n" ? at.Column : 0;
                if (cluster != "\r")
                {
                    Feed();
                }

                continue;
            }

            int width = TextColumns.ClusterWidth(cluster);
            Assert.True(at.Column + width <= columns, "it would go on in the next line");
            Break(at.Row, at.Column);
            Break(at.Row, at.Column + width);
            cells[at.Row][at.Column] = Seen(cluster, now);
            if (width > 1)
            {
                cells[at.Row][at.Column + 1] = Seen("", now);
            }

            at.Column += width;
        }
    }

    private void Feed()
    {
        if (at.Row == moving.Bottom)
        {
            Move(moving.Top, moving.Bottom, 1);
        }
        else
        {
            at.Row = Math.Min(at.Row + 1, rows - 1);
        }
    }

    private void Back()
    {
        if (at.Row == moving.Top)
        {
            Move(moving.Bottom, moving.Top, -1);
        }
        else
        {
            at.Row = Math.Max(at.Row - 1, 0);
        }
    }

    private void Move(int from, int to, int step)
    {
        for (int row = from; row != to; row += step)
        {
            cells[row] = cells[row + step];
        }

        cells[to] = new string[columns];
        Erase(to, 0, columns);
    }

    private void Erase(int row, int from, int to)
    {
        Break(row, from);
        Break(row, to);
        cells[row].AsSpan(from..to).Fill(Seen(" ", now));
    }

    // Half of a wide character that is written over leaves a blank of the other half.
    private void Break(int row, int column)
    {
        if (column > 0 && column < columns && cells[row][column] is ['~', ..])
        {
            cells[row][column - 1] = cells[row][column] = "broken";
        }
    }

    private static string Seen(string text, Style style) => (text, style) switch
    {
        ("", _) => "~" + style,
        (" ", { Under: false, Reverse: false, Strike: false }) => " " + style.Ground,
        _ => text + style,
    };

    private sealed record Style(bool Bold, bool Faint, bool Italic, bool Under, bool Blink, bool Reverse, bool Strike, int Ink, int Ground)
    {
        public static Style Own { get; } = new(false, false, false, false, false, false, false, 39, 49);

        public static Style Of(Attribute attribute) => new(
            attribute.Style.HasFlag(TextStyle.Bold),
            attribute.Style.HasFlag(TextStyle.Faint),
            attribute.Style.HasFlag(TextStyle.Italic),
            attribute.Style.HasFlag(TextStyle.Underline),
            attribute.Style.HasFlag(TextStyle.Blink),
            attribute.Style.HasFlag(TextStyle.Reverse),
            attribute.Style.HasFlag(TextStyle.Strikethrough),
            attribute.Foreground == Color.None ? 39 : (int)attribute.Foreground.GetAnsiColorCode(),
            attribute.Background == Color.None ? 49 : (int)attribute.Background.GetAnsiColorCode() + 10);

        public Style After(int code) => code switch
        {
            0 => Own,
            1 => this with { Bold = true },
            2 => this with { Faint = true },
            3 => this with { Italic = true },
            4 => this with { Under = true },
            5 => this with { Blink = true },
            7 => this with { Reverse = true },
            9 => this with { Strike = true },
            22 => this with { Bold = false, Faint = false },
            23 => this with { Italic = false },
            24 => this with { Under = false },
            25 => this with { Blink = false },
            27 => this with { Reverse = false },
            29 => this with { Strike = false },
            (>= 30 and <= 37) or 39 or (>= 90 and <= 97) => this with { Ink = code },
            (>= 40 and <= 47) or 49 or (>= 100 and <= 107) => this with { Ground = code },
            _ => throw new ArgumentOutOfRangeException(nameof(code), code, "not every terminal knows it"),
        };
    }

    [GeneratedRegex(@"\e\[(?<figures>[0-9;]*)(?<end>[A-Za-z@])|\e[^\[]|[^\e]+")]
    private static partial Regex Parts();
}
