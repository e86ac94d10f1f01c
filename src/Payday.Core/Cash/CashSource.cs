using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>Where notes come from. One of the nested cases.</summary>
public abstract record CashSource
{
    private CashSource()
    {
    }

    /// <summary>A teller, who has any notes in use.</summary>
    public sealed record Teller : CashSource;

    /// <summary>A machine.</summary>
    /// <param name="Notes">The only notes it gives, largest first.</param>
    /// <param name="Limit">The most it gives in one visit, or null.</param>
    public sealed record Machine(ImmutableArray<Money> Notes, Money? Limit) : CashSource;
}
