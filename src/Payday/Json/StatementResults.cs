namespace Payday.Json;

/// <summary>The answer of <c>statement</c>: what was read, what the book has of it, and what the others might become.</summary>
internal sealed record StatementResult(
    bool Stored,
    string? From,
    string? To,
    string? Opening,
    string? Closing,
    int Known,
    IReadOnlyList<BankLineResult> Matched,
    IReadOnlyList<BankLineResult> Lines,
    IReadOnlyList<OpenLineResult> Open,
    string? Difference,
    IReadOnlyList<string> Says);

/// <summary>A line of the bank's; the number is null where it is matched, what it becomes where it is left.</summary>
internal sealed record BankLineResult(int? Number, string Date, string Amount, string Party, string Text, string State, string? Becomes, string? Proposal, IReadOnlyList<long> Lines);

/// <summary>A line of the account that the bank doesn't show.</summary>
internal sealed record OpenLineResult(long Number, string Date, string What, string Amount, bool OnItsWay);

/// <summary>The answer of <c>statement --rules</c>.</summary>
internal sealed record StatementRulesResult(IReadOnlyList<StatementRuleResult> Rules);

/// <summary>A rule for lines of statements.</summary>
internal sealed record StatementRuleResult(string Words, string Target, bool Gone);
