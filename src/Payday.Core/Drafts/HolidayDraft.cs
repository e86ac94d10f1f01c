using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Core.Drafts;

/// <summary>Bank holidays as they were entered.</summary>
public sealed record HolidayDraft
{
    /// <summary>A rule set.</summary>
    public HolidaySet? Set { get; init; }

    /// <summary>Further dates on which the bank is closed; they may be missing.</summary>
    public ImmutableArray<LocalDate>? Extra { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes bank holidays of.</summary>
    public static HolidayDraft Of(HolidayRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new() { Set = rules.Set, Extra = rules.Extra.IsEmpty ? null : rules.Extra };
    }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="HolidayDraft.Set"/>
        public static DraftMember<HolidayDraft, HolidaySet?> Set { get; } = new(holidays => holidays.Set, (holidays, value) => holidays with { Set = value });

        /// <inheritdoc cref="HolidayDraft.Extra"/>
        public static DraftMember<HolidayDraft, ImmutableArray<LocalDate>?> Extra { get; } = new(holidays => holidays.Extra, (holidays, value) => holidays with { Extra = value });
    }
}
