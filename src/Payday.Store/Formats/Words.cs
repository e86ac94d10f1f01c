using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>The words that files have for the values of the core's enums: part of the public format.</summary>
public static class Words
{
    /// <summary>Where a date on a weekend or bank holiday moves.</summary>
    public static JsonChoices<Shift> Shifts { get; } =
        new(("before", Shift.Before), ("after", Shift.After), ("none", Shift.None));

    /// <summary>Days of the week.</summary>
    public static JsonChoices<IsoDayOfWeek> Weekdays { get; } = new(
        ("Monday", IsoDayOfWeek.Monday),
        ("Tuesday", IsoDayOfWeek.Tuesday),
        ("Wednesday", IsoDayOfWeek.Wednesday),
        ("Thursday", IsoDayOfWeek.Thursday),
        ("Friday", IsoDayOfWeek.Friday),
        ("Saturday", IsoDayOfWeek.Saturday),
        ("Sunday", IsoDayOfWeek.Sunday));

    /// <summary>Rule sets of bank holidays.</summary>
    public static JsonChoices<HolidaySet> HolidaySets { get; } = new(
        ("none", HolidaySet.None),
        ("US", HolidaySet.UnitedStates),
        ("GB-EW", HolidaySet.EnglandAndWales),
        ("TARGET", HolidaySet.Target));

    /// <summary>How numbers are written, each by its own sample.</summary>
    public static JsonChoices<NumberStyle> NumberStyles { get; } =
        new([.. NumberStyle.All.Select(style => (style.Sample, style))]);

    /// <summary>How money is held back for bills.</summary>
    public static JsonChoices<SetAsideMode> SetAsideModes { get; } =
        new(("level", SetAsideMode.Level), ("asTheyFall", SetAsideMode.AsTheyFall));

    /// <summary>How a card purchase is owed back.</summary>
    public static JsonChoices<CardRounding> CardRoundings { get; } =
        new(("up", CardRounding.Up), ("exact", CardRounding.Exact));

    /// <summary>How the full screen shows.</summary>
    public static JsonChoices<ScreenLook> Looks { get; } =
        new(("automatic", ScreenLook.Automatic), ("dark", ScreenLook.Dark), ("light", ScreenLook.Light), ("highContrast", ScreenLook.HighContrast), ("plain", ScreenLook.Plain));

    /// <summary>Which debt comes first.</summary>
    public static JsonChoices<DebtOrder> DebtOrders { get; } =
        new(("balance", DebtOrder.SmallestBalance), ("rate", DebtOrder.HighestRate));

    /// <summary>Where notes come from.</summary>
    public static JsonChoices<BankKind> Banks { get; } = new(("teller", BankKind.Teller), ("machine", BankKind.Machine));

    /// <summary>How often something comes round.</summary>
    public static JsonChoices<ScheduleKind> Schedules { get; } = new(
        ("weekly", ScheduleKind.Weekly),
        ("fortnightly", ScheduleKind.Fortnightly),
        ("everyWeeks", ScheduleKind.EveryWeeks),
        ("twiceMonthly", ScheduleKind.TwiceMonthly),
        ("monthly", ScheduleKind.Monthly),
        ("everyMonths", ScheduleKind.EveryMonths),
        ("yearly", ScheduleKind.Yearly),
        ("dates", ScheduleKind.Dates));

    /// <summary>What a pot is for.</summary>
    public static JsonChoices<PotUse> PotUses { get; } = new(
        ("spending", PotUse.Spending), ("sinking", PotUse.Sinking), ("ladder", PotUse.Ladder), ("reserve", PotUse.Reserve));

    /// <summary>What becomes of what is left of a pot, where it goes to no other pot or debt.</summary>
    public static JsonChoices<LeftOverTo> LeftOvers { get; } = new(("stays", LeftOverTo.Stays), ("buffer", LeftOverTo.Buffer));

    /// <summary>Where a pot is held.</summary>
    public static JsonChoices<Place> Places { get; } = new(("cash", Place.Cash), ("account", Place.Account));

    /// <summary>What a spending amount is for.</summary>
    public static JsonChoices<FillPer> FillPers { get; } = new(
        ("week", FillPer.Week),
        ("payday", FillPer.Payday),
        ("month", FillPer.Month),
        ("monthSpread", FillPer.MonthSpread));

    /// <summary>Days of a month.</summary>
    public static JsonChoices<DayWord> DayWords { get; } = new(
        ("last", DayWord.Last), ("lastWorkingDay", DayWord.LastWorkingDay), ("firstWorkingDay", DayWord.FirstWorkingDay));

    /// <summary>Whether a payday's or month's cash is divided over the weeks.</summary>
    public static JsonChoices<bool> WeekUses { get; } = new(("once", false), ("split", true));

    /// <summary>The order of a ladder's steps.</summary>
    public static JsonChoices<LadderOrder> LadderOrders { get; } =
        new(("rising", LadderOrder.Rising), ("falling", LadderOrder.Falling), ("even", LadderOrder.Even));
}
