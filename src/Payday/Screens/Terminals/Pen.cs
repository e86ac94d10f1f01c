using System.Globalization;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Screens.Terminals;

/// <summary>How the terminal writes what comes next, and the shortest sequence (SGR, ECMA-48 8.3.117) that changes it.</summary>
/// <param name="Now">As it is now; null where nobody knows.</param>
internal readonly record struct Pen(Attribute? Now)
{
    // What is seen of a blank; erasing takes the background on some terminals and not on others.
    private const TextStyle SeenOnBlanks = TextStyle.Reverse | TextStyle.Underline | TextStyle.Strikethrough;

    private static readonly (TextStyle Style, string On, string Off)[] Styles =
    [
        (TextStyle.Bold, "1", "22"), (TextStyle.Faint, "2", "22"), (TextStyle.Italic, "3", "23"), (TextStyle.Underline, "4", "24"),
        (TextStyle.Blink, "5", "25"), (TextStyle.Reverse, "7", "27"), (TextStyle.Strikethrough, "9", "29"),
    ];

    /// <summary>The terminal's own colours.</summary>
    public static Attribute Own { get; } = new(Color.None, Color.None, TextStyle.None);

    /// <summary>Whether a blank of it is what erasing leaves.</summary>
    public static bool ErasesLikeBlank(Attribute attribute) => attribute.Background == Color.None && (attribute.Style & SeenOnBlanks) == 0;

    /// <summary>Whether a cell can be written as it is.</summary>
    public bool Writes(ShownCell cell) => Now is { } now && (cell.IsBlank ? ErasesLikeBlank(now) : now == cell.Attribute);

    /// <summary>What makes it write in that way: what differs, or all from the beginning, whichever is shorter.</summary>
    public string To(Attribute to)
    {
        string anew = Sequence(to == Own ? [] : ["0", .. Changes(Own, to)]);
        if (Now is not { } now)
        {
            return anew;
        }

        string changed = now == to ? "" : Sequence(Changes(now, to));
        return changed.Length <= anew.Length ? changed : anew;
    }

    private static string Sequence(IEnumerable<string> codes) => $"\e[{string.Join(';', codes)}m";

    private static IEnumerable<string> Changes(Attribute from, Attribute to)
    {
        string[] off = [.. Styles.Where(one => (from.Style & ~to.Style & one.Style) != 0).Select(one => one.Off).Distinct()];
        foreach (string code in off)
        {
            yield return code;
        }

        foreach ((TextStyle style, string on, string itsOff) in Styles)
        {
            // What turns bold off turns faint off, and the other way round.
            if ((to.Style & style) != 0 && ((from.Style & style) == 0 || off.Contains(itsOff)))
            {
                yield return on;
            }
        }

        if (from.Foreground != to.Foreground)
        {
            yield return Code(to.Foreground, 0);
        }

        if (from.Background != to.Background)
        {
            yield return Code(to.Background, 10);
        }
    }

    // Of the sixteen colours alone, which is all that is drawn with; a background's code is ten more.
    private static string Code(Color colour, int more) =>
        ((colour == Color.None ? 39 : (int)colour.GetAnsiColorCode()) + more).ToString(CultureInfo.InvariantCulture);
}
