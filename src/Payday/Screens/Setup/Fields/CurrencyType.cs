using System.Text.Json.Nodes;
using Payday.Core.Amounts;

namespace Payday.Screens.Setup.Fields;

/// <summary>A currency by its code.</summary>
internal sealed class CurrencyType : FieldType
{
    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) => value.ToString();

    /// <inheritdoc/>
    public override Read<JsonNode> Take(string text, SetupWork work) =>
        Currency.TryFromCode(text.Trim().ToUpperInvariant(), out Currency currency) && currency != default
            ? Read.Of(Text(currency.Code))
            : Read.Refused<JsonNode>($"'{Shown(text)}' is no code known here; write USD, EUR, GBP or another of ISO 4217's.");
}
