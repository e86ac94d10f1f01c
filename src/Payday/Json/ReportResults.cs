namespace Payday.Json;

/// <summary>The answer of <c>report</c>.</summary>
/// <param name="Period">Such as <c>2026-03</c>, or <c>2026</c>.</param>
/// <param name="SoFar">Whether it goes on.</param>
/// <param name="Currency">Of every amount.</param>
/// <param name="CameIn">What came in; <c>Beside</c> is the usual, or what came in in the same months of the year before.</param>
/// <param name="WentOut">What went out.</param>
/// <param name="Saved">At its end.</param>
/// <param name="Owed">At its end.</param>
/// <param name="Where">Where money went, the most first.</param>
/// <param name="Months">Up to twelve months, to the period's end.</param>
/// <param name="SetAside">What is set aside today.</param>
/// <param name="Dues">What is to be paid within a month from today.</param>
internal sealed record ReportResult(
    string Period,
    bool SoFar,
    string Currency,
    ReportRowResult CameIn,
    ReportRowResult WentOut,
    string Saved,
    string Owed,
    IReadOnlyList<ReportRowResult> Where,
    IReadOnlyList<ReportMonthResult> Months,
    IReadOnlyList<ReportSetAsideResult> SetAside,
    IReadOnlyList<ReportDueResult> Dues);

/// <summary>An amount of a period beside the usual one, or that of the year before.</summary>
internal sealed record ReportRowResult(string Name, string Amount, string? Beside, int? UsualOfMonths);

/// <summary>A month.</summary>
internal sealed record ReportMonthResult(string Month, string CameIn, string WentOut, string Saved, string Owed);

/// <summary>What is set aside, and for which due.</summary>
internal sealed record ReportSetAsideResult(string Name, string Has, string? Due, string? Amount);

/// <summary>What is to be paid.</summary>
internal sealed record ReportDueResult(string Date, string Name, string Kind, string Amount);
