using Payday.Core.Pots;

namespace Payday.Core.Drafts;

/// <summary>Where what is left of a pot moves on to, as it was entered.</summary>
public sealed record LeftOverDraft
{
    /// <summary>What becomes of it.</summary>
    public LeftOverTo? To { get; init; }

    /// <summary>The pot it goes to, by id or name.</summary>
    public string? Pot { get; init; }

    /// <summary>The debt it goes to, by id or name.</summary>
    public string? Debt { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a target of; null where all stays.</summary>
    public static LeftOverDraft? Of(MoveTarget? target) => target switch
    {
        null => null,
        MoveTarget.ToPot pot => new() { To = LeftOverTo.Pot, Pot = pot.Id.Text },
        MoveTarget.ToDebt debt => new() { To = LeftOverTo.Debt, Debt = debt.Id.Text },
        _ => new() { To = LeftOverTo.Buffer },
    };

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="LeftOverDraft.Pot"/>
        public static DraftMember<LeftOverDraft, string?> Pot { get; } = new(left => left.Pot, (left, value) => left with { Pot = value }) { Belongs = left => left.To == LeftOverTo.Pot };

        /// <inheritdoc cref="LeftOverDraft.Debt"/>
        public static DraftMember<LeftOverDraft, string?> Debt { get; } = new(left => left.Debt, (left, value) => left with { Debt = value }) { Belongs = left => left.To == LeftOverTo.Debt };
    }
}
