using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Payday.Store.Json;

public sealed partial class JsonCursor
{
    /// <summary>One line of text, blanks around it taken off.</summary>
    /// <param name="longest">The most characters (Unicode scalar values); the least is 1.</param>
    public string OneLine(int longest)
    {
        if (!Is(JsonValueKind.String, "a text in quotes"))
        {
            return "";
        }

        string text = Text.Trim();
        int length = text.EnumerateRunes().Count();
        if (length == 0)
        {
            Refuse("This text is empty; write something.");
        }
        else if (length > longest)
        {
            Refuse($"This text has {length} characters; shorten it to {longest}.");
        }
        else if (SafeText.FirstHarmful(text) is { } rune)
        {
            Refuse($"This text holds a character that can't be shown (U+{rune.Value:X4}); take it out.");
        }

        return text;
    }

    /// <summary>One of some words; empty where it is none of them.</summary>
    public string Word(params IReadOnlyList<string> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        string wanted = Listed(words);
        if (!Is(JsonValueKind.String, wanted))
        {
            return "";
        }

        if (words.Contains(Text))
        {
            return Text;
        }

        Refuse($"\"{SafeText.Shown(Text)}\" is not known here; write {wanted}.");
        return "";
    }

    /// <summary>The value that a word stands for.</summary>
    public T OneOf<T>(JsonChoices<T> choices)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(choices);
        return choices.ValueOf(Word(choices.Words));
    }

    /// <summary>True or false.</summary>
    public bool Flag()
    {
        if (Kind is JsonValueKind.True or JsonValueKind.False)
        {
            return Kind == JsonValueKind.True;
        }

        Is(JsonValueKind.True, "true or false, without quotes");
        return false;
    }

    /// <summary>A whole number, without quotes.</summary>
    /// <param name="least">The least that is taken; also the stand-in.</param>
    /// <param name="most">The most that is taken.</param>
    public int Count(int least, int most)
    {
        string wanted = string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}, without quotes");
        if (!Is(JsonValueKind.Number, wanted))
        {
            return least;
        }

        if (element!.Value.TryGetInt32(out int count) && count >= least && count <= most)
        {
            return count;
        }

        Refuse($"{SafeText.Shown(element.Value.GetRawText())} doesn't fit here; write {wanted}.");
        return least;
    }

    /// <summary>A fraction in quotes, such as <c>"0.1999"</c> for 19.99 %, with at most 6 decimals.</summary>
    /// <param name="most">The most that is taken; the least is 0.</param>
    public decimal Fraction(int most)
    {
        const NumberStyles DigitsAndPoint = NumberStyles.AllowDecimalPoint;
        if (IsUnquoted() || !Is(JsonValueKind.String, "a fraction in quotes, such as \"0.1999\" for 19.99 %"))
        {
            return 0;
        }

        int point = Text.IndexOf('.', StringComparison.Ordinal);
        if (!decimal.TryParse(Text, DigitsAndPoint, CultureInfo.InvariantCulture, out decimal fraction))
        {
            Refuse($"\"{SafeText.Shown(Text)}\" is not a fraction; write 19.99 % as \"0.1999\".");
        }
        else if (point >= 0 && Text.Length - point - 1 > 6)
        {
            Refuse($"\"{SafeText.Shown(Text)}\" has more than 6 decimals; round it.");
        }
        else if (fraction > most)
        {
            Refuse($"\"{SafeText.Shown(Text)}\" is above {most}, that is {most}00 %; write 19.99 % as \"0.1999\".");
        }
        else
        {
            return fraction;
        }

        return 0;
    }

    private string Text => element!.Value.GetString()!;

    private bool IsUnquoted()
    {
        if (Kind != JsonValueKind.Number)
        {
            return false;
        }

        string number = SafeText.Shown(element!.Value.GetRawText());
        Refuse($"{number} stands here without quotes; write it as \"{number}\".");
        return true;
    }

    private static string Listed(IReadOnlyList<string> words)
    {
        var list = new StringBuilder();
        for (int i = 0; i < words.Count; i++)
        {
            list.Append(i == 0 ? "" : i == words.Count - 1 ? " or " : ", ").Append('"').Append(words[i]).Append('"');
        }

        return list.ToString();
    }
}
