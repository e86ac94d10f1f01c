using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using NodaTime;
using NodaTime.Text;

namespace Payday.Statements.Answers;

/// <summary>The JSON of what statements come to.</summary>
/// <remarks>
/// <c>{"statements":[{"currency":"EUR","from":"2026-03-01","to":"2026-03-31","lines":4,"sum":"-10.00","opening":"33.06","closing":"23.06","addsUp":true}]}</c>.
/// Amounts are strings with the currency's decimals. A balance or day that there is none of is left out; <c>addsUp</c> is null where it can't be known.
/// </remarks>
public static class SummaryJson
{
    /// <summary>Its shape, of which a schema can be made.</summary>
    public static JsonTypeInfo Shape => ReadJson.Readable.StatementsRead;

    /// <summary>The JSON, in one line.</summary>
    public static string Of(IEnumerable<StatementSummary> summaries)
    {
        ArgumentNullException.ThrowIfNull(summaries);
        return JsonSerializer.Serialize(new StatementsRead([.. summaries.Select(Row)]), ReadJson.Readable.StatementsRead);
    }

    private static StatementRow Row(StatementSummary summary) => new(
        summary.Currency.Code,
        Iso(summary.From),
        Iso(summary.To),
        summary.Lines,
        summary.Sum.ToPlain(),
        summary.Opening?.ToPlain(),
        summary.Closing?.ToPlain(),
        summary.AddsUp);

    private static string? Iso(LocalDate? day) => day is { } known ? LocalDatePattern.Iso.Format(known) : null;
}
