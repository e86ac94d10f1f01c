using System.Collections.Immutable;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Cash;

namespace Payday.Core.StatementTaking;

/// <summary>A line of the bank's with what it is to become.</summary>
/// <param name="Line">The line.</param>
/// <param name="Lines">The account lines that it is, by the numbers of their first movements; none where the book has nothing for it yet.</param>
/// <param name="Target">What is to be written down for it; null where it is left, or has account lines.</param>
public sealed record LineDecision(TakenLine Line, ImmutableArray<long> Lines, LineTarget? Target)
{
    /// <summary>The due that a bill or debt means; null for the open one nearest to the line's day.</summary>
    public DueKey? Due { get; init; }

    /// <summary>The notes of cash, by value in minor units; null for the fewest that come to it.</summary>
    public Notes? Notes { get; init; }
}
