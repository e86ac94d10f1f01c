using System.Text;
using System.Text.RegularExpressions;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Mt940;

/// <summary>What a field :86: says, in any of the three ways that banks build it. Parts that it doesn't have are empty.</summary>
/// <param name="Text">What the line is for.</param>
/// <param name="Party">The other side's name.</param>
/// <param name="PartyAccount">The other side's account.</param>
/// <param name="Mandate">The mandate, else the creditor's identifier.</param>
/// <param name="Reference">The payer's reference.</param>
/// <param name="Code">The bank's three digits for the kind.</param>
internal sealed partial record Mt940Text(string Text, string Party, string PartyAccount, string Mandate, string Reference, string Code)
{
    /// <summary>Reads a field.</summary>
    public static Mt940Text Of(string field)
    {
        string joined = field.Replace("\n", "", StringComparison.Ordinal);
        return Numbered().Match(joined) is { Success: true } start ? OfNumbered(joined, start.Groups["mark"].Value[0])
            : Slashed().IsMatch(joined) ? OfSlashed(joined)
            : new Mt940Text(CleanText.Of(field), "", "", "", "", "");
    }

    // Annex 3 to the German data transmission agreement, 8.2.4: a code, then ?00, ?20 and so on; the pieces of the text follow without a blank.
    private static Mt940Text OfNumbered(string field, char mark)
    {
        var text = new StringBuilder();
        string title = "";
        string account = "";
        string party = "";
        foreach (string part in field[4..].Split(mark))
        {
            if (part.Length < 2 || !char.IsAsciiDigit(part[0]) || !char.IsAsciiDigit(part[1]))
            {
                text.Append(part.Length == 0 ? "" : mark + part);
                continue;
            }

            string value = part[2..];
            switch (DayReading.Number(part.AsSpan(0, 2)))
            {
                case 0:
                    title = value;
                    break;
                case (>= 20 and <= 29) or (>= 60 and <= 63):
                    text.Append(value);
                    break;
                case 31:
                    account = value;
                    break;
                case 32 or 33:
                    party += value;
                    break;
                default:
                    break;
            }
        }

        Mt940Text inner = OfPlus(text.ToString());
        return inner with
        {
            Text = CleanText.Join(title, inner.Text),
            Party = CleanText.Of(party),
            PartyAccount = CleanText.Of(account),
            Code = field[..3],
        };
    }

    // EREF+..., MREF+..., CRED+..., SVWZ+...: each goes on to the next.
    private static Mt940Text OfPlus(string text)
    {
        MatchCollection keys = PlusKeys().Matches(text);
        if (keys.Count == 0)
        {
            return new Mt940Text(CleanText.Of(text), "", "", "", "", "");
        }

        string Value(string key) => Between(text, keys, key);
        string purpose = Value("SVWZ");
        return new Mt940Text(
            CleanText.Join(text[..keys[0].Index], purpose), "", "", First(Value("MREF"), Value("CRED")), Provided(Value("EREF")), "");
    }

    // /EREF/.../NAME/.../REMI/...: each goes on to the next.
    private static Mt940Text OfSlashed(string text)
    {
        MatchCollection keys = SlashKeys().Matches(text);
        string Value(string key) => Between(text, keys, key);
        return new Mt940Text(
            CleanText.Of(First(Value("REMI"), Value("PURP"))),
            CleanText.Of(Value("NAME")),
            CleanText.Of(Value("IBAN")),
            First(Value("MARF"), Value("CSID")),
            Provided(First(Value("EREF"), Value("PREF"))),
            "");
    }

    private static string Between(string text, MatchCollection keys, string key)
    {
        for (int i = 0; i < keys.Count; i++)
        {
            if (keys[i].Groups["key"].Value == key)
            {
                int start = keys[i].Index + keys[i].Length;
                int end = i + 1 < keys.Count ? keys[i + 1].Index : text.Length;
                return text[start..Math.Max(start, end)].Trim('/', ' ');
            }
        }

        return "";
    }

    private static string First(string one, string other) => CleanText.Of(one.Length > 0 ? one : other);

    private static string Provided(string reference) => reference is "NOTPROVIDED" or "NONREF" ? "" : CleanText.Of(reference);

    [GeneratedRegex(@"^[0-9]{3}(?<mark>[?>+^|])[0-9]{2}", RegexOptions.CultureInvariant)]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^\s*/[A-Z]{2,4}/", RegexOptions.CultureInvariant)]
    private static partial Regex Slashed();

    [GeneratedRegex(@"(?<key>EREF|KREF|MREF|CRED|DEBT|SVWZ|ABWA|ABWE|IBAN|BIC)\+", RegexOptions.CultureInvariant)]
    private static partial Regex PlusKeys();

    [GeneratedRegex(@"/(?<key>EREF|PREF|KREF|MARF|CSID|BENM|ORDP|CNTP|NAME|IBAN|BIC|REMI|ISDT|TRTP|PURP|ULTD|ULTC|SVCL|RTRN|OCMT|CHGS)(?=/)", RegexOptions.CultureInvariant)]
    private static partial Regex SlashKeys();
}
