namespace Payday.Core.Drafts;

/// <summary>The small money that a pot wants, as it was entered.</summary>
public sealed record SmallMoneyDraft
{
    /// <summary>The largest note that counts as small, in whole units.</summary>
    public decimal? Note { get; init; }

    /// <summary>The least value wanted in such notes, in whole units.</summary>
    public decimal? AtLeast { get; init; }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="SmallMoneyDraft.Note"/>
        public static DraftMember<SmallMoneyDraft, decimal?> Note { get; } = new(small => small.Note, (small, value) => small with { Note = value });

        /// <inheritdoc cref="SmallMoneyDraft.AtLeast"/>
        public static DraftMember<SmallMoneyDraft, decimal?> AtLeast { get; } = new(small => small.AtLeast, (small, value) => small with { AtLeast = value });
    }
}
