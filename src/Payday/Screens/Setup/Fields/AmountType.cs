using System.Text.Json.Nodes;
using Payday.Core.Amounts;

namespace Payday.Screens.Setup.Fields;

/// <summary>An amount in the household's currency; a sum such as 12.50+3 is taken.</summary>
/// <param name="aboveZero">Whether zero is refused too.</param>
internal sealed class AmountType(bool aboveZero = false) : FieldType
{
    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work)
    {
        Read<Money> amount = Money.ParsePlain(value.ToString(), work.Currency);
        return amount.Ok ? amount.Value.ToString(work.Style) : value.ToString();
    }

    /// <inheritdoc/>
    public override Read<JsonNode> Take(string text, SetupWork work)
    {
        Read<Money> amount = Money.ParseSum(text, work.Currency, work.Style);
        if (!amount.Ok)
        {
            return Read.Refused<JsonNode>(amount.Fault);
        }

        if (amount.Value.IsNegative)
        {
            return Read.Refused<JsonNode>("An amount below zero has no place here.");
        }

        return aboveZero && amount.Value.IsZero
            ? Read.Refused<JsonNode>("Zero has no place here; write an amount above it.")
            : Read.Of(Text(amount.Value.ToPlain()));
    }
}
