using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Screens.Setup;

/// <summary>Faults of a household file for a person who sees forms and no file.</summary>
internal static partial class PlainFault
{
    // What the file calls a thing, and what the form does.
    private static readonly (string File, string Form)[] Names =
    [
        ("raise \"account\" or lower a \"setAside\" or \"has\"", "raise what is in the account, or lower what a bill or pot has of it"),
        ("lower \"atLeast\"", "lower the small money"),
        ("or write \"held\": \"cash\"", "or hold the pot in cash"),
        ("leave \"start\" as it is", "that date stays as it is"),
        ("; keep it in the file, with an \"until\" date", "; end it with a date instead"),
        ("keep it in the file", "keep it"),
        (", or leave it out", ""),
    ];

    /// <summary>The sentence alone, its amounts as the household writes them.</summary>
    public static string Sentence(string sentence, NumberStyle style)
    {
        string plain = Amounts().Replace(Items().Replace(sentence, "another one"), amount => Written(amount.Value, style));
        foreach ((string file, string form) in Names)
        {
            plain = plain.Replace(file, form, StringComparison.Ordinal);
        }

        return Ids().Replace(plain, "");
    }

    /// <summary>The sentence after what it is about.</summary>
    public static string Of(JsonFault fault, JsonObject root, NumberStyle style)
    {
        Match item = Items().Match(fault.Place);
        string sentence = Sentence(fault.Sentence, style);
        if (!item.Success)
        {
            return fault.Place.StartsWith("opening", StringComparison.Ordinal) ? $"Opening balances: {sentence}" : sentence;
        }

        int index = int.Parse(item.Groups[2].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);
        string name = root[item.Groups[1].Value]?[index]?["name"]?.ToString() ?? string.Create(CultureInfo.InvariantCulture, $"Number {index + 1}");
        return sentence.Contains($"\"{SafeText.Shown(name)}\"", StringComparison.Ordinal) ? sentence : $"{SafeText.Shown(name)}: {sentence}";
    }

    private static string Written(string amount, NumberStyle style)
    {
        string[] parts = amount.Split('.');
        for (int i = parts[0].Length - 3; i > 0; i -= 3)
        {
            parts[0] = parts[0].Insert(i, style.GroupMark);
        }

        return string.Join(style.DecimalMark, parts);
    }

    // Only where a name or what was typed isn't quoted: that stays as it is.
    [GeneratedRegex("""(?<!["'\w.,])[0-9]+\.[0-9]+(?!["'\w]|[.,][0-9])""")]
    private static partial Regex Amounts();

    [GeneratedRegex(@"\b(sources|bills|debts|pots)\[(\d{1,4})\]")]
    private static partial Regex Items();

    [GeneratedRegex(@" \(id [a-z0-9-]+\)")]
    private static partial Regex Ids();
}
