using System.Collections.Immutable;
using Payday.Core.Cash;

namespace Payday.Core.Drafts;

/// <summary>Where notes come from, as it was entered.</summary>
public sealed record BankDraft
{
    /// <summary>A teller or a machine.</summary>
    public BankKind? Kind { get; init; }

    /// <summary>The notes that a machine gives, in whole units.</summary>
    public ImmutableArray<decimal>? Notes { get; init; }

    /// <summary>The most that a machine gives in one visit, in whole units; it may be missing.</summary>
    public decimal? Limit { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a source of notes of.</summary>
    public static BankDraft Of(CashSource bank) => bank is CashSource.Machine machine
        ? new() { Kind = BankKind.Machine, Notes = [.. machine.Notes.Select(note => note.ToDecimal())], Limit = machine.Limit?.ToDecimal() }
        : new() { Kind = BankKind.Teller };

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="BankDraft.Kind"/>
        public static DraftMember<BankDraft, BankKind?> Kind { get; } = new(bank => bank.Kind, (bank, value) => bank with { Kind = value });

        /// <inheritdoc cref="BankDraft.Notes"/>
        public static DraftMember<BankDraft, ImmutableArray<decimal>?> Notes { get; } =
            new(bank => bank.Notes, (bank, value) => bank with { Notes = value }) { Belongs = bank => bank.Kind == BankKind.Machine };

        /// <inheritdoc cref="BankDraft.Limit"/>
        public static DraftMember<BankDraft, decimal?> Limit { get; } =
            new(bank => bank.Limit, (bank, value) => bank with { Limit = value }) { Belongs = bank => bank.Kind == BankKind.Machine };
    }
}
