using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A currency by its code.</summary>
internal sealed class CurrencyType : FieldType
{
    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) => value.ToString();

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work) =>
        Currency.TryFromCode(text.Trim().ToUpperInvariant(), out Currency currency) && currency != default
            ? Result.Of(Text(currency.Code))
            : Result.Refused<JsonNode>($"'{Shown(text)}' is no code known here; write USD, EUR, GBP or another of ISO 4217's.");
}
