using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Shell;

/// <summary>Where something is typed on a screen, and what stands there: what is asked for, and the keys that end it.</summary>
internal static class TypedLine
{
    /// <summary>The keys while something is typed.</summary>
    public const string Keys = " Enter take  Esc leave as it was";

    // A free line is looked for so near the bottom that it is no row of a table.
    private const int FootLines = 4;

    // What is asked for has at most so much of the width, so that there is room to type.
    private const int MostPercent = 60;

    private const string After = ": ";

    /// <summary>The row in which is typed: a free one under what is said of the row under the cursor, else the last of that.</summary>
    /// <param name="screen">The screen while nothing is typed.</param>
    /// <param name="standing">How many lines above its keys stay in view.</param>
    public static int Row(TextFrame screen, int standing)
    {
        int last = screen.Lines.Length - 2 - standing;
        int first = last - FootLines + 1;
        int free = Enumerable.Range(first, FootLines).LastOrDefault(IsFree, last);
        while (free > first && IsFree(free - 1))
        {
            free--;
        }

        return free;

        bool IsFree(int row) => row > 0 && string.IsNullOrWhiteSpace(screen.Lines[row].Text);
    }

    /// <summary>The line above the row in which is typed: a sentence that goes on under it ends in dots.</summary>
    /// <param name="screen">The screen while nothing is typed.</param>
    /// <param name="row">The row in which is typed, not the first.</param>
    /// <param name="width">The terminal's width in columns.</param>
    public static FrameLine Above(TextFrame screen, int row, int width)
    {
        FrameLine above = screen.Lines[row - 1];
        string text = above.Text.TrimEnd();
        bool goesOn = text.Length > 0 && !string.IsNullOrWhiteSpace(screen.Lines[row].Text) && (char.IsLetterOrDigit(text[^1]) || text[^1] == ',');
        return goesOn ? FrameLine.Of(TextColumns.Truncate(text + " …", width - 1), above.Spans[0].Ink).Fit(width) : above;
    }

    /// <summary>Where the field begins, in columns and rows.</summary>
    public static Point Begins(CellEdit cell, int row, int width) => new(TextColumns.Width(Asked(cell, width)), row);

    /// <summary>What is asked for, up to where the field begins.</summary>
    /// <param name="cell">What is typed.</param>
    /// <param name="width">The terminal's width in columns.</param>
    public static string Asked(CellEdit cell, int width) =>
        " " + TextColumns.Truncate(CleanText.OneLine(cell.Prompt), (width * MostPercent / 100) - After.Length - 1) + After;
}
