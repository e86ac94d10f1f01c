using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>What a payday should put into a pot, and why.</summary>
/// <param name="Amount">Zero or more.</param>
/// <param name="Why">The reason in a few words.</param>
/// <param name="Step">For a ladder, the step in progress, or the last one when all are done.</param>
/// <param name="Steps">For a ladder, how many steps it has.</param>
public sealed record FillProposal(Money Amount, string Why, int? Step = null, int? Steps = null)
{
    /// <summary>For a sinking pot, how far it is; null for others.</summary>
    public SinkingStage? Stage { get; init; }
}
