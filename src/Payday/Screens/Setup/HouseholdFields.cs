using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Lists;
using Members = Payday.Core.Drafts.SettingsDraft.Members;

namespace Payday.Screens.Setup;

/// <summary>The fields of the household itself, in the groups in which it is set up.</summary>
internal static class HouseholdFields
{
    /// <summary>What it is called, and its currency.</summary>
    public static ImmutableArray<SetupField<HouseholdDraft>> Name { get; } =
    [
        SetupFields.Of("Name", HouseholdDraft.Members.Name, new LineType(), $"What you call the household, 1 to {HouseholdLimits.LongestName} characters."),
        SetupFields.OfSetting("Currency", Members.Currency, new CurrencyType(), "Its code, such as USD, EUR or GBP. Every amount is in it, and it stays.") with
        {
            Locked = (facts, _) => facts.TakesParts ? null : "The ledger is in this currency; another one needs a household in a folder of its own.",
            Then = UsualOfCurrency.Put,
        },
        SetupFields.OfSetting("Numbers", Members.Numbers, ChoiceTypes.Of([.. NumberStyle.All.Select(style => (style, style.Sample))]), "How amounts are written, here and when you type them."),
    ];

    /// <summary>Notes and coins.</summary>
    public static ImmutableArray<SetupField<HouseholdDraft>> Cash { get; } =
    [
        SetupFields.OfSetting("Notes", Members.Notes, new PiecesType(), "The values of the notes you use, with blanks between them. Leave out those you don't want to be given."),
        (SetupFields.OfSetting("Coins", Members.Coins, new PiecesType(), "The values of coins, with blanks between them; empty for none.") with { Nothing = [] }).Optional(),
    ];

    /// <summary>When the wallet is filled, and where notes come from.</summary>
    public static ImmutableArray<SetupField<HouseholdDraft>> Bank { get; } =
    [
        SetupFields.OfSetting("Fill day", Members.FillDay, ChoiceTypes.Of([.. Enumerable.Range(1, 7).Select(day => ((IsoDayOfWeek)day, ((IsoDayOfWeek)day).ToString()))]), "The weekday on which the wallet is filled for a week."),
        SetupFields.OfSetting("Notes come from", Members.Bank, BankDraft.Members.Kind, ChoiceTypes.Of((BankKind.Teller, "a teller"), (BankKind.Machine, "a machine")), "A teller gives any notes and gets a slip; a machine only its own."),
        SetupFields.OfSetting("Machine's notes", Members.Bank, BankDraft.Members.Notes, new PiecesType(), "The values of the notes that the machine gives, such as 50 20."),
        SetupFields.OfSetting("Machine's limit", Members.Bank, BankDraft.Members.Limit, new AmountType(), "The most that it gives in one visit; empty for no limit.").Optional(),
        SetupFields.OfSetting("Below zero up to", Members.Overdraft, new AmountType(), "How far below zero the bank lets the account go, by its terms; empty for not at all. No more cash than that is fetched.").Optional(),
        SetupFields.OfSetting("Bank holidays", Members.Holidays, HolidayDraft.Members.Set, ChoiceTypes.Of((HolidaySet.None, "weekends only"), (HolidaySet.UnitedStates, "United States"), (HolidaySet.EnglandAndWales, "England and Wales"), (HolidaySet.Target, "TARGET (euro)")), "Days on which the bank is closed, so that paydays and dues move; those usual for the currency are there to begin with."),
        SetupFields.OfSetting("Further holidays", Members.Holidays, HolidayDraft.Members.Extra, new DatesType(), "Other dates on which the bank is closed, like 2026-11-27, with blanks between them.").Optional(),
    ];

    /// <summary>Habits that have a usual answer.</summary>
    public static ImmutableArray<SetupField<HouseholdDraft>> Habits { get; } =
    [
        SetupFields.OfSetting("Set-asides", Members.SetAsides, ChoiceTypes.Of((SetAsideMode.Level, "even"), (SetAsideMode.AsTheyFall, "when due")), "Even: every pay sets aside an even part for the bills to come; when due: each payday sets aside only for the bills before the next one.").Optional() with { Else = "even" },
        SetupFields.OfSetting("Card purchases", Members.CardRounding, ChoiceTypes.Of((CardRounding.Up, "rounded up to a note"), (CardRounding.Exact, "exact")), "How much cash its pot has to pay back for a purchase by card.").Optional() with { Else = "rounded up to a note" },
        SetupFields.OfSetting("Surplus goes first", Members.SurplusOrder, ChoiceTypes.Of((DebtOrder.SmallestBalance, "to the smallest debt"), (DebtOrder.HighestRate, "to the highest rate")), "Which debt is proposed for what is left over.").Optional() with { Else = "to the smallest debt" },
        SetupFields.OfSetting("Buffer keeps", Members.BufferKeeps, new AmountType(), "When a payday falls short the buffer helps by itself down to this; empty asks each time.").Optional(),
        SetupFields.OfSetting("Look", Members.Look, ChoiceTypes.Of((ScreenLook.Automatic, "automatic"), (ScreenLook.Dark, "dark"), (ScreenLook.Light, "light"), (ScreenLook.HighContrast, "high contrast"), (ScreenLook.Plain, "plain")), "Colours of the full screen: automatic asks the terminal for its background; plain has none, and only simple characters.").Optional() with { Else = "automatic" },
        SetupFields.OfSetting("Slip lines", Members.SlipLines, new LinesType(), $"Up to {HouseholdLimits.MostSlipLines} lines for the top of the slip, with | between them. Nothing private is on it otherwise.").Optional(),
    ];

    /// <summary>All settings.</summary>
    public static ImmutableArray<SetupField<HouseholdDraft>> All { get; } = [.. Name, .. Cash, .. Bank, .. Habits];

    /// <summary>What is there at the start, note by note.</summary>
    public static ImmutableArray<SetupField<HouseholdDraft>> Opening(SetupFacts facts) =>
    [
        SetupFields.Of("Counted on", HouseholdDraft.Members.Start, new DateType(), "The date of these figures, like 2026-03-05; the first payday is on it or after.") with { Locked = StartLock.SinceStart },
        SetupFields.Of("In the account", DraftPath.To(HouseholdDraft.Members.Opening, OpeningDraft.Members.Account), new AmountType(), "All of it, with what is set aside for bills and what pots have there. The rest is the buffer. Below zero, like -200, where it is overdrawn.") with { Locked = StartLock.SinceStart },
        .. facts.Notes.Select(note => (SetupFields.Of(
            $"Notes of {PiecesType.Shown(note, facts)}",
            DraftPath.To(HouseholdDraft.Members.Opening, OpeningDraft.CountOf(note)),
            new CountType(0, HouseholdLimits.MostOfOneNote),
            "How many loose notes of this value are at home, in no pot; empty for none.") with { Locked = StartLock.SinceStart }).Optional()),
    ];
}
