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
[JsonSerializable(typeof(YearResult))]
[JsonSerializable(typeof(CalendarResult))]
[JsonSerializable(typeof(DoneResult))]
internal sealed partial class ResultJson : JsonSerializerContext;
