using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>
/// The least payment on a debt: <c>{"fixed":"50.00"}</c> or <c>{"percent":"0.02","floor":"20.00"}</c>.
/// </summary>
public static class MinimumFormat
{
    /// <summary>Reads a minimum.</summary>
    public static MinimumRule Read(JsonCursor minimum, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(minimum);
        JsonFields fields = minimum.Fields();
        if (fields.Optional("fixed") is { } amount)
        {
            MinimumRule always = new MinimumRule.Fixed(amount.Amount(currency));
            fields.RefuseOthers();
            return always;
        }

        MinimumRule rule = new MinimumRule.PercentOrFloor(
            fields.Required("percent").Fraction(1),
            fields.Required("floor").Amount(currency));
        fields.RefuseOthers();
        return rule;
    }

    /// <summary>Writes a minimum as a field.</summary>
    public static void Write(Utf8JsonWriter json, string name, MinimumRule minimum)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject(name);
        switch (minimum)
        {
            case MinimumRule.Fixed always:
                json.WriteAmount("fixed", always.Amount);
                break;
            case MinimumRule.PercentOrFloor rule:
                json.WriteFraction("percent", rule.Percent);
                json.WriteAmount("floor", rule.Floor);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(minimum));
        }

        json.WriteEndObject();
    }

    internal static Money Amount(MinimumRule minimum) => minimum switch
    {
        MinimumRule.Fixed always => always.Amount,
        MinimumRule.PercentOrFloor rule => rule.Floor,
        _ => throw new ArgumentOutOfRangeException(nameof(minimum)),
    };
}
