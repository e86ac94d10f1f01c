using System.Collections.Immutable;
using Payday.Charts;

namespace Payday.Screens.Frames;

/// <summary>Plain text cut where it shows in inks of its own: rules, bars and charts, changed figures.</summary>
/// <remarks>Reports draw for paper and pipes too, with hyphens and stars; on a screen they become lines and inks here, in one place.</remarks>
internal static class InkedText
{
    private const char Line = '\u2500';
    private const char Hyphen = '-';
    private const char Star = '*';
    private const int ShortestRule = 3;

    /// <summary>A rule so many columns wide.</summary>
    public static string Rule(int width) => new(Line, width);

    /// <summary>The stretches of a line.</summary>
    public static ImmutableArray<Span> Spans(string text, Ink ink)
    {
        if (IsRule(text))
        {
            return [new Span(text.Replace(Hyphen, Line), Ink.Rule)];
        }

        return ink != Ink.Plain || !text.Any(IsMark) ? [new Span(text, ink)] : Cut(text);
    }

    private static ImmutableArray<Span> Cut(string text)
    {
        var spans = ImmutableArray.CreateBuilder<Span>();
        for (int start = 0, end; start < text.Length; start = end)
        {
            Ink ink = At(text, start);
            end = start + 1;
            while (end < text.Length && (ink == Ink.Changed ? text[end] != ' ' : At(text, end) == ink))
            {
                end++;
            }

            spans.Add(new Span(text[start..end], ink));
        }

        return spans.ToImmutable();
    }

    private static bool IsRule(string text) => text.Length >= ShortestRule && text.AsSpan().Trim(' ') is { Length: >= ShortestRule } rest && !rest.ContainsAnyExcept(Hyphen);

    private static bool IsMark(char one) => one is Star || Bars.IsPart(one);

    // A dot alone stands between words.
    private static bool IsBar(string text, int at) => Bars.IsPart(text[at])
        && (text[at] != Bars.Empty || (at > 0 && Bars.IsPart(text[at - 1])) || (at + 1 < text.Length && Bars.IsPart(text[at + 1])));

    private static Ink At(string text, int at) => IsBar(text, at) ? Ink.Bar
        : text[at] == Star && at + 1 < text.Length && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] == Hyphen) ? Ink.Changed
        : Ink.Plain;
}
