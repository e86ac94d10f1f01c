using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.Drafts;

/// <summary>An income source as it was entered.</summary>
public sealed record SourceDraft : ItemDraft
{
    /// <summary>When it pays.</summary>
    public ScheduleDraft? Schedule { get; init; }

    /// <summary>Where a payday on a weekend or bank holiday moves.</summary>
    public Shift? Shift { get; init; }

    /// <summary>What usually comes, in whole units.</summary>
    public decimal? Expected { get; init; }

    /// <summary>What that changes to, each from a date on; they may be missing.</summary>
    public ImmutableArray<LaterDraft>? Later { get; init; }

    /// <summary>The last date on which it pays.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a source of.</summary>
    public static SourceDraft Of(IncomeSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new()
        {
            Id = source.Id.Text,
            Name = source.Name,
            Schedule = ScheduleDraft.Of(source.Schedule),
            Shift = source.Shift,
            Expected = source.Expected.ToDecimal(),
            Later = LaterDraft.Of(source.Later),
            Until = source.Until,
        };
    }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="SourceDraft.Schedule"/>
        public static DraftMember<SourceDraft, ScheduleDraft?> Schedule { get; } = new(source => source.Schedule, (source, value) => source with { Schedule = value });

        /// <inheritdoc cref="SourceDraft.Shift"/>
        public static DraftMember<SourceDraft, Shift?> Shift { get; } = new(source => source.Shift, (source, value) => source with { Shift = value });

        /// <inheritdoc cref="SourceDraft.Expected"/>
        public static DraftMember<SourceDraft, decimal?> Expected { get; } = new(source => source.Expected, (source, value) => source with { Expected = value });

        /// <inheritdoc cref="SourceDraft.Later"/>
        public static DraftMember<SourceDraft, ImmutableArray<LaterDraft>?> Later { get; } = new(source => source.Later, (source, value) => source with { Later = value });

        /// <inheritdoc cref="SourceDraft.Until"/>
        public static DraftMember<SourceDraft, LocalDate?> Until { get; } = new(source => source.Until, (source, value) => source with { Until = value });
    }
}
