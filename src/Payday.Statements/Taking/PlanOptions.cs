using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Statements.Taking;

/// <summary>What the person said of statements to be taken.</summary>
public sealed record PlanOptions
{
    /// <summary>The account that is meant, by its number; null for the one that the files are of.</summary>
    public string? Account { get; init; }

    /// <summary>The bank's balance after the last statement, where the file has none; null where it wasn't said.</summary>
    public Money? Balance { get; init; }

    /// <summary>What lines are to become, by their keys.</summary>
    public ImmutableDictionary<string, Proposal> Choices { get; init; } = ImmutableDictionary<string, Proposal>.Empty;
}
