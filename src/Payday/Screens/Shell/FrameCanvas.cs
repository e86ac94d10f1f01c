using System.Collections.Immutable;
using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.ViewBase;

namespace Payday.Screens.Shell;

/// <summary>Puts frames on a view, cell by cell, and only those cells that differ from the frame before.</summary>
internal sealed class FrameCanvas(View view, Look look)
{
    private ImmutableArray<ImmutableArray<Cell>> shown = [];

    /// <summary>Draws everything next time.</summary>
    public void Forget() => shown = [];

    /// <summary>Draws a frame.</summary>
    public void Show(TextFrame frame)
    {
        ImmutableArray<ImmutableArray<Cell>> cells = [.. frame.Lines.Select(line => Cells(line))];
        bool all = shown.Length != cells.Length || (cells.Length > 0 && shown[0].Length != cells[0].Length);
        for (int row = 0; row < cells.Length; row++)
        {
            DrawRow(row, cells[row], all ? [] : shown[row]);
        }

        shown = cells;
    }

    private void DrawRow(int row, ImmutableArray<Cell> cells, ImmutableArray<Cell> before)
    {
        int column = 0;
        while (column < cells.Length)
        {
            if (column < before.Length && before[column] == cells[column])
            {
                column++;
                continue;
            }

            // A run of changed cells of one ink; a wide character's second cell is empty and belongs to its first.
            int end = column + 1;
            while (end < cells.Length && cells[end].Ink == cells[column].Ink
                && (cells[end].Text.Length == 0 || end >= before.Length || before[end] != cells[end]))
            {
                end++;
            }

            view.SetAttribute(look.Of(cells[column].Ink));
            view.AddStr(column, row, string.Concat(cells[column..end].Select(cell => cell.Text)));
            column = end;
        }
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

    private readonly record struct Cell(string Text, Ink Ink);
}
