using System.Collections.Immutable;

namespace Payday.Core.Drafts;

/// <summary>Items that were begun and aren't complete yet, at most one of each list; and lines that weren't taken yet.</summary>
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

    /// <summary>Lines of income sources, as they were written; null for none.</summary>
    public ImmutableArray<string>? SourceLines { get; init; }

    /// <summary>Lines of bills, as they were written; null for none.</summary>
    public ImmutableArray<string>? BillLines { get; init; }

    /// <summary>Lines of debts, as they were written; null for none.</summary>
    public ImmutableArray<string>? DebtLines { get; init; }

    /// <summary>Lines of pots, as they were written; null for none.</summary>
    public ImmutableArray<string>? PotLines { get; init; }

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

        /// <inheritdoc cref="BegunItems.SourceLines"/>
        public static DraftMember<BegunItems, ImmutableArray<string>?> SourceLines { get; } = new(begun => begun.SourceLines, (begun, value) => begun with { SourceLines = value });

        /// <inheritdoc cref="BegunItems.BillLines"/>
        public static DraftMember<BegunItems, ImmutableArray<string>?> BillLines { get; } = new(begun => begun.BillLines, (begun, value) => begun with { BillLines = value });

        /// <inheritdoc cref="BegunItems.DebtLines"/>
        public static DraftMember<BegunItems, ImmutableArray<string>?> DebtLines { get; } = new(begun => begun.DebtLines, (begun, value) => begun with { DebtLines = value });

        /// <inheritdoc cref="BegunItems.PotLines"/>
        public static DraftMember<BegunItems, ImmutableArray<string>?> PotLines { get; } = new(begun => begun.PotLines, (begun, value) => begun with { PotLines = value });
    }
}
