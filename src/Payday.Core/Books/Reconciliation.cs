using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Books;

/// <summary>That the account here was held against the bank's (design, rule 14).</summary>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Date">The day of the bank's balance.</param>
/// <param name="Balance">The bank's balance at the end of that day.</param>
/// <param name="Difference">The bank's balance less what it was expected to be; zero where both agree.</param>
/// <param name="AtBank">The account lines that the bank showed and had not shown before, rising: each by the number of its first movement.</param>
public sealed record Reconciliation(long Number, LocalDate Date, Money Balance, Money Difference, ImmutableArray<long> AtBank)
{
    /// <summary>Whether it was undone; its lines are on their way again then.</summary>
    public bool Undone { get; init; }

    /// <summary>What the person calls the difference; empty where they call it nothing, or there is none.</summary>
    public string Name { get; init; } = "";

    /// <summary>The number of the ledger's last movement at that time; null where it wasn't written down. What came later may explain the difference.</summary>
    public long? LastMovement { get; init; }
}
