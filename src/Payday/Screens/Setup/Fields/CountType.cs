using System.Globalization;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A whole number.</summary>
/// <param name="least">The least that is taken.</param>
/// <param name="most">The most that is taken.</param>
internal sealed class CountType(int least, int most) : FieldType
{
    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) => value.ToString();

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count >= least && count <= most
            ? Result.Of<JsonNode>(JsonValue.Create(count))
            : Result.Refused<JsonNode>(string.Create(CultureInfo.InvariantCulture, $"'{Shown(text)}' doesn't fit; write a whole number from {least} to {most}."));
}
