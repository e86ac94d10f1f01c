using System.Collections.Immutable;
using System.Globalization;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Payday.Tests.Pages;

/// <summary>A page of a PDF file as a reader sees it.</summary>
internal sealed class ReadPage
{
    private const double Touch = 0.6;
    private readonly Page page;

    private ReadPage(Page page) => this.page = page;

    /// <summary>Its words as they were set, from top to bottom.</summary>
    public IEnumerable<string> Words => Runs.Select(run => run.Words);

    /// <summary>All of it as lines: where, how large, in which type.</summary>
    public IEnumerable<string> Lines => Runs.Select(run => string.Create(
        CultureInfo.InvariantCulture, $"{run.Area.Left,4:0} {page.Height - run.BaseLine,4:0} {run.Size,4:0.#} {(run.IsBold ? "b" : " ")} {run.Words}"));

    /// <summary>The smallest type on it, in points.</summary>
    public double SmallestType => Runs.Min(run => run.Size);

    /// <summary>Its width and height.</summary>
    public (int Width, int Height) Size => ((int)page.Width, (int)page.Height);

    private ImmutableArray<Run> Runs =>
    [
        .. page.Letters.GroupBy(letter => letter.TextSequence).Select(Run.Of)
            .OrderByDescending(run => run.BaseLine).ThenBy(run => run.Area.Left),
    ];

    /// <summary>The pages of a file.</summary>
    public static ImmutableArray<ReadPage> Of(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(page => new ReadPage(page))];
    }

    /// <summary>Fails where words lie over other words, or anything outside the margins.</summary>
    public void IsClean(double margin)
    {
        Run[] runs = [.. Runs.Where(run => run.Words.Trim().Length > 0)];
        var inside = new PdfRectangle(margin - Touch, margin - Touch, page.Width - margin + Touch, page.Height - margin + Touch);
        foreach (Run run in runs)
        {
            Assert.True(Holds(inside, run.Area), $"Outside the margins: {run.Words} at {run.Area}");
        }

        foreach (PdfRectangle area in page.Paths.Select(path => path.GetBoundingRectangle()).OfType<PdfRectangle>())
        {
            Assert.True(Holds(inside, area), $"Outside the margins: a line at {area}");
        }

        for (int i = 0; i < runs.Length; i++)
        {
            for (int j = i + 1; j < runs.Length && runs[j].BaseLine > runs[i].BaseLine - 40; j++)
            {
                Assert.False(Overlap(runs[i].Area, runs[j].Area), $"Over each other: {runs[i].Words} and {runs[j].Words} at {runs[j].Area}");
            }
        }
    }

    private static bool Holds(PdfRectangle outer, PdfRectangle inner) =>
        inner.Left >= outer.Left && inner.Right <= outer.Right && inner.Bottom >= outer.Bottom && inner.Top <= outer.Top;

    private static bool Overlap(PdfRectangle one, PdfRectangle other) =>
        Math.Min(one.Right, other.Right) - Math.Max(one.Left, other.Left) > Touch
        && Math.Min(one.Top, other.Top) - Math.Max(one.Bottom, other.Bottom) > Touch;

    // What one operation sets: digits and capitals stand some 0.72 em over the base line, tails 0.21 below (Adobe font metrics).
    private sealed record Run(string Words, PdfRectangle Area, double BaseLine, double Size, bool IsBold)
    {
        public static Run Of(IEnumerable<Letter> letters)
        {
            Letter[] all = [.. letters];
            double size = Math.Round(all[0].PointSize, 2);
            double line = all[0].StartBaseLine.Y;
            return new Run(
                string.Concat(all.Select(letter => letter.Value)),
                new PdfRectangle(all.Min(letter => letter.StartBaseLine.X), line - (0.21 * size), all.Max(letter => letter.EndBaseLine.X), line + (0.72 * size)),
                line,
                size,
                all[0].FontName?.Contains("Bold", StringComparison.Ordinal) == true);
        }
    }
}
