using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;

namespace Payday.Core.Drafts;

/// <summary>A bill as it was entered.</summary>
public sealed record BillDraft : ItemDraft
{
    /// <summary>What is usually due, in whole units.</summary>
    public decimal? Amount { get; init; }

    /// <summary>What that changes to, each from a date on; they may be missing.</summary>
    public ImmutableArray<LaterDraft>? Later { get; init; }

    /// <summary>When it falls due.</summary>
    public ScheduleDraft? Schedule { get; init; }

    /// <summary>Where a due date on a weekend or bank holiday moves.</summary>
    public Shift? Shift { get; init; }

    /// <summary>Whether it keeps the household going.</summary>
    public bool? Essential { get; init; }

    /// <summary>What the account held for it at the start, in whole units; it may be missing.</summary>
    public decimal? SetAside { get; init; }

    /// <summary>The last date on which it falls due.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a bill of.</summary>
    /// <param name="bill">The bill.</param>
    /// <param name="setAside">What the account held for it at the start, or null.</param>
    public static BillDraft Of(Bill bill, Money? setAside)
    {
        ArgumentNullException.ThrowIfNull(bill);
        return new()
        {
            Id = bill.Id.Text,
            Name = bill.Name,
            Amount = bill.Amount.ToDecimal(),
            Later = LaterDraft.Of(bill.Later),
            Schedule = ScheduleDraft.Of(bill.Schedule),
            Shift = bill.Shift,
            Essential = bill.Essential,
            SetAside = setAside?.ToDecimal(),
            Until = bill.Until,
        };
    }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="BillDraft.Amount"/>
        public static DraftMember<BillDraft, decimal?> Amount { get; } = new(bill => bill.Amount, (bill, value) => bill with { Amount = value });

        /// <inheritdoc cref="BillDraft.Later"/>
        public static DraftMember<BillDraft, ImmutableArray<LaterDraft>?> Later { get; } = new(bill => bill.Later, (bill, value) => bill with { Later = value });

        /// <inheritdoc cref="BillDraft.Schedule"/>
        public static DraftMember<BillDraft, ScheduleDraft?> Schedule { get; } = new(bill => bill.Schedule, (bill, value) => bill with { Schedule = value });

        /// <inheritdoc cref="BillDraft.Shift"/>
        public static DraftMember<BillDraft, Shift?> Shift { get; } = new(bill => bill.Shift, (bill, value) => bill with { Shift = value });

        /// <inheritdoc cref="BillDraft.Essential"/>
        public static DraftMember<BillDraft, bool?> Essential { get; } = new(bill => bill.Essential, (bill, value) => bill with { Essential = value });

        /// <inheritdoc cref="BillDraft.SetAside"/>
        public static DraftMember<BillDraft, decimal?> SetAside { get; } = new(bill => bill.SetAside, (bill, value) => bill with { SetAside = value });

        /// <inheritdoc cref="BillDraft.Until"/>
        public static DraftMember<BillDraft, LocalDate?> Until { get; } = new(bill => bill.Until, (bill, value) => bill with { Until = value });
    }
}
