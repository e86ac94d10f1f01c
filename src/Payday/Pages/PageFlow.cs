using System.Collections.Immutable;
using Payday.Drawing;
using Payday.Text;

namespace Payday.Pages;

/// <summary>Pieces that go down a page, and on to further pages where it is full.</summary>
/// <param name="blank">Makes a page.</param>
/// <param name="head">Draws what stands at the top of each, and says where it ends.</param>
/// <param name="foot">The room for a page's number.</param>
internal sealed class PageFlow(Func<Sketch> blank, Func<Sketch, double> head, double foot)
{
    private readonly List<Sketch> pages = [];
    private double y;

    /// <summary>How high a piece may be to fit one page.</summary>
    public double Room
    {
        get
        {
            Sketch page = blank();
            return page.Bottom - foot - head(page);
        }
    }

    /// <summary>Whether a piece would go on to a new page; then that is begun.</summary>
    public bool Turns(double height)
    {
        if (pages.Count > 0 && y + height <= pages[^1].Bottom - foot)
        {
            return false;
        }

        bool goesOn = pages.Count > 0;
        Begin();
        return goesOn;
    }

    /// <summary>Begins a new page where some pieces that belong together don't fit this one.</summary>
    public void Keep(double height) => Turns(height);

    /// <summary>Draws a piece.</summary>
    /// <param name="height">Its height.</param>
    /// <param name="draw">Draws it on a page, from some height on.</param>
    public void Take(double height, Action<Sketch, double> draw)
    {
        Turns(height);
        draw(pages[^1], y);
        y += height;
    }

    /// <summary>Draws a sentence, in lines where it is too long for one.</summary>
    /// <param name="text">The sentence; blanks that don't break hold words together.</param>
    /// <param name="room">How wide the lines may be.</param>
    /// <param name="size">In points.</param>
    /// <param name="isToTick">Whether a box stands before it.</param>
    public void Paragraph(string text, double room, double size, bool isToTick = false)
    {
        double indent = isToTick ? size * 1.4 : 0;
        bool first = isToTick;
        foreach (string line in TypeWidths.Wrap(CleanText.OneLine(text), room - indent, size).Select(line => line.Replace('\u00A0', ' ')))
        {
            bool ticked = first;
            first = false;
            Take(size * 1.4, (page, y) =>
            {
                page.Words(page.Left + indent, y + size, line, size);
                if (ticked)
                {
                    page.Box(page.Left, y + size, size);
                }
            });
        }

        Skip(size * 0.5);
    }

    /// <summary>Leaves some room, as far as there is.</summary>
    public void Skip(double height) => y += height;

    /// <summary>The pages, numbered where there are several.</summary>
    public ImmutableArray<DrawnPage> Finished(Action<Sketch, int, int> number)
    {
        if (pages.Count == 0)
        {
            Begin();
        }

        if (pages.Count > 1)
        {
            for (int i = 0; i < pages.Count; i++)
            {
                number(pages[i], i + 1, pages.Count);
            }
        }

        return [.. pages.Select(page => page.Page)];
    }

    // A head that takes half a page stands on the first alone.
    private bool IsLow(Sketch page) => head(blank()) < (page.Top + page.Bottom) / 2;

    private void Begin()
    {
        Sketch page = blank();
        bool hasHead = pages.Count == 0 || IsLow(page);
        pages.Add(page);
        y = hasHead ? head(page) : page.Top;
    }
}
