using System.Globalization;
using System.Text;

namespace Payday.Manual;

/// <summary>Text as the macros of a manual page take it (man(7) of groff and mandoc).</summary>
internal static class Roff
{
    /// <summary>Words are neither cut nor pulled apart: what can be typed stands as it is typed.</summary>
    public static string[] AsWritten { get; } = [".nh", ".ad l"];

    /// <summary>Text that prints as it stands; what lies between backticks is bold.</summary>
    public static string Text(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] parts = text.Split('`');
        return AtStart(string.Concat(parts.Select((part, i) => i % 2 == 1 ? Bold(part) : Plain(part))));
    }

    /// <summary>Bold text that prints as it stands.</summary>
    public static string Bold(string text) => text.Length == 0 ? "" : $"\\fB{Plain(text)}\\fP";

    /// <summary>Text in italics, as what stands for something else is set.</summary>
    public static string Italic(string text) => text.Length == 0 ? "" : $"\\fI{Plain(text)}\\fP";

    /// <summary>Text as an argument of a macro.</summary>
    public static string Quoted(string text) => $"\"{Plain(text)}\"";

    // A hyphen that can be copied into a shell, and the signs that a typesetter would make prettier.
    private static string Plain(string text)
    {
        var roff = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            roff.Append(rune.Value switch
            {
                '\\' => "\\e",
                '-' => "\\-",
                '\'' => "\\(aq",
                '"' => "\\(dq",
                '`' => "\\(ga",
                '^' => "\\(ha",
                '~' => "\\(ti",
                < 0x80 => rune.ToString(),
                _ => string.Create(CultureInfo.InvariantCulture, $"\\[u{rune.Value:X4}]"),
            });
        }

        return roff.ToString();
    }

    // A point at the beginning of a line would make it a request.
    private static string AtStart(string line) => line.StartsWith('.') ? "\\&" + line : line;
}
