using System.Globalization;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A percentage as people write it, such as 19.99; files hold it as a fraction.</summary>
/// <param name="most">The highest percentage that is taken.</param>
internal sealed class PercentType(int most) : FieldType
{
    // A fraction has at most six decimals in the file, and a hundredth takes two of them.
    private const int MostDecimals = 4;

    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) => Typed(value, work) + " %";

    /// <inheritdoc/>
    public override string Typed(JsonNode value, SetupWork work) =>
        decimal.TryParse(value.ToString(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal fraction)
            ? (fraction * 100).ToString("0.####", CultureInfo.InvariantCulture).Replace(".", work.Style.DecimalMark, StringComparison.Ordinal)
            : value.ToString();

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work)
    {
        string plain = text.Trim().TrimEnd('%').TrimEnd();
        plain = plain.Contains('.', StringComparison.Ordinal) && work.Style.DecimalMark != "."
            ? ""
            : plain.Replace(work.Style.DecimalMark, ".", StringComparison.Ordinal);
        int point = plain.IndexOf('.', StringComparison.Ordinal);
        if (!decimal.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal percent))
        {
            return Result.Refused<JsonNode>($"'{Shown(text)}' is not a percentage; write 19{work.Style.DecimalMark}99 for 19{work.Style.DecimalMark}99 %.");
        }

        if (point >= 0 && plain.Length - point - 1 > MostDecimals)
        {
            return Result.Refused<JsonNode>($"A percentage has at most {MostDecimals} decimals here; round it.");
        }

        return percent > most
            ? Result.Refused<JsonNode>(string.Create(CultureInfo.InvariantCulture, $"That is above {most} %; write 19{work.Style.DecimalMark}99 for 19{work.Style.DecimalMark}99 %."))
            : Result.Of(Text((percent / 100).ToString(CultureInfo.InvariantCulture)));
    }
}
