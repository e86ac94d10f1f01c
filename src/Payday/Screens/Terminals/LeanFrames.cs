using System.Text;

namespace Payday.Screens.Terminals;

/// <summary>
/// Frame after frame for a terminal, each in few bytes: what is shown already isn't sent, and where that is shorter lines are
/// moved as a whole (<see cref="LineScroll"/>).
/// </summary>
internal sealed class LeanFrames
{
    private ShownCell[][]? shown;
    private Pen pen;

    /// <summary>Nothing is known of the terminal any more: the next frame is sent whole.</summary>
    public void Forget() => shown = null;

    /// <summary>What a terminal has to be sent so that it shows a frame.</summary>
    /// <param name="wanted">The frame, row by row.</param>
    public string Next(ShownCell[][] wanted)
    {
        LeanWriter writer = shown is null || shown.Length != wanted.Length || shown[0].Length != wanted[0].Length
            ? Anew(wanted)
            : After(shown, wanted);
        shown = wanted;
        pen = writer.Pen;
        return writer.ToString();
    }

    private static LeanWriter Anew(ShownCell[][] wanted)
    {
        var writer = new LeanWriter(default);
        writer.EraseAll();
        ShownCell[] blank = [.. Enumerable.Repeat(ShownCell.Blank, wanted[0].Length)];
        for (int row = 0; row < wanted.Length; row++)
        {
            writer.Row(row, wanted[row], blank);
        }

        return writer;
    }

    private LeanWriter After(ShownCell[][] before, ShownCell[][] wanted)
    {
        LeanWriter still = Changes(new LeanWriter(pen), before, wanted);
        if (LineScroll.Best(wanted, before) is not { } scroll)
        {
            return still;
        }

        var moving = new LeanWriter(pen);
        moving.Scroll(scroll);
        Changes(moving, scroll.Of(before), wanted);
        return Bytes(moving) < Bytes(still) ? moving : still;
    }

    private static LeanWriter Changes(LeanWriter writer, ShownCell[][] before, ShownCell[][] wanted)
    {
        for (int row = 0; row < wanted.Length; row++)
        {
            writer.Row(row, wanted[row], before[row]);
        }

        return writer;
    }

    private static int Bytes(LeanWriter writer) => Encoding.UTF8.GetByteCount(writer.ToString());
}
