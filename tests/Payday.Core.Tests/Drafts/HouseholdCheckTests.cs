using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Core.Pots;

namespace Payday.Core.Tests.Drafts;

public sealed class HouseholdCheckTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");

    /// <summary>One thing wrong in a draft, and the fault with its place; what a file and a form say of each is held elsewhere.</summary>
    public static TheoryData<string, HouseholdDraft, string> OneThingWrong => new()
    {
        { "no name", SmallDraft.Whole with { Name = null }, "Missing Name" },
        { "no start", SmallDraft.Whole with { Start = null }, "Missing Start" },
        { "no currency", SmallDraft.With(settings => settings with { Currency = null }), "Missing Currency" },
        { "no fill day", SmallDraft.With(settings => settings with { FillDay = null }), "Missing FillDay" },
        { "no holidays", SmallDraft.With(settings => settings with { Holidays = null }), "Missing Holidays" },
        { "no set of holidays", SmallDraft.With(settings => settings with { Holidays = new() }), "Missing Holidays.Set" },
        { "no sources", SmallDraft.Whole with { Sources = null }, "Missing Sources" },
        { "no source in them", SmallDraft.Whole with { Sources = [] }, "NoSource Sources" },
        { "no account", SmallDraft.Whole with { Opening = new() }, "Missing Opening.Account" },
        { "no amount", SmallDraft.WithBill(bill => bill with { Amount = null }), "Missing Bills[0].Amount" },
        { "no schedule", SmallDraft.WithBill(bill => bill with { Schedule = null }), "Missing Bills[0].Schedule" },
        { "no kind of schedule", SmallDraft.WithBill(bill => bill with { Schedule = new() { Anchor = new(2026, 3, 6) } }), "Missing Bills[0].Schedule.Kind" },
        { "no day", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Monthly } }), "Missing Bills[0].Schedule.Day" },
        { "no anchor", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Yearly } }), "Missing Bills[0].Schedule.Anchor" },
        { "one day of two", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.TwiceMonthly, Days = [new MonthDay.Last(), null] } }), "NotTwoDays Bills[0].Schedule.Days" },
        { "no minimum", SmallDraft.WithDebt(debt => debt with { Minimum = null }), "Missing Debts[0].Minimum" },
        { "no part", SmallDraft.WithDebt(debt => debt with { Minimum = new() { Kind = MinimumKind.Part, Floor = 5 } }), "Missing Debts[0].Minimum.Percent" },
        { "no kind of pot", SmallDraft.WithFood(pot => pot with { Kind = null }), "Missing Pots[0].Kind" },
        { "no place of a pot", SmallDraft.WithFood(pot => pot with { Place = null }), "Missing Pots[0].Place" },
        { "no least small money", SmallDraft.WithFood(pot => pot with { Small = new() { Note = 5 } }), "Missing Pots[0].Small.AtLeast" },
        { "a year before 1900", SmallDraft.Whole with { Start = new LocalDate(1899, 12, 31) }, "DateTooFar Start" },
        { "a year after 2199", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Weekly, Anchor = new(2200, 1, 1) } }), "DateTooFar Bills[0].Schedule.Anchor" },
        { "the day before the start", SmallDraft.WithBill(bill => bill with { Until = new(2026, 3, 4) }), "DateBeforeStart Bills[0].Until" },
        { "a hundred years and a day", SmallDraft.WithBill(bill => bill with { Until = new(2126, 3, 6) }), "DateTooLate Bills[0].Until" },
        { "a change without a date", SmallDraft.WithBill(bill => bill with { Later = [new() { Amount = 5 }] }), "Missing Bills[0].Later[0].From" },
        { "a change without an amount", SmallDraft.WithBill(bill => bill with { Later = [new() { From = new(2026, 4, 1) }] }), "Missing Bills[0].Later[0].Amount" },
        { "a change before the start", SmallDraft.WithBill(bill => bill with { Later = [new() { From = new(2026, 3, 4), Amount = 5 }] }), "DateBeforeStart Bills[0].Later[0].From" },
        { "a change too late", SmallDraft.WithBill(bill => bill with { Later = [new() { From = new(2126, 3, 6), Amount = 5 }] }), "DateTooLate Bills[0].Later[0].From" },
        { "a change below zero", SmallDraft.WithBill(bill => bill with { Later = [new() { From = new(2026, 4, 1), Amount = -5 }] }), "AmountBelowZero Bills[0].Later[0].Amount" },
        { "two changes of one day", SmallDraft.WithBill(bill => bill with { Later = [new() { From = new(2026, 4, 1), Amount = 5 }, new() { From = new(2026, 4, 1), Amount = 6 }] }), "ChangeNotAfter Bills[0].Later[1].From" },
        { "changes not in order", SmallDraft.WithFood(pot => pot with { Later = [new() { From = new(2026, 4, 2), Amount = 5 }, new() { From = new(2026, 4, 1), Amount = 6 }] }), "ChangeNotAfter Pots[0].Later[1].From" },
        { "a target that changes to zero", SmallDraft.WithRoof(pot => pot with { Later = [new() { From = new(2026, 4, 1), Amount = 0 }] }), "AmountZero Pots[1].Later[0].Amount" },
        { "101 changes", SmallDraft.WithBill(bill => bill with { Later = Changes(101) }), "TooMany Bills[0].Later" },
        { "changes of more than can be summed", SmallDraft.WithBill(bill => bill with { Later = [new() { From = new(2026, 4, 1), Amount = 92233720368547758.07m }] }), "TotalTooLarge " },
        { "a longer name", SmallDraft.WithBill(bill => bill with { Name = new string('n', 61) }), "TextTooLong Bills[0].Name" },
        { "a name of nothing", SmallDraft.WithBill(bill => bill with { Name = "" }), "TextEmpty Bills[0].Name" },
        { "a name with an escape", SmallDraft.WithBill(bill => bill with { Name = "a\u001b" }), "TextUnshowable Bills[0].Name" },
        { "a name that Payday has", SmallDraft.WithBill(bill => bill with { Name = "Buffer" }), "NameReserved Bills[0].Name" },
        { "a name of another", SmallDraft.WithRoof(pot => pot with { Name = "FOOD" }), "NameTaken Pots[1].Name" },
        { "an id with a capital", SmallDraft.WithBill(bill => bill with { Id = "Rent" }), "IdMalformed Bills[0].Id" },
        { "an amount below zero", SmallDraft.WithBill(bill => bill with { Amount = -0.01m }), "AmountBelowZero Bills[0].Amount" },
        { "half a cent", SmallDraft.WithBill(bill => bill with { Amount = 0.005m }), "AmountTooFine Bills[0].Amount" },
        { "more than 64 bits", SmallDraft.WithBill(bill => bill with { Amount = 92233720368547758.08m }), "AmountTooLarge Bills[0].Amount" },
        { "a number without bounds", SmallDraft.WithBill(bill => bill with { Amount = decimal.MaxValue }), "AmountTooLarge Bills[0].Amount" },
        { "more than can be summed", SmallDraft.WithBill(bill => bill with { Amount = 92233720368547758.07m }), "TotalTooLarge " },
        { "a target of zero", SmallDraft.WithRoof(pot => pot with { Target = 0 }), "AmountZero Pots[1].Target" },
        { "a rate above 1,000 %", SmallDraft.WithDebt(debt => debt with { Rate = 10.000001m }), "RateTooHigh Debts[0].Rate" },
        { "a rate of 7 decimals", SmallDraft.WithDebt(debt => debt with { Rate = 0.1999001m }), "RateTooFine Debts[0].Rate" },
        { "a rate below zero", SmallDraft.WithDebt(debt => debt with { Rate = -0.1m }), "RateBelowZero Debts[0].Rate" },
        { "a part above 100 %", SmallDraft.WithDebt(debt => debt with { Minimum = new() { Kind = MinimumKind.Part, Percent = 1.01m, Floor = 0 } }), "RateTooHigh Debts[0].Minimum.Percent" },
        { "no weeks", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.EveryWeeks, Weeks = 0, Anchor = new(2026, 3, 6) } }), "CountOutside Bills[0].Schedule.Weeks" },
        { "521 weeks", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.EveryWeeks, Weeks = 521, Anchor = new(2026, 3, 6) } }), "CountOutside Bills[0].Schedule.Weeks" },
        { "121 months", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.EveryMonths, Months = 121, Anchor = new(2026, 3, 6) } }), "CountOutside Bills[0].Schedule.Months" },
        { "1,001 steps", SmallDraft.WithRoof(pot => pot with { Kind = PotUse.Ladder, Unit = 1, Steps = 1001, Order = LadderOrder.Even }), "CountOutside Pots[1].Steps" },
        { "rank 10,001", SmallDraft.WithRoof(pot => pot with { Rank = 10_001 }), "CountOutside Pots[1].Rank" },
        { "a rank of another", SmallDraft.Whole with { Pots = [.. SmallDraft.Whole.Pots!.Value.Select(pot => pot with { Rank = 1 })] }, "RankTaken Pots[1].Rank" },
        { "seven lines", SmallDraft.With(settings => settings with { SlipLines = [.. "abcdefg".Select(line => line.ToString())] }), "TooMany SlipLines" },
        { "501 dates", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Dates, Dates = [.. Enumerable.Repeat(new LocalDate(2026, 4, 1), 501)] } }), "TooMany Bills[0].Schedule.Dates" },
        { "no notes", SmallDraft.With(settings => settings with { Notes = [] }), "NoNotes Notes" },
        { "a note twice", SmallDraft.With(settings => settings with { Notes = [100, 20, 5, 20] }), "PieceTwice Notes[3]" },
        { "a note that isn't in use", SmallDraft.WithFood(pot => pot with { TopNote = 50 }), "NoteNotInUse Pots[0].TopNote" },
        { "a count of a note that isn't in use", SmallDraft.Whole with { Opening = new() { Account = 900, LooseNotes = [new(50, 1)] } }, "NoteNotInUse Opening.LooseNotes[0]" },
        { "a count twice", SmallDraft.Whole with { Opening = new() { Account = 900, LooseNotes = [new(20, 1), new(20.00m, 1)] } }, "NoteCountedTwice Opening.LooseNotes[1]" },
        { "a machine without notes", SmallDraft.With(settings => settings with { Bank = new() { Kind = BankKind.Machine } }), "Missing Bank.Notes" },
        { "a limit below the machine's notes", SmallDraft.With(settings => settings with { Bank = new() { Kind = BankKind.Machine, Notes = [20], Limit = 10 } }), "LimitTooLow Bank.Limit" },
        { "notes in the account", SmallDraft.WithRoof(pot => pot with { TopNote = 20 }), "NotesInAccount Pots[1].TopNote" },
        { "something left in the account", SmallDraft.WithRoof(pot => pot with { LeftOver = new() { To = LeftOverTo.Buffer } }), "LeftOverInAccount Pots[1].LeftOver" },
        { "left over to itself", SmallDraft.WithFood(pot => pot with { LeftOver = new() { To = LeftOverTo.Pot, Pot = "food" } }), "LeftOverToItself Pots[0].LeftOver" },
        { "left over to nobody", SmallDraft.WithFood(pot => pot with { LeftOver = new() { To = LeftOverTo.Debt, Debt = "Roof" } }), "LeftOverUnknown Pots[0].LeftOver.Debt" },
        { "more small money than a fill", SmallDraft.WithFood(pot => pot with { Small = new() { Note = 5, AtLeast = 85.01m } }), "SmallTooMuch Pots[0].Small" },
        { "a week's amount at once", SmallDraft.WithFood(pot => pot with { SplitsOverWeeks = false }), "WeeksOfAWeek Pots[0].SplitsOverWeeks" },
        { "something set aside and an account below zero", SmallDraft.Whole with { Opening = new() { Account = -0.01m } }, "AccountTooLow Opening.Account" },
        { "half a cent below zero", SmallDraft.Whole with { Opening = new() { Account = -0.005m } }, "AmountTooFine Opening.Account" },
        { "more than 64 bits below zero", SmallDraft.Whole with { Opening = new() { Account = -92233720368547758.08m } }, "AmountTooLarge Opening.Account" },
        { "a limit below zero", SmallDraft.With(settings => settings with { Overdraft = -1 }), "AmountBelowZero Overdraft" },
        { "more set aside than there is", SmallDraft.Whole with { Opening = new() { Account = 449.99m } }, "AccountTooLow Opening.Account" },
        { "something set aside and no account", SmallDraft.Whole with { Opening = null }, "AccountTooLow " },
    };

    [Theory]
    [MemberData(nameof(OneThingWrong))]
    public void Of_OneThingWrong_NamesItAndItsPlace(string what, HouseholdDraft draft, string expected)
    {
        Assert.NotEmpty(what);
        Assert.Equal([expected], HouseholdCheck.Of(draft).Faults.Cast<DraftFault>().Select(fault => $"{fault.GetType().Name} {fault.Place}"));
    }

    /// <summary>The last value of each limit that is still one of it.</summary>
    public static TheoryData<string, HouseholdDraft> AtTheLimit => new()
    {
        { "60 characters", SmallDraft.WithBill(bill => bill with { Name = new string('n', 60), Id = new string('n', 60) }) },
        { "60 characters of two units each", SmallDraft.WithBill(bill => bill with { Name = string.Concat(Enumerable.Repeat("🌾", 60)) }) },
        { "the start itself", SmallDraft.WithBill(bill => bill with { Until = new(2026, 3, 5) }) },
        { "a hundred years", SmallDraft.WithBill(bill => bill with { Until = new(2126, 3, 5) }) },
        { "1900", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Weekly, Anchor = new(1900, 1, 1) } }) },
        { "2199", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Weekly, Anchor = new(2199, 12, 31) } }) },
        { "520 weeks", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.EveryWeeks, Weeks = 520, Anchor = new(2026, 3, 6) } }) },
        { "120 months", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.EveryMonths, Months = 120, Anchor = new(2026, 3, 6) } }) },
        { "no date at all", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Dates, Dates = [] } }) },
        { "500 dates", SmallDraft.WithBill(bill => bill with { Schedule = new() { Kind = ScheduleKind.Dates, Dates = [.. Enumerable.Repeat(new LocalDate(2026, 4, 1), 500)] } }) },
        { "a rate of 1,000 %", SmallDraft.WithDebt(debt => debt with { Rate = 10 }) },
        { "a rate of 6 decimals", SmallDraft.WithDebt(debt => debt with { Rate = 0.199999m }) },
        { "a part of 100 %", SmallDraft.WithDebt(debt => debt with { Minimum = new() { Kind = MinimumKind.Part, Percent = 1, Floor = 0 } }) },
        { "1,000 steps", SmallDraft.WithRoof(pot => pot with { Kind = PotUse.Ladder, Unit = 1, Steps = 1000, Order = LadderOrder.Even }) },
        { "rank 10,000", SmallDraft.WithRoof(pot => pot with { Rank = 10_000 }) },
        { "six lines", SmallDraft.With(settings => settings with { SlipLines = [.. "abcdef".Select(line => line.ToString())] }) },
        { "30 notes", SmallDraft.With(settings => settings with { Notes = [100, 20, 5, .. Enumerable.Range(200, 27).Select(note => (decimal)note)] }) },
        { "a million of a note", SmallDraft.Whole with { Opening = new() { Account = 900, LooseNotes = [new(20, 1_000_000)] } } },
        { "a limit of the machine's smallest note", SmallDraft.With(settings => settings with { Bank = new() { Kind = BankKind.Machine, Notes = [20], Limit = 20 } }) },
        { "as much small money as a fill", SmallDraft.WithFood(pot => pot with { Small = new() { Note = 5, AtLeast = 85 } }) },
        { "as much set aside as there is", SmallDraft.Whole with { Opening = new() { Account = 450 } } },
        { "below zero with nothing in it", Overdrawn },
        { "100 changes", SmallDraft.WithBill(bill => bill with { Later = Changes(100) }) },
        { "a change on the start", SmallDraft.WithBill(bill => bill with { Later = [new() { From = new(2026, 3, 5), Amount = 0 }] }) },
        { "as much small money as a later fill", SmallDraft.WithFood(pot => pot with { Small = new() { Note = 5, AtLeast = 90 }, Later = [new() { From = new(2026, 4, 1), Amount = 90 }] }) },
        { "an amount of nothing", SmallDraft.WithBill(bill => bill with { Amount = 0 }) },
    };

    [Theory]
    [MemberData(nameof(AtTheLimit))]
    public void Of_AtTheLimit_IsTaken(string what, HouseholdDraft draft)
    {
        Assert.NotEmpty(what);
        Assert.Empty(HouseholdCheck.Of(draft).Faults);
    }

    private static HouseholdDraft Overdrawn => SmallDraft.Whole with
    {
        Opening = new() { Account = -1200.01m },
        Settings = SmallDraft.Whole.Settings with { Overdraft = 2000 },
        Bills = [.. SmallDraft.Whole.Bills!.Value.Select(bill => bill with { SetAside = null })],
        Pots = [.. SmallDraft.Whole.Pots!.Value.Select(pot => pot with { Has = null })],
    };

    [Fact]
    public void Of_AnAccountBelowZero_IsThatOfTheHouseholdAndBack()
    {
        Household household = HouseholdCheck.Of(Overdrawn).Value!;

        Assert.Equal((Money.FromMinorUnits(-120001, Usd), Money.FromMinorUnits(200000, Usd)), (household.Opening.Account, household.Settings.Overdraft));
        Assert.Equal((-1200.01m, 2000m), (HouseholdDraft.Of(household).Opening!.Account, HouseholdDraft.Of(household).Settings.Overdraft));
    }

    [Fact]
    public void Of_AnAccountFarBelowZero_CountsInTheTotal() =>
        Assert.Equal(["TotalTooLarge "], HouseholdCheck.Of(Overdrawn with { Opening = new() { Account = -92233720368547758.07m } }).Faults.Cast<DraftFault>().Select(fault => $"{fault.GetType().Name} {fault.Place}"));

    private static System.Collections.Immutable.ImmutableArray<LaterDraft> Changes(int count) =>
        [.. Enumerable.Range(0, count).Select(i => new LaterDraft { From = new LocalDate(2026, 4, 1).PlusDays(i), Amount = i })];

    [Fact]
    public void Of_Changes_AreThoseOfTheHouseholdAndBack()
    {
        HouseholdDraft draft = SmallDraft.WithBill(bill => bill with { Later = Changes(3) });
        Household household = HouseholdCheck.Of(draft).Value!;

        Assert.Equal(Money.FromMinorUnits(200, Usd), household.Bills[0].AmountOn(new(2026, 4, 9)));
        Assert.Equal(household.Bills.AsEnumerable(), HouseholdCheck.Of(HouseholdDraft.Of(household)).Value!.Bills);
        Assert.Equal(Changes(3).AsEnumerable(), HouseholdDraft.Of(household).Bills!.Value[0].Later!.Value);
    }

    [Fact]
    public void Of_NothingWrong_IsTheHouseholdOfItsDraft()
    {
        Household household = HouseholdCheck.Of(SmallDraft.Whole).Value!;

        Assert.Equal(("Reed house", "rent", "food", 1, 2), (household.Name, household.Bills[0].Id.Text, household.Pots[0].Id.Text, household.Pots[0].Rank, household.Pots[1].Rank));
        Assert.Equal(Money.FromMinorUnits(171235, Usd), household.Sources[0].Expected);
        Household again = HouseholdCheck.Of(HouseholdDraft.Of(household)).Value!;
        Assert.Equal(household.Pots.AsEnumerable(), again.Pots);
        Assert.Equal(household.Bills.AsEnumerable(), again.Bills);
        Assert.Equal(household.Opening.SetAside.AsEnumerable(), again.Opening.SetAside);
    }

    [Fact]
    public void Of_Nothing_NamesAllThatIsNeeded() =>
        Assert.Equal(
            ["Name", "Start", "Currency", "FillDay", "Holidays", "Sources"],
            HouseholdCheck.Of(new HouseholdDraft()).Faults.Cast<DraftFault.Missing>().Select(fault => fault.Place.ToString()));

    [Fact]
    public void Of_WhatAnotherKindHas_IsNotLookedAt() =>
        Assert.True(HouseholdCheck.Of(SmallDraft.WithRoof(pot => pot with { Amount = -1, Steps = 0, Level = -1 })).Ok);

    // In the currency before, an amount may have had decimals that this one lacks.
    [Fact]
    public void Of_AnotherCurrency_AsksForItsDecimals()
    {
        HouseholdDraft yen = SmallDraft.With(settings => settings with { Currency = Currency.FromCode("JPY"), Coins = [] });

        Assert.Equal(["AmountTooFine Sources[0].Expected"], HouseholdCheck.Of(yen).Faults.Cast<DraftFault>().Select(fault => $"{fault.GetType().Name} {fault.Place}"));
    }

    [Fact]
    public void OfStored_AName_IsTakenAsItIs()
    {
        HouseholdDraft draft = SmallDraft.WithBill(bill => bill with { Name = "Buffer" });

        Assert.False(HouseholdCheck.Of(draft).Ok);
        Assert.Equal("Buffer", HouseholdCheck.OfStored(draft).Value!.Bills[0].Name);
    }
}
