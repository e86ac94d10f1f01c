using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Payday.Screens.Terminals;

namespace Payday.Tests.Screens.Terminals;

public sealed partial class LeanTextTests
{
    [Theory]
    [InlineData("\e[39m\e[49m\e[1mFood\e[22m 12.00", "\e[39;49;1mFood\e[22m 12.00")]
    [InlineData("Food                    ", "Food\e[20X")]
    [InlineData("Food     ", "Food     ")]
    [InlineData("Food                    12.00", "Food\e[20X\e[20C12.00")]
    [InlineData("Food           12.00", "Food           12.00")]
    [InlineData("\e[7m                    \e[27m", "\e[7m                    \e[27m")]
    [InlineData("\e[44m                    \e[49m                    ", "\e[44m                    \e[49m\e[20X")]
    [InlineData("\e[38;5;44m                    ", "\e[38;5;44m\e[20X")]
    [InlineData("\e[48;2;0;0;49m                    ", "\e[48;2;0;0;49m                    ")]
    [InlineData("\e]8;;here\e\\m", "\e]8;;here\e\\m")]
    public void APieceIsSentInFewerBytes(string piece, string sent) => Assert.Equal(sent, Lean(piece));

    [Fact]
    public void WhatIsErasedLastsNoLongerThanItsAttributes()
    {
        var lean = new LeanText();
        var sent = new StringBuilder();
        lean.Append(sent, "\e[7mFood");
        lean.Append(sent, "          ");
        lean.Begin();
        lean.Append(sent, "          ");
        Assert.Equal("\e[7mFood          \e[10X", sent.ToString());
    }

    [Fact]
    public void TheSameShows()
    {
        Gen<string> text = Gen.Int[0, 30].Select(blanks => new string(' ', blanks));
        Gen<string> word = Gen.OneOf("Food", "─", "12.00", "é", "*", "m", "[", "5X");
        Gen<string> attribute = Gen.OneOf("0", "1", "4", "7", "22", "24", "27", "39", "49", "31", "97", "44", "107", "38;5;7", "48;5;4", "38;2;7;4;44", "48;2;49;0;0")
            .Select(code => $"\e[{code}m");
        Gen.OneOf(text, word, attribute).Array[0, 12].Select(string.Concat).Sample(piece =>
        {
            string sent = Lean(piece);
            Assert.Equal(Shown(piece), Shown(sent));
            Assert.True(sent.Length <= piece.Length);
        });
    }

    private static string Lean(string piece)
    {
        var sent = new StringBuilder();
        new LeanText().Append(sent, piece);
        return sent.ToString();
    }

    // A row of a terminal as ECMA-48 has it: each cell with what can be seen of its attributes.
    private static string Shown(string sent)
    {
        var cells = new SortedDictionary<int, string>();
        (bool Bold, bool Under, bool Reverse, string Ink, string Ground) now = default;
        int at = 0;
        foreach (Match part in Parts().Matches(sent))
        {
            int count = int.TryParse(part.Groups["figures"].Value, CultureInfo.InvariantCulture, out int found) ? found : 0;
            switch (part.Groups["end"].Value)
            {
                case "X":
                    Enumerable.Range(at, count).ToList().ForEach(column => cells[column] = $" {now.Ground}");
                    break;
                case "C":
                    at += count;
                    break;
                case "m":
                    now = After(now, part.Groups["figures"].Value);
                    break;
                default:
                    // A blank shows its background, and its ink only where that is turned round or underlines it.
                    cells[at++] = part.Value == " " && now is { Under: false, Reverse: false } ? $" {now.Ground}" : $"{part.Value}{now}";
                    break;
            }
        }

        return string.Join('|', cells.Select(cell => $"{cell.Key}{cell.Value}"));
    }

    private static (bool Bold, bool Under, bool Reverse, string Ink, string Ground) After((bool Bold, bool Under, bool Reverse, string Ink, string Ground) now, string figures)
    {
        foreach (Match code in Codes().Matches(figures))
        {
            now = code.Value switch
            {
                "0" => default,
                "1" => now with { Bold = true },
                "22" => now with { Bold = false },
                "4" => now with { Under = true },
                "24" => now with { Under = false },
                "7" => now with { Reverse = true },
                "27" => now with { Reverse = false },
                "39" => now with { Ink = "" },
                "49" => now with { Ground = "" },
                ['3', ..] or ['9', ..] => now with { Ink = code.Value },
                _ => now with { Ground = code.Value },
            };
        }

        return now with { Ink = now.Ink ?? "", Ground = now.Ground ?? "" };
    }

    [GeneratedRegex(@"\e\[(?<figures>[0-9;]*)(?<end>[A-Za-z])|(?s:.)")]
    private static partial Regex Parts();

    [GeneratedRegex(@"[34]8;5;\d+|[34]8;2;\d+;\d+;\d+|\d+")]
    private static partial Regex Codes();
}
