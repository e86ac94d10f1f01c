namespace Payday.Json;

/// <summary>The answer of a command that was refused.</summary>
internal sealed record RefusalResult(ErrorResult Error);

/// <summary>Why a command was refused: its kind, the exit code, and a sentence each for people.</summary>
internal sealed record ErrorResult(string Kind, int Exit, IReadOnlyList<string> Reasons);

/// <summary>The answer of <c>split</c>.</summary>
internal sealed record SplitResult(IReadOnlyList<string> Shares, string KeptBack);

/// <summary>The answer of <c>notes</c>.</summary>
internal sealed record NotesResult(
    IReadOnlyList<NotesPotResult> Pots,
    IReadOnlyDictionary<string, int> Withdraw,
    IReadOnlyDictionary<string, int> Return,
    string WithdrawTotal,
    int NoteCount,
    bool Proven,
    IReadOnlyList<string> Unmet);

/// <summary>A pot's part of <see cref="NotesResult"/>.</summary>
internal sealed record NotesPotResult(string Name, IReadOnlyDictionary<string, int> Notes, string KeptBack);

/// <summary>The answer of <c>debts</c>.</summary>
internal sealed record DebtsResult(int Months, string Interest, IReadOnlyList<DebtResult> Debts, IReadOnlyList<string> Never);

/// <summary>A debt of <see cref="DebtsResult"/>; month and interest are null for one that never ends.</summary>
internal sealed record DebtResult(string Name, string? PaidOff, string? Interest);

/// <summary>The answer of <c>paydays</c>.</summary>
internal sealed record PaydaysResult(IReadOnlyList<PaydayResult> Paydays);

/// <summary>A payday of <see cref="PaydaysResult"/>.</summary>
internal sealed record PaydayResult(string Date, IReadOnlyList<string> Sources, bool Extra);

/// <summary>The answer of <c>setaside</c>.</summary>
internal sealed record SetAsideResult(IReadOnlyList<SetAsideRowResult> Plan, IReadOnlyList<LateResult> Late);

/// <summary>A payday of <see cref="SetAsideResult"/>.</summary>
internal sealed record SetAsideRowResult(string Date, string Due, string SetAside, string HeldAfter);

/// <summary>A due that can't be paid in time.</summary>
internal sealed record LateResult(string Bill, string Date, string Short);
