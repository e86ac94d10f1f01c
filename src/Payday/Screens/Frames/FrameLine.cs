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

    /// <summary>A line of one ink; rules have their own, and in plain text bars and changed figures.</summary>
    public static FrameLine Of(string text, Ink ink = Ink.Plain) => new(InkedText.Spans(text, ink));

    /// <summary>A rule over a width.</summary>
    /// <param name="width">In columns.</param>
    /// <param name="after">What stands at its right end; may be empty.</param>
    public static FrameLine Rule(int width, string after = "") => after.Length == 0
        ? new([new Span(InkedText.Rule(width), Ink.Rule)])
        : new([new Span(InkedText.Rule(Math.Max(0, width - TextColumns.Width(after) - 1)), Ink.Rule), new Span(after, Ink.Quiet), new Span(InkedText.Rule(1), Ink.Rule)]);

    /// <summary>A rule over a width with words in it: at its beginning, before its end, and in between.</summary>
    /// <param name="width">In columns.</param>
    /// <param name="left">At its beginning.</param>
    /// <param name="middle">Before the right one; may be empty.</param>
    /// <param name="right">Before its end; may be empty.</param>
    public static FrameLine Headed(int width, string left, string middle = "", string right = "")
    {
        const int End = 2;
        Span[] after =
        [
            .. middle.Length == 0 ? Array.Empty<Span>() : [new Span($" {middle} ", Ink.Quiet), new Span(InkedText.Rule(End), Ink.Rule)],
            .. right.Length == 0 ? Array.Empty<Span>() : [new Span($" {right} ", Ink.Strong), new Span(InkedText.Rule(1), Ink.Rule)],
        ];
        Span[] before = [new Span(InkedText.Rule(End), Ink.Rule), new Span($" {left} ", Ink.Strong)];
        int room = width - before.Concat(after).Sum(span => TextColumns.Width(span.Text));
        return new FrameLine([.. before, new Span(InkedText.Rule(Math.Max(1, room)), Ink.Rule), .. after]).Fit(width);
    }

    /// <summary>Whether it is a rule with words in it, which says nothing without the lines under it.</summary>
    public bool IsHeading => Spans is [{ Ink: Ink.Rule }, { Ink: Ink.Strong }, ..];

    /// <summary>Two lines one after the other.</summary>
    public static FrameLine operator +(FrameLine left, FrameLine right) => new([.. left.Spans, .. right.Spans]);

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
