using System.Collections.Immutable;
using Payday.Text;

namespace Payday.Screens.Frames;

/// <summary>A stretch of text of one ink.</summary>
/// <param name="Text">Clean text.</param>
/// <param name="Ink">What it is.</param>
internal readonly record struct Span(string Text, Ink Ink);

/// <summary>One line of a screen.</summary>
/// <param name="Spans">From left to right.</param>
internal readonly record struct FrameLine(ImmutableArray<Span> Spans)
{
    /// <summary>An empty line.</summary>
    public static FrameLine Empty { get; } = new([]);

    /// <summary>A line of one ink.</summary>
    public static FrameLine Of(string text, Ink ink = Ink.Plain) => new([new Span(text, ink)]);

    /// <summary>The text alone.</summary>
    public string Text => string.Concat(Spans.Select(span => span.Text));

    /// <summary>The line cut or filled to a width in columns.</summary>
    public FrameLine Fit(int width)
    {
        var spans = ImmutableArray.CreateBuilder<Span>();
        int left = width;
        foreach (Span span in Spans)
        {
            string text = TextColumns.Truncate(span.Text, left);
            spans.Add(span with { Text = text });
            left -= TextColumns.Width(text);
        }

        spans.Add(new Span(new string(' ', left), Ink.Plain));
        return new FrameLine(spans.ToImmutable());
    }
}
