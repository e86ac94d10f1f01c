using System.Text.Json.Serialization;

namespace Payday.Statements.Answers;

/// <summary>A <see cref="StatementSummary"/> as it stands in an answer; what there is none of is left out.</summary>
/// <param name="Currency">The ISO 4217 code.</param>
/// <param name="From">Its first day, ISO 8601.</param>
/// <param name="To">Its last day, ISO 8601.</param>
/// <param name="Lines">How many booked lines were read.</param>
/// <param name="Sum">Their sum, with the currency's decimals, as all amounts here.</param>
/// <param name="Opening">The booked balance before them.</param>
/// <param name="Closing">The booked balance after them.</param>
/// <param name="AddsUp">Null where it can't be known.</param>
public sealed record StatementRow(
    string Currency,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? From,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? To,
    int Lines,
    string Sum,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Opening,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Closing,
    bool? AddsUp);
