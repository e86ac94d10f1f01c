namespace Payday.Store.Checks;

/// <summary>Something that a check found wrong.</summary>
/// <param name="Part">Which part of the store: journal, database, ledger, slips, backups or files.</param>
/// <param name="What">What is wrong, one sentence.</param>
/// <param name="Since">Since when, as far as can be told; empty where it can't.</param>
/// <param name="Then">What will be done about it, or what to do, one sentence.</param>
public sealed record Finding(string Part, string What, string Since, string Then);
