using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Core.Drafts;

/// <summary>What an amount is from a date on, as it was entered.</summary>
public sealed record LaterDraft
{
    /// <summary>The first day on which it holds.</summary>
    public LocalDate? From { get; init; }

    /// <summary>The amount, in whole units.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The drafts that <see cref="HouseholdCheck"/> makes changes of; null for none.</summary>
    public static ImmutableArray<LaterDraft>? Of(LaterAmounts later)
    {
        ArgumentNullException.ThrowIfNull(later);
        return later.All.IsEmpty ? null : [.. later.All.Select(change => new LaterDraft { From = change.From, Amount = change.Amount.ToDecimal() })];
    }

    /// <summary>The amount that was entered for a day; null where none was.</summary>
    /// <param name="first">What holds before the first change.</param>
    /// <param name="later">The changes, or null.</param>
    /// <param name="day">The day.</param>
    public static decimal? On(decimal? first, ImmutableArray<LaterDraft>? later, LocalDate day) =>
        (later ?? []).Where(change => change.From <= day).Select(change => change.Amount).LastOrDefault(first);

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="LaterDraft.From"/>
        public static DraftMember<LaterDraft, LocalDate?> From { get; } = new(later => later.From, (later, value) => later with { From = value });

        /// <inheritdoc cref="LaterDraft.Amount"/>
        public static DraftMember<LaterDraft, decimal?> Amount { get; } = new(later => later.Amount, (later, value) => later with { Amount = value });
    }
}
