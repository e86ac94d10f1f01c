using System.Collections.Immutable;
using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.ViewBase;
using Held = Terminal.Gui.Drawing.Cell;

namespace Payday.Screens.Shell;

/// <summary>Puts frames on a view that fills the terminal: only those cells that differ from what the driver holds.</summary>
/// <remarks>
/// The driver's own cells are what is compared with, so nothing stale stays after a resize, a return to the foreground
/// or a field that lay over them.
/// </remarks>
internal sealed class FrameCanvas(View view, Look look)
{
    /// <summary>Draws a frame.</summary>
    public void Show(TextFrame frame)
    {
        if (view.App?.Driver?.Contents is not { } held)
        {
            return;
        }

        for (int row = 0; row < Math.Min(frame.Lines.Length, held.GetLength(0)); row++)
        {
            ImmutableArray<Cell> cells = Cells(frame.Lines[row]);
            DrawRow(row, cells, ToSend(row, cells, held));
        }
    }

    private void DrawRow(int row, ImmutableArray<Cell> cells, bool[] send)
    {
        for (int start = 0, end; start < send.Length; start = end)
        {
            end = start + 1;
            while (end < send.Length && send[end] == send[start] && cells[end].Ink == cells[start].Ink)
            {
                end++;
            }

            if (send[start])
            {
                view.SetAttribute(look.Of(cells[start].Ink));
                view.AddStr(start, row, string.Concat(cells[start..end].Select(cell => cell.Text)));
            }
        }
    }

    private bool[] ToSend(int row, ImmutableArray<Cell> cells, Held[,] held)
    {
        var send = new bool[Math.Min(cells.Length, held.GetLength(1))];
        for (int column = 0; column < send.Length; column++)
        {
            Cell cell = cells[column];
            send[column] = cell.Text.Length == 0
                ? column > 0 && send[column - 1]
                : held[row, column].Grapheme != cell.Text || held[row, column].Attribute != look.Of(cell.Ink);
        }

        return send;
    }

    private ImmutableArray<Cell> Cells(FrameLine line)
    {
        var cells = ImmutableArray.CreateBuilder<Cell>();
        foreach (Span span in line.Spans)
        {
            foreach (string cluster in TextColumns.Clusters(look.Fold(span.Text)))
            {
                cells.Add(new Cell(cluster, span.Ink));
                for (int extra = TextColumns.ClusterWidth(cluster); extra > 1; extra--)
                {
                    cells.Add(new Cell("", span.Ink));
                }
            }
        }

        return cells.ToImmutable();
    }

    // The second half of a wide character is an empty cell after its first.
    private readonly record struct Cell(string Text, Ink Ink);
}
