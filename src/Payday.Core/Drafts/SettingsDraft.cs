using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Debts;
using Payday.Core.Households;

namespace Payday.Core.Drafts;

/// <summary>The settings of a household as they were entered.</summary>
public sealed record SettingsDraft
{
    /// <summary>The currency of every amount.</summary>
    public Currency? Currency { get; init; }

    /// <summary>How numbers are written; it may be missing.</summary>
    public NumberStyle? Numbers { get; init; }

    /// <summary>The values of notes in use, in whole units; missing, the usual ones of the currency.</summary>
    public ImmutableArray<decimal>? Notes { get; init; }

    /// <summary>The values of coins in use, in whole units; missing, the usual ones of the currency.</summary>
    public ImmutableArray<decimal>? Coins { get; init; }

    /// <summary>The weekday on which the wallet is filled.</summary>
    public IsoDayOfWeek? FillDay { get; init; }

    /// <summary>The bank holidays.</summary>
    public HolidayDraft? Holidays { get; init; }

    /// <summary>How money is held back for bills; it may be missing.</summary>
    public SetAsideMode? SetAsides { get; init; }

    /// <summary>Where notes come from; it may be missing.</summary>
    public BankDraft? Bank { get; init; }

    /// <summary>How a card purchase is owed back; it may be missing.</summary>
    public CardRounding? CardRounding { get; init; }

    /// <summary>Which debt is proposed for the surplus; it may be missing.</summary>
    public DebtOrder? SurplusOrder { get; init; }

    /// <summary>What the account's buffer keeps at least, in whole units; it may be missing.</summary>
    public decimal? BufferKeeps { get; init; }

    /// <summary>How the full screen shows; it may be missing.</summary>
    public ScreenLook? Look { get; init; }

    /// <summary>How far below zero the bank lets the account go, in whole units; it may be missing.</summary>
    public decimal? Overdraft { get; init; }

    /// <summary>Lines for the top of the slip; they may be missing.</summary>
    public ImmutableArray<string>? SlipLines { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes settings of.</summary>
    public static SettingsDraft Of(HouseholdSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return new()
        {
            Currency = settings.Currency,
            Numbers = settings.Numbers,
            Notes = [.. settings.Cash.Notes.Select(note => note.ToDecimal())],
            Coins = [.. settings.Cash.Coins.Select(coin => coin.ToDecimal())],
            FillDay = settings.FillDay,
            Holidays = HolidayDraft.Of(settings.Holidays),
            SetAsides = settings.SetAsides,
            Bank = BankDraft.Of(settings.Bank),
            CardRounding = settings.CardRounding,
            SurplusOrder = settings.SurplusOrder,
            BufferKeeps = settings.BufferKeeps?.ToDecimal(),
            Look = settings.Look == ScreenLook.Automatic ? null : settings.Look,
            Overdraft = settings.Overdraft?.ToDecimal(),
            SlipLines = settings.SlipLines,
        };
    }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="SettingsDraft.Currency"/>
        public static DraftMember<SettingsDraft, Currency?> Currency { get; } = new(settings => settings.Currency, (settings, value) => settings with { Currency = value });

        /// <inheritdoc cref="SettingsDraft.Numbers"/>
        public static DraftMember<SettingsDraft, NumberStyle?> Numbers { get; } = new(settings => settings.Numbers, (settings, value) => settings with { Numbers = value });

        /// <inheritdoc cref="SettingsDraft.Notes"/>
        public static DraftMember<SettingsDraft, ImmutableArray<decimal>?> Notes { get; } = new(settings => settings.Notes, (settings, value) => settings with { Notes = value });

        /// <inheritdoc cref="SettingsDraft.Coins"/>
        public static DraftMember<SettingsDraft, ImmutableArray<decimal>?> Coins { get; } = new(settings => settings.Coins, (settings, value) => settings with { Coins = value });

        /// <inheritdoc cref="SettingsDraft.FillDay"/>
        public static DraftMember<SettingsDraft, IsoDayOfWeek?> FillDay { get; } = new(settings => settings.FillDay, (settings, value) => settings with { FillDay = value });

        /// <inheritdoc cref="SettingsDraft.Holidays"/>
        public static DraftMember<SettingsDraft, HolidayDraft?> Holidays { get; } = new(settings => settings.Holidays, (settings, value) => settings with { Holidays = value });

        /// <inheritdoc cref="SettingsDraft.SetAsides"/>
        public static DraftMember<SettingsDraft, SetAsideMode?> SetAsides { get; } = new(settings => settings.SetAsides, (settings, value) => settings with { SetAsides = value });

        /// <inheritdoc cref="SettingsDraft.Bank"/>
        public static DraftMember<SettingsDraft, BankDraft?> Bank { get; } = new(settings => settings.Bank, (settings, value) => settings with { Bank = value });

        /// <inheritdoc cref="SettingsDraft.CardRounding"/>
        public static DraftMember<SettingsDraft, CardRounding?> CardRounding { get; } = new(settings => settings.CardRounding, (settings, value) => settings with { CardRounding = value });

        /// <inheritdoc cref="SettingsDraft.SurplusOrder"/>
        public static DraftMember<SettingsDraft, DebtOrder?> SurplusOrder { get; } = new(settings => settings.SurplusOrder, (settings, value) => settings with { SurplusOrder = value });

        /// <inheritdoc cref="SettingsDraft.Look"/>
        public static DraftMember<SettingsDraft, ScreenLook?> Look { get; } = new(settings => settings.Look, (settings, value) => settings with { Look = value });

        /// <inheritdoc cref="SettingsDraft.BufferKeeps"/>
        public static DraftMember<SettingsDraft, decimal?> BufferKeeps { get; } = new(settings => settings.BufferKeeps, (settings, value) => settings with { BufferKeeps = value });

        /// <inheritdoc cref="SettingsDraft.Overdraft"/>
        public static DraftMember<SettingsDraft, decimal?> Overdraft { get; } = new(settings => settings.Overdraft, (settings, value) => settings with { Overdraft = value });

        /// <inheritdoc cref="SettingsDraft.SlipLines"/>
        public static DraftMember<SettingsDraft, ImmutableArray<string>?> SlipLines { get; } = new(settings => settings.SlipLines, (settings, value) => settings with { SlipLines = value });
    }
}
