using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;

namespace Payday.Statements.Answers;

/// <summary>The JSON of what statements come to.</summary>
/// <remarks>
/// <c>{"statements":[{"currency":"EUR","from":"2026-03-01","to":"2026-03-31","lines":4,"sum":"-10.00","opening":"33.06","closing":"23.06","addsUp":true}]}</c>.
/// Amounts are strings with the currency's decimals. A balance or day that there is none of is left out; <c>addsUp</c> is null where it can't be known.
/// </remarks>
public static class SummaryJson
{
    // Nothing in it needs escaping for a web page.
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The JSON, in one line.</summary>
    public static string Of(IEnumerable<StatementSummary> summaries)
    {
        ArgumentNullException.ThrowIfNull(summaries);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteStartArray("statements");
            foreach (StatementSummary summary in summaries)
            {
                Write(json, summary);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Write(Utf8JsonWriter json, StatementSummary summary)
    {
        json.WriteStartObject();
        json.WriteString("currency", summary.Currency.Code);
        WriteDay(json, "from", summary.From);
        WriteDay(json, "to", summary.To);
        json.WriteNumber("lines", summary.Lines);
        json.WriteString("sum", summary.Sum.ToPlain());
        WriteAmount(json, "opening", summary.Opening);
        WriteAmount(json, "closing", summary.Closing);
        if (summary.AddsUp is { } addsUp)
        {
            json.WriteBoolean("addsUp", addsUp);
        }
        else
        {
            json.WriteNull("addsUp");
        }

        json.WriteEndObject();
    }

    private static void WriteDay(Utf8JsonWriter json, string name, LocalDate? day)
    {
        if (day is { } known)
        {
            json.WriteString(name, LocalDatePattern.Iso.Format(known));
        }
    }

    private static void WriteAmount(Utf8JsonWriter json, string name, Money? amount)
    {
        if (amount is { } known)
        {
            json.WriteString(name, known.ToPlain());
        }
    }
}
