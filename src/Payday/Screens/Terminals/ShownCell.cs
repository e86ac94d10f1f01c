using Terminal.Gui.Drawing;
using Terminal.Gui.Text;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Screens.Terminals;

/// <summary>A cell as a terminal shows it; without text, the second half of a wide character.</summary>
/// <remarks>Blanks that look alike are equal: without a background, a line or colours turned round nothing of their ink shows.</remarks>
internal readonly record struct ShownCell
{
    private ShownCell(string text, Attribute attribute)
    {
        Text = text;
        Attribute = attribute;
    }

    /// <summary>A blank on the terminal's own background.</summary>
    public static ShownCell Blank { get; } = new(" ", Pen.Own);

    /// <summary>What stands in it, one character as people see it.</summary>
    public string Text { get; }

    /// <summary>How it shows.</summary>
    public Attribute Attribute { get; }

    /// <summary>Whether it is the second half of the character before it.</summary>
    public bool IsSecond => Text.Length == 0;

    /// <summary>Whether it is a blank on the terminal's own background.</summary>
    public bool IsBlank => Text == " " && Attribute == Pen.Own;

    /// <summary>
    /// Whether every terminal takes it for one column; of all other characters some widths are told otherwise by some terminals.
    /// </summary>
    public bool IsSurelyOne => Text is [< '\u0300' or (>= '\u2010' and <= '\u2027') or (>= '\u2500' and <= '\u259F') or '\u2713' or (>= '\u2800' and <= '\u28FF')];

    /// <summary>How many bytes its text has in UTF-8, or about so many.</summary>
    public int Bytes => Text is [var one] ? one < '\u0080' ? 1 : one < '\u0800' ? 2 : 3 : 2 * Text.Length;

    /// <summary>A cell of a text.</summary>
    public static ShownCell Of(string text, Attribute? attribute)
    {
        Attribute shown = attribute ?? Pen.Own;
        return text is null or "" or " "
            ? Pen.ErasesLikeBlank(shown) ? Blank : new ShownCell(" ", shown)
            : new ShownCell(text, shown);
    }

    /// <summary>Appends a character: one cell, or two for a wide one.</summary>
    public static void Append(ICollection<ShownCell> cells, string text, Attribute attribute)
    {
        var cell = Of(text, attribute);
        cells.Add(cell);
        if (cell.IsWide)
        {
            cells.Add(SecondOf(cell));
        }
    }

    /// <summary>What the library holds, row by row.</summary>
    public static ShownCell[][] Of(Cell[,] held)
    {
        var rows = new ShownCell[held.GetLength(0)][];
        for (int row = 0; row < rows.Length; row++)
        {
            var cells = new ShownCell[held.GetLength(1)];
            for (int column = 0; column < cells.Length; column++)
            {
                cells[column] = Of(held[row, column].Grapheme, held[row, column].Attribute);
                if (column + 1 < cells.Length && cells[column].IsWide)
                {
                    cells[column + 1] = SecondOf(cells[column]);
                    column++;
                }
            }

            rows[row] = cells;
        }

        return rows;
    }

    private bool IsWide => !IsSurelyOne && Text.GetColumns() > 1;

    private static ShownCell SecondOf(ShownCell first) => new("", first.Attribute);
}
