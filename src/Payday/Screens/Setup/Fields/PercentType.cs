using System.Globalization;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A percentage as people write it, such as 19.99; a draft holds it as a fraction.</summary>
internal sealed class PercentType : FieldType<decimal?>
{
    /// <inheritdoc/>
    public override string Show(decimal? value, SetupFacts facts) => Typed(value, facts) + " %";

    /// <inheritdoc/>
    public override string Typed(decimal? value, SetupFacts facts) =>
        facts.Style.Written((value!.Value * 100).ToString("0.####", CultureInfo.InvariantCulture));

    /// <inheritdoc/>
    public override Result<decimal?> Take(string text, SetupFacts facts)
    {
        string plain = text.Trim().TrimEnd('%').TrimEnd();
        plain = plain.Contains('.', StringComparison.Ordinal) && facts.Style.DecimalMark != "."
            ? ""
            : plain.Replace(facts.Style.DecimalMark, ".", StringComparison.Ordinal);
        return decimal.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal percent)
            ? Result.Of<decimal?>(percent / 100)
            : Result.Refused<decimal?>(new TypedFault.NotAPercentage(text));
    }
}
