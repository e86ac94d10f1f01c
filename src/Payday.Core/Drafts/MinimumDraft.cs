using Payday.Core.Debts;

namespace Payday.Core.Drafts;

/// <summary>The least payment on a debt as it was entered.</summary>
public sealed record MinimumDraft
{
    /// <summary>Which kind it is. A file doesn't say it: what else it says does.</summary>
    public MinimumKind? Kind { get; init; }

    /// <summary>The amount that is always the same, in whole units.</summary>
    public decimal? Fixed { get; init; }

    /// <summary>The part of what is owed, a fraction.</summary>
    public decimal? Percent { get; init; }

    /// <summary>The least that the part may come to, in whole units.</summary>
    public decimal? Floor { get; init; }

    /// <summary>Whether the month's interest comes on top of the part; it may be missing, and then doesn't.</summary>
    public bool? PlusInterest { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a minimum of.</summary>
    public static MinimumDraft Of(MinimumRule minimum) => minimum switch
    {
        MinimumRule.Fixed always => new() { Kind = MinimumKind.Fixed, Fixed = always.Amount.ToDecimal() },
        MinimumRule.PercentOrFloor rule => new() { Kind = MinimumKind.Part, Percent = rule.Percent, Floor = rule.Floor.ToDecimal(), PlusInterest = rule.PlusInterest ? true : null },
        _ => throw new ArgumentOutOfRangeException(nameof(minimum)),
    };

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="MinimumDraft.Kind"/>
        public static DraftMember<MinimumDraft, MinimumKind?> Kind { get; } = new(minimum => minimum.Kind, (minimum, value) => minimum with { Kind = value });

        /// <inheritdoc cref="MinimumDraft.Fixed"/>
        public static DraftMember<MinimumDraft, decimal?> Fixed { get; } =
            new(minimum => minimum.Fixed, (minimum, value) => minimum with { Fixed = value }) { Belongs = minimum => minimum.Kind == MinimumKind.Fixed };

        /// <inheritdoc cref="MinimumDraft.Percent"/>
        public static DraftMember<MinimumDraft, decimal?> Percent { get; } =
            new(minimum => minimum.Percent, (minimum, value) => minimum with { Percent = value }) { Belongs = minimum => minimum.Kind == MinimumKind.Part };

        /// <inheritdoc cref="MinimumDraft.Floor"/>
        public static DraftMember<MinimumDraft, decimal?> Floor { get; } =
            new(minimum => minimum.Floor, (minimum, value) => minimum with { Floor = value }) { Belongs = minimum => minimum.Kind == MinimumKind.Part };

        /// <inheritdoc cref="MinimumDraft.PlusInterest"/>
        public static DraftMember<MinimumDraft, bool?> PlusInterest { get; } =
            new(minimum => minimum.PlusInterest, (minimum, value) => minimum with { PlusInterest = value }) { Belongs = minimum => minimum.Kind == MinimumKind.Part };
    }
}
