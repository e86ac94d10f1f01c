namespace Payday.Screens.Terminals;

/// <summary>Lines of the terminal that move together, among others that stay.</summary>
/// <param name="Top">The first row that it takes.</param>
/// <param name="Bottom">The last one.</param>
/// <param name="Lines">By how many rows they move up, or down where it is less than zero.</param>
internal readonly record struct LineScroll(int Top, int Bottom, int Lines)
{
    // A page turned by a screen has a line or two in common at most, which is no gain.
    private const int MostLines = 4;
    private const int Sequences = 18;
    private const int Jump = 5;
    private const int GapPassed = 4;

    /// <summary>The one that leaves the least to write, by a rough count; null where none is a gain.</summary>
    public static LineScroll? Best(ShownCell[][] wanted, ShownCell[][] shown)
    {
        int[] before = [.. wanted.Select((row, at) => Cost(row, shown[at]))];
        if (before.Sum() <= Sequences)
        {
            return null;
        }

        LineScroll? best = null;
        int most = Sequences;
        foreach (int lines in Enumerable.Range(1, Math.Min(MostLines, wanted.Length - 1)).SelectMany(count => new[] { count, -count }))
        {
            (LineScroll scroll, int gain) = Best(wanted, shown, before, lines);
            if (gain > most)
            {
                (best, most) = (scroll, gain);
            }
        }

        return best;
    }

    /// <summary>What is shown after it.</summary>
    public ShownCell[][] Of(ShownCell[][] shown)
    {
        ShownCell[][] after = [.. shown];
        for (int row = Top; row <= Bottom; row++)
        {
            int from = row + Lines;
            after[row] = from >= Top && from <= Bottom ? shown[from] : Blank(shown[row].Length);
        }

        return after;
    }

    // The stretch of rows with the largest gain: those that come in blank are at one end of it, and what they cost is taken off.
    private static (LineScroll Scroll, int Gain) Best(ShownCell[][] wanted, ShownCell[][] shown, int[] before, int lines)
    {
        (LineScroll Scroll, int Gain) best = default;
        int count = wanted.Length;
        int length = Math.Abs(lines);
        int[] gains = new int[count];
        int[] blank = new int[count];
        for (int row = 0; row < count; row++)
        {
            int from = row + lines;
            gains[row] = from >= 0 && from < count ? before[row] - Cost(wanted[row], shown[from]) : 0;
            blank[row] = before[row] - Cost(wanted[row], Blank(wanted[row].Length));
        }

        for (int top = 0; top < count - length; top++)
        {
            int gain = 0;
            for (int moved = top; moved + length < count; moved++)
            {
                gain += gains[lines > 0 ? moved : moved + length];
                int whole = gain;
                for (int row = 0; row < length; row++)
                {
                    whole += blank[lines > 0 ? moved + 1 + row : top + row];
                }

                if (whole > best.Gain)
                {
                    best = (new LineScroll(top, moved + length, lines), whole);
                }
            }
        }

        return best;
    }

    private static ShownCell[] Blank(int columns)
    {
        var cells = new ShownCell[columns];
        cells.AsSpan().Fill(ShownCell.Blank);
        return cells;
    }

    private static int Cost(ShownCell[] wanted, ShownCell[] shown)
    {
        if (ReferenceEquals(wanted, shown) || wanted.AsSpan().SequenceEqual(shown))
        {
            return 0;
        }

        int cost = Jump;
        int gap = 0;
        for (int column = 0; column < wanted.Length; column++)
        {
            if (wanted[column] == shown[column])
            {
                gap++;
                continue;
            }

            cost += wanted[column].Bytes + Math.Min(gap, GapPassed);
            gap = 0;
        }

        return cost;
    }
}
