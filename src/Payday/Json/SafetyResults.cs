namespace Payday.Json;

/// <summary>The answer of <c>check</c>.</summary>
internal sealed record CheckResult(
    bool Sound, long Changes, int Movements, int ClosedPaydays, int Backups, IReadOnlyList<FindingResult> Findings, IReadOnlyList<string> Mended);

/// <summary>Something that is wrong.</summary>
internal sealed record FindingResult(string Part, string What, string Since, string Then);

/// <summary>The answer of <c>backup</c>.</summary>
internal sealed record BackupResult(string File, long Changes);

/// <summary>The answer of <c>restore</c>.</summary>
internal sealed record RestoreResult(bool Restored, IReadOnlyList<CandidateResult> Candidates);

/// <summary>What can be put back.</summary>
internal sealed record CandidateResult(string Choice, string LastChange, long Changes, int Movements, int ClosedPaydays, string? LastPayday);
