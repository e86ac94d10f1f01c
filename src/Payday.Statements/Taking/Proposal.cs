using System.Collections.Immutable;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Cash;

namespace Payday.Statements.Taking;

/// <summary>What a line of the bank's might become.</summary>
/// <param name="Target">What would be written down; <see cref="LineTarget.Leave"/> where nothing would.</param>
/// <param name="Reason">What it rests on.</param>
/// <param name="IsSure">Whether it is taken unless the person says otherwise; else only where the person says so.</param>
public sealed record Proposal(LineTarget Target, ProposalReason Reason, bool IsSure)
{
    /// <summary>The due that is meant; null for none, or for the one nearest.</summary>
    public DueKey? Due { get; init; }

    /// <summary>The notes of cash, by value in minor units; null for the fewest that come to it.</summary>
    public Notes? Notes { get; init; }

    /// <summary>Lines of the account that it is, by the numbers of their first movements; none where something would be written down.</summary>
    public ImmutableArray<long> Lines { get; init; } = [];
}
