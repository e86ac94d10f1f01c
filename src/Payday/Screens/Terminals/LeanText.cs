using System.Buffers;
using System.Globalization;
using System.Text;

namespace Payday.Screens.Terminals;

/// <summary>
/// The same text for a terminal in fewer bytes: a run of blanks on the terminal's own background is erased (ECH, ECMA-48
/// 8.3.38, which xterm, tmux, screen and the Linux console know), and attributes that follow each other are set by one sequence.
/// </summary>
internal sealed class LeanText
{
    // Erasing n characters takes five bytes, stepping over them as many again.
    private const int LeastAtEnd = 6;
    private const int LeastWithin = 12;

    private static readonly SearchValues<char> Figures = SearchValues.Create("0123456789;");

    private bool isReversed;
    private bool isUnderlined;
    private bool hasBackground;

    private bool ErasesLikeBlank => !isReversed && !isUnderlined && !hasBackground;

    /// <summary>Begins a frame, of which the first text sets all its attributes.</summary>
    public void Begin() => isReversed = isUnderlined = hasBackground = false;

    /// <summary>Appends a piece.</summary>
    /// <param name="to">What is sent.</param>
    /// <param name="piece">Text and attributes, on one row; where the cursor is after it doesn't matter.</param>
    public void Append(StringBuilder to, string piece)
    {
        bool afterAttributes = false;
        for (int at = 0; at < piece.Length;)
        {
            if (Attributes(piece, at) is { } attributes)
            {
                Follow(attributes);
                if (afterAttributes)
                {
                    to[^1] = ';';
                }

                to.Append(afterAttributes ? attributes : "\e[" + attributes).Append('m');
                at += attributes.Length + 3;
                afterAttributes = true;
                continue;
            }

            afterAttributes = false;
            int blanks = piece.AsSpan(at).IndexOfAnyExcept(' ') is var found and >= 0 ? found : piece.Length - at;
            bool isLast = at + blanks == piece.Length;
            if (ErasesLikeBlank && blanks >= (isLast ? LeastAtEnd : LeastWithin))
            {
                to.Append(CultureInfo.InvariantCulture, $"\e[{blanks}X");
                if (!isLast)
                {
                    to.Append(CultureInfo.InvariantCulture, $"\e[{blanks}C");
                }
            }
            else if (blanks > 0)
            {
                to.Append(' ', blanks);
            }
            else
            {
                to.Append(piece[at]);
                blanks = 1;
            }

            at += blanks;
        }
    }

    // The figures between ESC [ and m, where such a sequence begins here.
    private static string? Attributes(string piece, int at)
    {
        if (piece.AsSpan(at) is not ['\e', '[', ..])
        {
            return null;
        }

        int end = piece.AsSpan(at + 2).IndexOfAnyExcept(Figures);
        return end > 0 && piece[at + 2 + end] == 'm' ? piece.Substring(at + 2, end) : null;
    }

    private void Follow(string attributes)
    {
        string[] codes = attributes.Split(';');
        for (int i = 0; i < codes.Length; i++)
        {
            switch (codes[i])
            {
                case "0":
                    Begin();
                    break;
                case "4" or "21":
                    isUnderlined = true;
                    break;
                case "24":
                    isUnderlined = false;
                    break;
                case "7":
                    isReversed = true;
                    break;
                case "27":
                    isReversed = false;
                    break;
                case "49":
                    hasBackground = false;
                    break;
                case "38" or "48":
                    // Of one more figure (an index) or three (red, green, blue), which are no attributes of their own.
                    hasBackground |= codes[i] == "48";
                    i += i + 1 < codes.Length && codes[i + 1] == "2" ? 4 : 2;
                    break;
                case ['4', >= '0' and <= '7'] or ['1', '0', >= '0' and <= '7']:
                    hasBackground = true;
                    break;
            }
        }
    }
}
