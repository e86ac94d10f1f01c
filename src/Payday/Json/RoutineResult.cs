namespace Payday.Json;

/// <summary>The answer of <c>run</c>: the routine as it stands.</summary>
internal sealed record RoutineResult(
    string Payday,
    string CoversTo,
    bool Extra,
    bool Closed,
    string CameIn,
    string CarriedOver,
    string ToOverdraft,
    string FromBuffer,
    IReadOnlyList<IncomeResult> Income,
    string Bills,
    IReadOnlyList<DueResult> Due,
    IReadOnlyList<SetAsideForResult> SetAside,
    IReadOnlyList<LateResult> Late,
    string DebtPayments,
    IReadOnlyList<DebtRowResult> Debts,
    string Fills,
    IReadOnlyList<PotRowResult> Pots,
    string Placed,
    IReadOnlyList<PlacementResult> Placements,
    NotesSummaryResult Withdrawal,
    string LeftToPlace,
    IReadOnlyList<LateResult> Unpayable);

/// <summary>An income of a routine.</summary>
internal sealed record IncomeResult(string Name, string Expected, string Amount);

/// <summary>A bill due in the period.</summary>
internal sealed record DueResult(string Bill, string Date, string Amount, bool Paid);

/// <summary>What is set aside for a bill: before, what is added and what was paid from it, and after.</summary>
internal sealed record SetAsideForResult(string Bill, string Before, string SetAside, string Paid, string After);

/// <summary>A debt in a routine.</summary>
internal sealed record DebtRowResult(string Name, string? Due, string Balance, string Interest, string Minimum, string Payment, string NewBalance, bool? Paid, string Bought);

/// <summary>A pot in a routine; what it asks is <c>bought</c> or <c>date</c>, or null.</summary>
internal sealed record PotRowResult(string Name, string HasNow, string Proposed, string Fill, string Why, string? Asks);

/// <summary>A placement of the surplus: what it is, its name, and the amount.</summary>
internal sealed record PlacementResult(string Target, string Name, string Amount);

/// <summary>The withdrawal of a routine, in short.</summary>
internal sealed record NotesSummaryResult(string Total, string Reused, string KeptBack, IReadOnlyDictionary<string, int> Notes, int NoteCount, bool Proven);
