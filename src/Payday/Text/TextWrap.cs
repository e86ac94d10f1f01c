using System.Collections.Immutable;

namespace Payday.Text;

/// <summary>Breaks text into lines.</summary>
internal static class TextWrap
{
    /// <summary>The text in lines of at most a width in columns, broken at blanks; a word wider than a line is broken inside.</summary>
    /// <param name="text">One line of clean text; runs of blanks count as one.</param>
    /// <param name="width">Columns, 2 or more, so that a wide character fits.</param>
    /// <returns>No lines for blank text.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is below 2.</exception>
    public static ImmutableArray<string> Lines(string text, int width)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 2);
        var lines = ImmutableArray.CreateBuilder<string>();
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (TextColumns.Width(longer) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (TextColumns.Width(line) > width)
            {
                string start = TextColumns.Start(line, width);
                lines.Add(start);
                line = line[start.Length..];
            }
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines.ToImmutable();
    }
}
