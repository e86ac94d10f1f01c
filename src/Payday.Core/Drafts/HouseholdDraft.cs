using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Households;

namespace Payday.Core.Drafts;

/// <summary>A household as it was entered, by a file or by forms: typed, and any member may be missing.</summary>
/// <remarks>
/// Amounts are numbers in whole units: their currency is a member like others, and may be missing or change as long as
/// the household isn't made. What can't be read as a member's type at all is for who reads it; nothing of it is here.
/// </remarks>
public sealed record HouseholdDraft
{
    /// <summary>What the person calls it.</summary>
    public string? Name { get; init; }

    /// <summary>The date of the opening balances.</summary>
    public LocalDate? Start { get; init; }

    /// <summary>Currency, cash, bank and habits.</summary>
    public SettingsDraft Settings { get; init; } = new();

    /// <summary>What was there at the start; it may be missing.</summary>
    public OpeningDraft? Opening { get; init; }

    /// <summary>Who pays, and when.</summary>
    public ImmutableArray<SourceDraft>? Sources { get; init; }

    /// <summary>What falls due; they may be missing.</summary>
    public ImmutableArray<BillDraft>? Bills { get; init; }

    /// <summary>What is owed; they may be missing.</summary>
    public ImmutableArray<DebtDraft>? Debts { get; init; }

    /// <summary>What money is for; they may be missing.</summary>
    public ImmutableArray<PotDraft>? Pots { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes this very household of.</summary>
    public static HouseholdDraft Of(Household household)
    {
        ArgumentNullException.ThrowIfNull(household);
        OpeningBalances opening = household.Opening;
        return new()
        {
            Name = household.Name,
            Start = household.Start,
            Settings = SettingsDraft.Of(household.Settings),
            Opening = OpeningDraft.Of(opening, household.Currency),
            Sources = [.. household.Sources.Select(SourceDraft.Of)],
            Bills = [.. household.Bills.Select(bill => BillDraft.Of(bill, Part(opening.SetAside, bill.Id)))],
            Debts = [.. household.Debts.Select(DebtDraft.Of)],
            Pots = [.. household.Pots.Select(pot => PotDraft.Of(pot, Part(opening.Pots, pot.Id)))],
        };
    }

    private static Money? Part<TId>(ImmutableSortedDictionary<TId, Money> parts, TId id)
        where TId : notnull => parts.TryGetValue(id, out Money part) ? part : null;

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="HouseholdDraft.Name"/>
        public static DraftMember<HouseholdDraft, string?> Name { get; } = new(draft => draft.Name, (draft, value) => draft with { Name = value });

        /// <inheritdoc cref="HouseholdDraft.Start"/>
        public static DraftMember<HouseholdDraft, LocalDate?> Start { get; } = new(draft => draft.Start, (draft, value) => draft with { Start = value });

        /// <inheritdoc cref="HouseholdDraft.Opening"/>
        public static DraftMember<HouseholdDraft, OpeningDraft?> Opening { get; } = new(draft => draft.Opening, (draft, value) => draft with { Opening = value });

        /// <inheritdoc cref="HouseholdDraft.Sources"/>
        public static DraftMember<HouseholdDraft, ImmutableArray<SourceDraft>?> Sources { get; } = new(draft => draft.Sources, (draft, value) => draft with { Sources = value });

        /// <inheritdoc cref="HouseholdDraft.Bills"/>
        public static DraftMember<HouseholdDraft, ImmutableArray<BillDraft>?> Bills { get; } = new(draft => draft.Bills, (draft, value) => draft with { Bills = value });

        /// <inheritdoc cref="HouseholdDraft.Debts"/>
        public static DraftMember<HouseholdDraft, ImmutableArray<DebtDraft>?> Debts { get; } = new(draft => draft.Debts, (draft, value) => draft with { Debts = value });

        /// <inheritdoc cref="HouseholdDraft.Pots"/>
        public static DraftMember<HouseholdDraft, ImmutableArray<PotDraft>?> Pots { get; } = new(draft => draft.Pots, (draft, value) => draft with { Pots = value });
    }

    /// <summary>The way to a setting: settings stand beside the household's other members.</summary>
    public static DraftPath<HouseholdDraft, TValue> Setting<TValue>(DraftPath<SettingsDraft, TValue> setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        return new(
            setting.Place,
            draft => setting.Get(draft.Settings),
            (draft, value) => draft with { Settings = setting.Set(draft.Settings, value) },
            draft => setting.Belongs(draft.Settings));
    }
}
