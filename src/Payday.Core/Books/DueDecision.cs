using Payday.Core.Amounts;

namespace Payday.Core.Books;

/// <summary>What the person knows of a due.</summary>
/// <param name="Actual">The actual amount, or null for the usual one.</param>
/// <param name="Paid">Whether it has left the account, or null for the proposal.</param>
public sealed record DueDecision(Money? Actual = null, bool? Paid = null);
