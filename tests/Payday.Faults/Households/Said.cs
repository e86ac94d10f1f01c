using System.Text.Json.Nodes;

namespace Payday.Faults.Households;

/// <summary>What a command answered.</summary>
/// <param name="Exit">0 done, 1 refused or something waits, 2 not called right.</param>
/// <param name="Out">The answer.</param>
/// <param name="Error">The refusal.</param>
internal sealed record Said(int Exit, string Out, string Error)
{
    /// <summary>The answer as JSON.</summary>
    public JsonNode Json => JsonNode.Parse(Out)!;
}
