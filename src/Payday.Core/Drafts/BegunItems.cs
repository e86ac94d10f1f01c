namespace Payday.Core.Drafts;

/// <summary>Items that were begun and aren't complete yet, at most one of each list.</summary>
public sealed record BegunItems
{
    /// <summary>None.</summary>
    public static BegunItems None { get; } = new();

    /// <summary>A source.</summary>
    public SourceDraft? Source { get; init; }

    /// <summary>A bill.</summary>
    public BillDraft? Bill { get; init; }

    /// <summary>A debt.</summary>
    public DebtDraft? Debt { get; init; }

    /// <summary>A pot.</summary>
    public PotDraft? Pot { get; init; }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="BegunItems.Source"/>
        public static DraftMember<BegunItems, SourceDraft?> Source { get; } = new(begun => begun.Source, (begun, value) => begun with { Source = value });

        /// <inheritdoc cref="BegunItems.Bill"/>
        public static DraftMember<BegunItems, BillDraft?> Bill { get; } = new(begun => begun.Bill, (begun, value) => begun with { Bill = value });

        /// <inheritdoc cref="BegunItems.Debt"/>
        public static DraftMember<BegunItems, DebtDraft?> Debt { get; } = new(begun => begun.Debt, (begun, value) => begun with { Debt = value });

        /// <inheritdoc cref="BegunItems.Pot"/>
        public static DraftMember<BegunItems, PotDraft?> Pot { get; } = new(begun => begun.Pot, (begun, value) => begun with { Pot = value });
    }
}
