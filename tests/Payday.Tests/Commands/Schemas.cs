using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Payday.Commands;
using Payday.Json;
using Payday.Store.Formats;
using Payday.Store.HouseholdFiles;

namespace Payday.Tests.Commands;

/// <summary>The schemas in <c>demo</c>, made from the types of the answers and from the field table of the household file (JSON Schema, draft 2020-12).</summary>
internal static class Schemas
{
    private const string Draft = "https://json-schema.org/draft/2020-12/schema";

    /// <summary>By command: the type of its answer; of <c>show</c> and others that have several, one each.</summary>
    public static readonly (string Name, Type Type)[] Answers =
    [
        ("error", typeof(RefusalResult)), ("show", typeof(OverviewResult)), ("show-pots", typeof(PotsResult)), ("show-bills", typeof(BillsResult)), ("debts", typeof(DebtsResult)),
        ("show-calendar", typeof(CalendarResult)), ("show-year", typeof(YearResult)), ("show-months", typeof(MonthsResult)), ("report", typeof(ReportResult)), ("show-ledger", typeof(LedgerResult)), ("history", typeof(HistoryResult)),
        ("run", typeof(RoutineResult)), ("slip", typeof(SlipResult)), ("ahead", typeof(AheadResult)), ("status", typeof(StatusResult)),
        ("fill", typeof(FillsResult)), ("fill-got", typeof(ReceivedResult)), ("count", typeof(CountResult)), ("difference", typeof(DifferencesResult)),
        ("spend", typeof(SpendResult)), ("return", typeof(ReturnResult)), ("due", typeof(DuesResult)), ("move", typeof(MoveResult)), ("entry", typeof(EntryResult)),
        ("reconcile", typeof(ReconcileResult)), ("statement", typeof(StatementResult)), ("statement-rules", typeof(StatementRulesResult)), ("learn", typeof(LearningResult)),
        ("undo", typeof(TakenBackResult)), ("set", typeof(SetupResult)), ("done", typeof(DoneResult)),
        ("check", typeof(CheckResult)), ("backup", typeof(BackupResult)), ("restore", typeof(RestoreResult)),
        ("split", typeof(SplitResult)), ("notes", typeof(NotesResult)), ("paydays", typeof(PaydaysResult)), ("setaside", typeof(SetAsideResult)),
    ];

    /// <summary>All answers, each a definition by its name; a document is one of them.</summary>
    public static JsonObject OfAnswers()
    {
        var definitions = new JsonObject();
        var any = new JsonArray();
        foreach ((string name, Type type) in Answers)
        {
            JsonTypeInfo info = ResultJson.Readable.GetTypeInfo(type) ?? throw new InvalidOperationException($"{type} is no answer.");
            var schema = (JsonObject)info.GetJsonSchemaAsNode(new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Closed });
            schema["properties"]!.AsObject().Insert(0, "version", new JsonObject { ["const"] = AnswerJson.Version });
            schema["required"]!.AsArray().Insert(0, "version");
            Rebased(schema, $"#/$defs/{name}");
            definitions[name] = schema;
            any.Add(new JsonObject { ["$ref"] = $"#/$defs/{name}" });
        }

        return new JsonObject { ["$schema"] = Draft, ["title"] = "Answers of payday --json", ["anyOf"] = any, ["$defs"] = definitions };
    }

    /// <summary>The household file.</summary>
    public static JsonObject OfTheHousehold()
    {
        JsonObject household = Of(HouseholdFormat.Fields.Shape);
        JsonObject fields = household["properties"]!.AsObject();
        fields.Insert(0, "version", new JsonObject { ["type"] = "integer", ["minimum"] = 1, ["maximum"] = HouseholdFile.Version });
        fields.Insert(0, "$schema", new JsonObject { ["type"] = "string" });
        household["required"] = new JsonArray("version", "name", "start", "currency", "sources");
        household.Insert(0, "title", "A household of payday import and export");
        household.Insert(0, "$schema", Draft);
        return household;
    }

    private static JsonObject Of(FileShape shape) => shape switch
    {
        FileShape.Line => new() { ["type"] = "string" },
        FileShape.Amount => new() { ["type"] = "string", ["pattern"] = "^-?[0-9]+(\\.[0-9]+)?$" },
        FileShape.Fraction => new() { ["type"] = "string", ["pattern"] = "^[0-9]*\\.?[0-9]+$" },
        FileShape.Date => new() { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", ["format"] = "date" },
        FileShape.Flag => new() { ["type"] = "boolean" },
        FileShape.Count count => new() { ["type"] = "integer", ["minimum"] = count.Least, ["maximum"] = count.Most },
        FileShape.Word word => new() { ["enum"] = new JsonArray([.. word.Words.Select(one => JsonValue.Create(one))]) },
        FileShape.List list => new() { ["type"] = "array", ["items"] = Of(list.Item), ["maxItems"] = list.Most },
        FileShape.Counts counts => new() { ["type"] = "object", ["additionalProperties"] = Of(counts.Item) },
        FileShape.Either either => new() { ["anyOf"] = new JsonArray([.. either.Shapes.Select(Of)]) },
        FileShape.Object parts => new()
        {
            ["type"] = "object",
            ["properties"] = new JsonObject(parts.Fields.Select(field => new KeyValuePair<string, JsonNode?>(field.Name, Of(field.Shape)))),
            ["additionalProperties"] = false,
        },
        _ => throw new ArgumentOutOfRangeException(nameof(shape)),
    };

    // What isn't said of an answer isn't there.
    private static JsonNode Closed(JsonSchemaExporterContext context, JsonNode schema)
    {
        if (context.TypeInfo.Kind == JsonTypeInfoKind.Object && schema is JsonObject fields && fields.ContainsKey("properties"))
        {
            fields["additionalProperties"] = false;
        }

        return schema;
    }

    // A reference is from the root, which the definition isn't any more.
    private static void Rebased(JsonNode? node, string root)
    {
        switch (node)
        {
            case JsonObject fields:
                if (fields["$ref"] is { } reference)
                {
                    fields["$ref"] = root + ((string)reference!)[1..];
                }

                foreach (JsonNode? inner in fields.Select(field => field.Value).ToArray())
                {
                    Rebased(inner, root);
                }

                break;
            case JsonArray items:
                foreach (JsonNode? item in items)
                {
                    Rebased(item, root);
                }

                break;
        }
    }
}
