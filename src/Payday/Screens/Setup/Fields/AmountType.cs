using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>An amount in the household's currency; a sum such as 12.50+3 is taken.</summary>
/// <param name="aboveZero">Whether zero is refused too.</param>
internal sealed class AmountType(bool aboveZero = false) : FieldType
{
    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work)
    {
        Result<Money> amount = Money.ParsePlain(value.ToString(), work.Currency);
        return amount.Ok ? amount.Value.ToString(work.Style) : value.ToString();
    }

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work)
    {
        Result<Money> amount = Money.ParseSum(text, work.Currency, work.Style);
        if (!amount.Ok)
        {
            return Result.Refused<JsonNode>(amount.Fault);
        }

        if (amount.Value.IsNegative)
        {
            return Result.Refused<JsonNode>("An amount below zero has no place here.");
        }

        return aboveZero && amount.Value.IsZero
            ? Result.Refused<JsonNode>("Zero has no place here; write an amount above it.")
            : Result.Of(Text(amount.Value.ToPlain()));
    }
}
