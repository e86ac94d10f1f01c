using System.Text.Json;

namespace Payday.Json;

/// <summary>The answer of <c>learn</c>.</summary>
/// <param name="Currency">Of all amounts.</param>
/// <param name="From">The first day looked at.</param>
/// <param name="To">The last one.</param>
/// <param name="Accounts">How many accounts were read.</param>
/// <param name="Lines">How many lines were looked at.</param>
/// <param name="Incomes">Incomes that come round.</param>
/// <param name="Bills">Bills that come round.</param>
/// <param name="Spending">What is spent beside them.</param>
/// <param name="Months">Whole months.</param>
/// <param name="Household">Where the household in the folder differs; null where there is none in this currency.</param>
internal sealed record LearningResult(
    string Currency,
    string From,
    string To,
    int Accounts,
    int Lines,
    IReadOnlyList<SeriesResult> Incomes,
    IReadOnlyList<SeriesResult> Bills,
    IReadOnlyList<HabitResult> Spending,
    IReadOnlyList<MonthFlowResult> Months,
    IReadOnlyList<HouseholdFindingResult>? Household);

/// <summary>A bill or an income that comes round; amounts above zero, the schedule as a household file has it.</summary>
internal sealed record SeriesResult(
    string Name, JsonElement Schedule, string Usual, string Hold, int Hits, int Expected, string First, string Last, IReadOnlyList<SeriesChangeResult> Changes);

/// <summary>What changed: <c>amount</c> with how much more, or <c>stopped</c>.</summary>
internal sealed record SeriesChangeResult(string Kind, string Since, string? More);

/// <summary>What is spent at one place or on one pot.</summary>
internal sealed record HabitResult(string Name, UsualResult? Week, UsualResult? Month, string Total, int Lines);

/// <summary>The median of whole weeks or months with its range, the 0.2 and 0.8 quantiles.</summary>
internal sealed record UsualResult(string Median, string Low, string High, int Periods);

/// <summary>A whole month.</summary>
internal sealed record MonthFlowResult(string Month, string CameIn, string WentOut);

/// <summary>A difference: <c>notThere</c>, <c>otherAmount</c> or <c>noLine</c>.</summary>
internal sealed record HouseholdFindingResult(string Kind, string Name, string? Here, string? Found, string? Since);
