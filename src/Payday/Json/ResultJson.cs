using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Payday.Json;

/// <summary>How answers become JSON; generated at build time, so that no reflection is needed.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(SplitResult))]
[JsonSerializable(typeof(NotesResult))]
[JsonSerializable(typeof(DebtsResult))]
[JsonSerializable(typeof(PaydaysResult))]
[JsonSerializable(typeof(SetAsideResult))]
[JsonSerializable(typeof(RoutineResult))]
[JsonSerializable(typeof(SlipResult))]
[JsonSerializable(typeof(OverviewResult))]
[JsonSerializable(typeof(PotsResult))]
[JsonSerializable(typeof(BillsResult))]
[JsonSerializable(typeof(LedgerResult))]
[JsonSerializable(typeof(HistoryResult))]
[JsonSerializable(typeof(DifferencesResult))]
[JsonSerializable(typeof(RefusalResult))]
[JsonSerializable(typeof(SetupResult))]
[JsonSerializable(typeof(YearResult))]
[JsonSerializable(typeof(MonthsResult))]
[JsonSerializable(typeof(ReportResult))]
[JsonSerializable(typeof(CalendarResult))]
[JsonSerializable(typeof(AheadResult))]
[JsonSerializable(typeof(DoneResult))]
[JsonSerializable(typeof(FillsResult))]
[JsonSerializable(typeof(ReceivedResult))]
[JsonSerializable(typeof(CountResult))]
[JsonSerializable(typeof(SpendResult))]
[JsonSerializable(typeof(DuesResult))]
[JsonSerializable(typeof(ReturnResult))]
[JsonSerializable(typeof(MoveResult))]
[JsonSerializable(typeof(EntryResult))]
[JsonSerializable(typeof(ReconcileResult))]
[JsonSerializable(typeof(StatementResult))]
[JsonSerializable(typeof(StatementRulesResult))]
[JsonSerializable(typeof(LearningResult))]
[JsonSerializable(typeof(TakenBackResult))]
[JsonSerializable(typeof(StatusResult))]
[JsonSerializable(typeof(CheckResult))]
[JsonSerializable(typeof(BackupResult))]
[JsonSerializable(typeof(RestoreResult))]
internal sealed partial class ResultJson : JsonSerializerContext
{
    /// <summary>The answers as a person would write them: an apostrophe or an umlaut is no escape. It goes to a shell, never into a web page.</summary>
    public static ResultJson Readable { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
