using System.Globalization;
using System.Text;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Screens.Terminals;

/// <summary>
/// Writes cells to a terminal, each move of the cursor and each change of attributes the cheapest that takes it there. Of ECMA-48
/// it uses CR, LF, CUP, CUF, EL, ED, ECH and SGR, and of the VT100 DECSTBM and RI: xterm, tmux, screen and the Linux console know them.
/// </summary>
internal sealed class LeanWriter(Pen pen)
{
    // From there on erasing, and stepping over what is erased, takes fewer bytes than sending blanks.
    private const int LeastErased = 11;
    private const int LeastErasedLast = 6;
    private const int LeastErasedAtEnd = 4;

    // Beyond so many rows a move by name is no longer.
    private const int MostLineFeeds = 2;

    private readonly StringBuilder sent = new();
    private (int Row, int Column)? cursor;
    private bool isCursorSure;

    /// <summary>How the terminal writes after it all.</summary>
    public Pen Pen { get; private set; } = pen;

    /// <summary>What is sent.</summary>
    public override string ToString() => sent.ToString();

    /// <summary>Erases the whole terminal.</summary>
    public void EraseAll()
    {
        Take(Pen.Own);
        sent.Append("\e[H\e[J");
        At(0, 0);
    }

    /// <summary>Moves lines of the terminal up or down among others that stay; blank ones come in.</summary>
    public void Scroll(LineScroll scroll)
    {
        Plain();
        Add($"\e[{scroll.Top + 1};{scroll.Bottom + 1}r");
        if (scroll.Lines > 0)
        {
            Add($"\e[{scroll.Bottom + 1}H").Append('\n', scroll.Lines);
        }
        else
        {
            // That sequence leaves the cursor at the top left.
            if (scroll.Top > 0)
            {
                Add($"\e[{scroll.Top + 1}H");
            }

            sent.Insert(sent.Length, "\eM", -scroll.Lines);
        }

        sent.Append("\e[r");
        cursor = null;
    }

    /// <summary>Writes what of a row differs from what is shown there.</summary>
    public void Row(int row, ReadOnlySpan<ShownCell> wanted, ReadOnlySpan<ShownCell> shown)
    {
        int end = wanted.Length;
        while (end > 0 && wanted[end - 1].IsBlank)
        {
            end--;
        }

        for (int column = 0; column < end;)
        {
            if (!Differs(wanted, shown, column))
            {
                column++;
                continue;
            }

            int blanks = Blanks(wanted[column..end], shown[column..end]);
            MoveTo(row, column, wanted);
            if (blanks >= (wanted[(column + blanks)..].SequenceEqual(shown[(column + blanks)..]) ? LeastErasedLast : LeastErased))
            {
                Erase(row, column, $"\e[{blanks}X");
                column += blanks;
            }
            else
            {
                Put(row, column, wanted[column]);
                column++;
                while (column < end && wanted[column].IsSecond)
                {
                    column++;
                }
            }
        }

        RowEnd(row, end, wanted, shown);
    }

    // How many blanks there are up to the last one that something else stands in.
    private static int Blanks(ReadOnlySpan<ShownCell> wanted, ReadOnlySpan<ShownCell> shown)
    {
        int blanks = 0;
        for (int at = 0; at < wanted.Length && wanted[at].IsBlank; at++)
        {
            blanks = shown[at].IsBlank ? blanks : at + 1;
        }

        return blanks;
    }

    // A second half goes with its character.
    private static bool Differs(ReadOnlySpan<ShownCell> wanted, ReadOnlySpan<ShownCell> shown, int column) =>
        wanted[column] != shown[column]
        || (column + 1 < wanted.Length && wanted[column + 1].IsSecond && wanted[column + 1] != shown[column + 1]);

    private void RowEnd(int row, int end, ReadOnlySpan<ShownCell> wanted, ReadOnlySpan<ShownCell> shown)
    {
        int first = end + shown[end..].IndexOfAnyExcept(ShownCell.Blank);
        if (first < end)
        {
            return;
        }

        int last = shown.LastIndexOfAnyExcept(ShownCell.Blank);
        MoveTo(row, first, wanted);
        if (last - first + 1 >= LeastErasedAtEnd)
        {
            Erase(row, first, "\e[K");
            return;
        }

        for (int column = first; column <= last; column++)
        {
            Put(row, column, ShownCell.Blank);
        }
    }

    private void Erase(int row, int column, string sequence)
    {
        if (!isCursorSure)
        {
            Jump(row, column);
        }

        Plain();
        sent.Append(sequence);
    }

    private void Put(int row, int column, ShownCell cell)
    {
        if (!Pen.Writes(cell))
        {
            Take(cell.Attribute);
        }

        sent.Append(cell.Text);
        bool isSure = isCursorSure && cell.IsSurelyOne;
        At(row, column + 1);
        isCursorSure = isSure;
    }

    private void MoveTo(int row, int column, ReadOnlySpan<ShownCell> wanted)
    {
        // After a wide character the cursor is two columns on, as far as one can know; what follows is sent straight on.
        if (cursor is { } wide && !isCursorSure && wide.Row == row && wide.Column < column && Seconds(wanted, wide.Column, column))
        {
            cursor = (row, column);
        }

        if (cursor == (row, column))
        {
            return;
        }

        if (cursor is not { } from || !isCursorSure || from.Row > row || row - from.Row > MostLineFeeds || (from.Row == row && from.Column > column))
        {
            Jump(row, column);
            return;
        }

        int feeds = row - from.Row;
        int start = feeds > 0 ? 0 : from.Column;
        string jump = Name(row, column);
        string step = column == start ? "" : column == start + 1 ? "\e[C" : string.Create(CultureInfo.InvariantCulture, $"\e[{column - start}C");
        int again = Again(wanted[start..column], wanted.Length > column ? wanted[column] : ShownCell.Blank);
        int other = Math.Min(jump.Length, (2 * feeds) + step.Length);
        if ((2 * feeds) + again <= other)
        {
            Feed(feeds);
            for (int between = start; between < column; between++)
            {
                Put(row, between, wanted[between]);
            }
        }
        else if ((2 * feeds) + step.Length < jump.Length)
        {
            Feed(feeds);
            sent.Append(step);
        }
        else
        {
            sent.Append(jump);
        }

        At(row, column);
    }

    private static bool Seconds(ReadOnlySpan<ShownCell> wanted, int from, int to)
    {
        for (int column = from; column < to; column++)
        {
            if (!wanted[column].IsSecond)
            {
                return false;
            }
        }

        return true;
    }

    // How many bytes more it takes to send cells again than to step over them, with the attributes of what follows.
    private int Again(ReadOnlySpan<ShownCell> cells, ShownCell next)
    {
        Pen with = Pen;
        int bytes = 0;
        foreach (ShownCell cell in cells)
        {
            if (!cell.IsSurelyOne)
            {
                return int.MaxValue / 2;
            }

            bytes += cell.Bytes + Change(ref with, cell);
            if (bytes > 20)
            {
                return bytes;
            }
        }

        Pen straight = Pen;
        return bytes + Change(ref with, next) - Change(ref straight, next);
    }

    private static int Change(ref Pen pen, ShownCell cell)
    {
        if (pen.Writes(cell))
        {
            return 0;
        }

        int bytes = pen.To(cell.Attribute).Length;
        pen = new Pen(cell.Attribute);
        return bytes;
    }

    private void Jump(int row, int column)
    {
        sent.Append(Name(row, column));
        At(row, column);
    }

    private static string Name(int row, int column) => (row, column) switch
    {
        (0, 0) => "\e[H",
        (_, 0) => string.Create(CultureInfo.InvariantCulture, $"\e[{row + 1}H"),
        _ => string.Create(CultureInfo.InvariantCulture, $"\e[{row + 1};{column + 1}H"),
    };

    private void Feed(int lines) => sent.Insert(sent.Length, "\r\n", lines);

    private void At(int row, int column)
    {
        cursor = (row, column);
        isCursorSure = true;
    }

    // So that what is erased or comes in is blank on every terminal.
    private void Plain()
    {
        if (!Pen.Writes(ShownCell.Blank))
        {
            Take(Pen.Own);
        }
    }

    private void Take(Attribute attribute)
    {
        sent.Append(Pen.To(attribute));
        Pen = new Pen(attribute);
    }

    private StringBuilder Add(FormattableString sequence) => sent.Append(sequence.ToString(CultureInfo.InvariantCulture));
}
