namespace Payday.Json;

/// <summary>The answer of <c>slip</c>.</summary>
internal sealed record SlipResult(
    string Payday,
    bool Closed,
    IReadOnlyDictionary<string, int> Withdraw,
    string WithdrawTotal,
    IReadOnlyList<FillingResult> Filling,
    IReadOnlyDictionary<string, string> KeptBack,
    IReadOnlyDictionary<string, int>? Given,
    IReadOnlyDictionary<string, int> Loose,
    IReadOnlyList<TripResult> Trips);

/// <summary>A trip to a cash machine.</summary>
internal sealed record TripResult(string Date, string Press);

/// <summary>The notes of one pot for one week.</summary>
internal sealed record FillingResult(string Pot, string? Week, IReadOnlyDictionary<string, int> Notes);

/// <summary>The answer of <c>show</c>.</summary>
internal sealed record OverviewResult(
    string Household,
    string? NextPayday,
    string Account,
    string Cash,
    IReadOnlyList<PurposeResult> Purposes,
    IReadOnlyList<string> NeedsDoing);

/// <summary>A purpose and what it holds.</summary>
internal sealed record PurposeResult(string Place, string Purpose, string Amount);

/// <summary>The answer of <c>show pots</c>.</summary>
internal sealed record PotsResult(IReadOnlyList<PotResult> Pots);

/// <summary>A pot; its plan is null where it has none.</summary>
internal sealed record PotResult(string Name, string Kind, string Held, string Balance, string KeptBack, string? Target, PotPlanResult? Plan);

/// <summary>A pot against its plan: what it would have by now, how much more it has (below zero where it is behind), what it lacks, and the payday on which it is full.</summary>
internal sealed record PotPlanResult(string Planned, string Ahead, string Lacks, string? Done);

/// <summary>The answer of <c>show months</c>.</summary>
internal sealed record MonthsResult(IReadOnlyList<MonthWholeResult> Months, IReadOnlyList<YearWholeResult> Years);

/// <summary>A month: what came in and went out, what is saved and owed at its end, where it went, and the usual of the months before (null where those are too few).</summary>
internal sealed record MonthWholeResult(string Month, string CameIn, string WentOut, string Saved, string Owed, string? UsualIn, string? UsualOut, IReadOnlyList<WentResult> Where);

/// <summary>A year, up to the month shown.</summary>
internal sealed record YearWholeResult(int Year, string To, string CameIn, string WentOut, IReadOnlyList<WentResult> Where);

/// <summary>Where money went, and what usually does; null where that isn't known.</summary>
internal sealed record WentResult(string Name, string Amount, string? Usual);

/// <summary>The answer of <c>show bills</c>.</summary>
internal sealed record BillsResult(IReadOnlyList<BillResult> Bills);

/// <summary>A bill.</summary>
internal sealed record BillResult(string Name, string Held, string? NextDue, string Amount);

/// <summary>The answer of <c>show ledger</c>.</summary>
internal sealed record LedgerResult(IReadOnlyList<MovementResult> Movements);

/// <summary>A movement.</summary>
internal sealed record MovementResult(long Number, string Date, string From, string To, string Amount, string Reason, string? Payday, long? Reverses);

/// <summary>The answer of <c>add</c>, <c>change</c>, <c>end</c>, <c>remove</c>, <c>order</c> and <c>set</c>: the fields as they stand, and what was done.</summary>
internal sealed record SetupResult(bool Stored, IReadOnlyDictionary<string, string> Fields, IReadOnlyList<string> Says);

/// <summary>The answer of <c>history</c>; what is spent a week is null before the first count.</summary>
internal sealed record HistoryResult(string Pot, int WeeksCounted, string? SpentAWeek, IReadOnlyList<HistoryLineResult> Lines);

/// <summary>One thing that happened to a pot; left is of a count, has what the pot had at the end of that day.</summary>
internal sealed record HistoryLineResult(string Date, string Kind, string Amount, string? Left, string? Has, string What);

/// <summary>The answer of <c>difference</c>: those that are open.</summary>
internal sealed record DifferencesResult(bool Stored, IReadOnlyList<DifferenceResult> Open);

/// <summary>An open difference: above zero is missing, below zero was found.</summary>
internal sealed record DifferenceResult(string Pot, string Since, string Difference, string Name);

/// <summary>The answer of <c>show year</c>.</summary>
internal sealed record YearResult(int Year, IReadOnlyList<MonthResult> Months);

/// <summary>A month of a year.</summary>
internal sealed record MonthResult(string Month, string CameIn, string Bills, string DebtPayments, string Interest, string Fills, string Spent, string Owed, string Rounding);

/// <summary>The answer of a command that only does something.</summary>
internal sealed record DoneResult(string Done);

/// <summary>The answer of <c>show calendar</c>.</summary>
internal sealed record CalendarResult(IReadOnlyList<EventResult> Events);

/// <summary>A payday, a fill day or a due.</summary>
internal sealed record EventResult(string Date, string What, string Name, string? Amount);

/// <summary>The answer of <c>ahead</c>.</summary>
/// <param name="Paydays">The paydays as they are planned.</param>
/// <param name="Reached">Pots that get full.</param>
/// <param name="PaidOff">Debts that end.</param>
/// <param name="Trial">The same with what was tried; null where nothing was.</param>
internal sealed record AheadResult(
    IReadOnlyList<AheadPaydayResult> Paydays, IReadOnlyList<AheadEndResult> Reached, IReadOnlyList<AheadEndResult> PaidOff, AheadResult? Trial);

/// <summary>A payday to come.</summary>
internal sealed record AheadPaydayResult(
    string Date,
    string Income,
    string ToOverdraft,
    string FromBuffer,
    string Bills,
    string Minimums,
    string Pots,
    string Surplus,
    string Spare,
    string AccountAfter,
    string CashAfter,
    bool Closes);

/// <summary>A pot that is full, or a debt that is paid off, and on which payday.</summary>
internal sealed record AheadEndResult(string Name, string On);
