using Payday.Core.Calendar;
using Payday.Core.Debts;

namespace Payday.Core.Drafts;

/// <summary>A debt as it was entered.</summary>
public sealed record DebtDraft : ItemDraft
{
    /// <summary>What was owed when it was entered, in whole units.</summary>
    public decimal? Balance { get; init; }

    /// <summary>The yearly rate, a fraction.</summary>
    public decimal? Rate { get; init; }

    /// <summary>The least that must be paid each month.</summary>
    public MinimumDraft? Minimum { get; init; }

    /// <summary>The day of the month on which that is due, where it is once a month.</summary>
    public MonthDay? Due { get; init; }

    /// <summary>When it is due, where that isn't once a month on a day of its own; it then stands in the place of the day.</summary>
    public ScheduleDraft? Schedule { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a debt of.</summary>
    public static DebtDraft Of(Debt debt)
    {
        ArgumentNullException.ThrowIfNull(debt);
        return new()
        {
            Id = debt.Id.Text,
            Name = debt.Name,
            Balance = debt.Opening.ToDecimal(),
            Rate = debt.YearlyRate,
            Minimum = MinimumDraft.Of(debt.Minimum),
            Due = (debt.Schedule as Schedule.Monthly)?.Day,
            Schedule = debt.Schedule is Schedule.Monthly ? null : ScheduleDraft.Of(debt.Schedule),
        };
    }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="DebtDraft.Balance"/>
        public static DraftMember<DebtDraft, decimal?> Balance { get; } = new(debt => debt.Balance, (debt, value) => debt with { Balance = value });

        /// <inheritdoc cref="DebtDraft.Rate"/>
        public static DraftMember<DebtDraft, decimal?> Rate { get; } = new(debt => debt.Rate, (debt, value) => debt with { Rate = value });

        /// <inheritdoc cref="DebtDraft.Minimum"/>
        public static DraftMember<DebtDraft, MinimumDraft?> Minimum { get; } = new(debt => debt.Minimum, (debt, value) => debt with { Minimum = value });

        /// <inheritdoc cref="DebtDraft.Due"/>
        public static DraftMember<DebtDraft, MonthDay?> Due { get; } = new(debt => debt.Due, (debt, value) => debt with { Due = value }) { Belongs = debt => debt.Schedule is null };

        /// <inheritdoc cref="DebtDraft.Schedule"/>
        public static DraftMember<DebtDraft, ScheduleDraft?> Schedule { get; } = new(debt => debt.Schedule, (debt, value) => debt with { Schedule = value });
    }
}
