using System.Reflection;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Store.Documents;
using Payday.Store.Fields;
using Payday.Store.Formats;
using Payday.Store.Json;

namespace Payday.Store.Tests.Documents;

/// <summary>The word by which each member of a choice is stored, written down by hand: a household's disk holds these, whatever the members are called.</summary>
public sealed class StoredWordTests
{
    [Fact]
    public void Steps() => Documents(
        StoredChoices.Steps,
        (RoutineStep.Income, "Income"),
        (RoutineStep.Bills, "Bills"),
        (RoutineStep.DebtMinimums, "DebtMinimums"),
        (RoutineStep.Pots, "Pots"),
        (RoutineStep.Surplus, "Surplus"),
        (RoutineStep.Withdrawal, "Withdrawal"),
        (RoutineStep.Slip, "Slip"));

    [Fact]
    public void SetAsideModes() => Documents(StoredChoices.SetAsideModes, (SetAsideMode.Level, "Level"), (SetAsideMode.AsTheyFall, "AsTheyFall"));

    [Fact]
    public void Targets() => Documents(
        StoredChoices.Targets, (PlacementTarget.Debt, "Debt"), (PlacementTarget.Pot, "Pot"), (PlacementTarget.Bill, "Bill"), (PlacementTarget.Buffer, "Buffer"));

    [Fact]
    public void FillStates() => Documents(StoredChoices.FillStates, (FillState.Done, "Done"), (FillState.Skipped, "Skipped"));

    [Fact]
    public void OwedKinds() => Documents(StoredChoices.OwedKinds, (OwedKind.Purchase, "Purchase"), (OwedKind.MovesOn, "MovesOn"), (OwedKind.Move, "Move"));

    [Fact]
    public void WrittenKinds() => Documents(
        StoredChoices.WrittenKinds, (WrittenKind.Payment, "Payment"), (WrittenKind.Purchase, "Purchase"), (WrittenKind.Entry, "Entry"), (WrittenKind.Move, "Move"), (WrittenKind.Return, "Return"));

    [Fact]
    public void LineUses() => Documents(
        StoredChoices.LineUses,
        (LineUse.For, "For"),
        (LineUse.Income, "Income"),
        (LineUse.Fee, "Fee"),
        (LineUse.Interest, "Interest"),
        (LineUse.Gift, "Gift"),
        (LineUse.Transfer, "Transfer"),
        (LineUse.Leave, "Leave"),
        (LineUse.Cash, "Cash"),
        (LineUse.Return, "Return"));

    [Fact]
    public void DifferenceEnds() => Documents(StoredChoices.DifferenceEnds, (DifferenceEnd.Explained, "Explained"), (DifferenceEnd.TurnedUp, "TurnedUp"));

    [Fact]
    public void EntryKinds()
    {
        (EntryKind Kind, string Word, string InKey)[] words =
        [
            (EntryKind.Refund, "Refund", "refund"),
            (EntryKind.Interest, "Interest", "interest"),
            (EntryKind.Gift, "Gift", "gift"),
            (EntryKind.Transfer, "Transfer", "transfer"),
            (EntryKind.Fee, "Fee", "fee"),
            (EntryKind.Payment, "Payment", "payment"),
            (EntryKind.Income, "Income", "income"),
            (EntryKind.Borrowing, "Borrowing", "borrowing"),
            (EntryKind.Loss, "Loss", "loss"),
        ];

        Documents(StoredChoices.EntryKinds, [.. words.Select(one => (one.Kind, one.Word))]);
        foreach ((EntryKind kind, _, string inKey) in words)
        {
            Key("outside/entry:" + inKey, LedgerEnd.Entered(kind));
            Assert.Equal(kind, Assert.IsType<LedgerEnd.Outside>(LedgerEnd.Entered(kind)).Entry);
        }
    }

    [Fact]
    public void Purposes()
    {
        (PurposeKind Kind, string Word, Purpose Purpose)[] words =
        [
            (PurposeKind.LeftToPlace, "left-to-place", Purpose.LeftToPlace),
            (PurposeKind.Buffer, "buffer", Purpose.Buffer),
            (PurposeKind.SetAside, "set-aside:an-id", Purpose.SetAside(new BillId("an-id"))),
            (PurposeKind.Pot, "pot:an-id", Purpose.Pot(new PotId("an-id"))),
            (PurposeKind.KeptBack, "kept-back:an-id", Purpose.KeptBack(new PotId("an-id"))),
            (PurposeKind.OwedBack, "owed-back:an-id", Purpose.OwedBack(new PotId("an-id"))),
            (PurposeKind.Wallet, "wallet:an-id", Purpose.Wallet(new PotId("an-id"))),
            (PurposeKind.ForDebt, "for-debt:an-id", Purpose.ForDebt(new DebtId("an-id"))),
            (PurposeKind.ForCard, "for-card:an-id", Purpose.ForCard(new DebtId("an-id"))),
            (PurposeKind.Overdraft, "overdraft", Purpose.Overdraft),
        ];

        AllAreThere([.. words.Select(one => (one.Kind, one.Word))]);
        foreach ((PurposeKind kind, string word, Purpose purpose) in words)
        {
            Assert.Equal(kind, purpose.Kind);
            Key("account/" + word, LedgerEnd.InAccount(purpose));
            Key("cash/" + word, LedgerEnd.InCash(purpose));
        }
    }

    [Fact]
    public void Places()
    {
        (Place Place, string Word)[] words = [(Place.Account, "account"), (Place.Cash, "cash")];

        AllAreThere(words);
        foreach ((Place place, string word) in words)
        {
            Key(word + "/pot:food", new LedgerEnd.At(place, Purpose.Pot(new PotId("food"))));
        }
    }

    [Fact]
    public void Outsides()
    {
        (OutsideKind Kind, string Word, LedgerEnd End)[] words =
        [
            (OutsideKind.Opening, "opening", LedgerEnd.Opening),
            (OutsideKind.Source, "source:wage", LedgerEnd.PaidBy(new SourceId("wage"))),
            (OutsideKind.Source, "source:Gift: from aunt/uncle", LedgerEnd.OneOff("Gift: from aunt/uncle")),
            (OutsideKind.Bill, "bill:rent", LedgerEnd.PaidFor(new BillId("rent"))),
            (OutsideKind.Interest, "interest:card", LedgerEnd.InterestOn(new DebtId("card"))),
            (OutsideKind.Spending, "spending", LedgerEnd.SpentFrom(null)),
            (OutsideKind.Spending, "spending:food", LedgerEnd.SpentFrom(new PotId("food"))),
            (OutsideKind.Difference, "difference:food", LedgerEnd.MissedIn(new PotId("food"))),
            (OutsideKind.Entry, "entry:fee", LedgerEnd.Entered(EntryKind.Fee)),
        ];

        AllAreThere([.. words.DistinctBy(one => one.Kind).Select(one => (one.Kind, one.Word))]);
        foreach ((OutsideKind kind, string word, LedgerEnd end) in words)
        {
            Assert.Equal(kind, Assert.IsType<LedgerEnd.Outside>(end).Kind);
            Key("outside/" + word, end);
        }
    }

    [Fact]
    public void Debts() => Key("owed/car-loan", new LedgerEnd.Owed(new DebtId("car-loan")));

    [Fact]
    public void Shifts() => Files(Words.Shifts, (Shift.None, "none"), (Shift.Before, "before"), (Shift.After, "after"));

    [Fact]
    public void HolidaySets() => Files(
        Words.HolidaySets,
        (HolidaySet.None, "none"),
        (HolidaySet.UnitedStates, "US"),
        (HolidaySet.EnglandAndWales, "GB-EW"),
        (HolidaySet.Target, "TARGET"));

    [Fact]
    public void Weekdays()
    {
        (IsoDayOfWeek Day, string Word)[] words =
        [
            (IsoDayOfWeek.Monday, "Monday"),
            (IsoDayOfWeek.Tuesday, "Tuesday"),
            (IsoDayOfWeek.Wednesday, "Wednesday"),
            (IsoDayOfWeek.Thursday, "Thursday"),
            (IsoDayOfWeek.Friday, "Friday"),
            (IsoDayOfWeek.Saturday, "Saturday"),
            (IsoDayOfWeek.Sunday, "Sunday"),
        ];

        // The library has one more, for no day at all.
        Assert.Equal(Enum.GetValues<IsoDayOfWeek>().Except([IsoDayOfWeek.None]), words.Select(one => one.Day));
        Both(Words.Weekdays, words);
    }

    [Fact]
    public void NumberStyles()
    {
        (NumberStyle Style, string Word)[] words =
        [
            (NumberStyle.CommaPoint, "1,234.56"),
            (NumberStyle.PointComma, "1.234,56"),
            (NumberStyle.SpaceComma, "1 234,56"),
            (NumberStyle.ApostrophePoint, "1'234.56"),
            (NumberStyle.Plain, "1234.56"),
        ];

        Assert.Equal(NumberStyle.All, words.Select(one => one.Style));
        Both(Words.NumberStyles, words);
    }

    [Fact]
    public void FileSetAsideModes() => Files(Words.SetAsideModes, (SetAsideMode.Level, "level"), (SetAsideMode.AsTheyFall, "asTheyFall"));

    [Fact]
    public void Looks() => Files(Words.Looks, (ScreenLook.Automatic, "automatic"), (ScreenLook.Dark, "dark"), (ScreenLook.Light, "light"), (ScreenLook.HighContrast, "highContrast"), (ScreenLook.Plain, "plain"));

    [Fact]
    public void CardRoundings() => Files(Words.CardRoundings, (CardRounding.Up, "up"), (CardRounding.Exact, "exact"));

    [Fact]
    public void DebtOrders() => Files(Words.DebtOrders, (DebtOrder.SmallestBalance, "balance"), (DebtOrder.HighestRate, "rate"));

    [Fact]
    public void HeldPlaces() => Files(Words.Places, (Place.Cash, "cash"), (Place.Account, "account"));

    [Fact]
    public void FillPers() => Files(
        Words.FillPers,
        (FillPer.Week, "week"),
        (FillPer.Payday, "payday"),
        (FillPer.Month, "month"),
        (FillPer.MonthSpread, "monthSpread"));

    [Fact]
    public void WeekUses() => Both(Words.WeekUses, [(false, "once"), (true, "split")]);

    [Fact]
    public void LadderOrders() => Files(
        Words.LadderOrders, (LadderOrder.Rising, "rising"), (LadderOrder.Falling, "falling"), (LadderOrder.Even, "even"));

    [Fact]
    public void Banks() => Files(Words.Banks, (BankKind.Teller, "teller"), (BankKind.Machine, "machine"));

    [Fact]
    public void DayWords() => Files(
        Words.DayWords, (DayWord.Last, "last"), (DayWord.LastWorkingDay, "lastWorkingDay"), (DayWord.FirstWorkingDay, "firstWorkingDay"));

    [Fact]
    public void Schedules() => Files(
        Words.Schedules,
        (ScheduleKind.Weekly, "weekly"),
        (ScheduleKind.Fortnightly, "fortnightly"),
        (ScheduleKind.EveryWeeks, "everyWeeks"),
        (ScheduleKind.TwiceMonthly, "twiceMonthly"),
        (ScheduleKind.Monthly, "monthly"),
        (ScheduleKind.EveryMonths, "everyMonths"),
        (ScheduleKind.Yearly, "yearly"),
        (ScheduleKind.Dates, "dates"));

    [Fact]
    public void PotUses() => Files(
        Words.PotUses,
        (PotUse.Spending, "spending"),
        (PotUse.Sinking, "sinking"),
        (PotUse.Ladder, "ladder"),
        (PotUse.Reserve, "reserve"));

    // The others are objects that name a pot or a debt.
    [Fact]
    public void LeftOvers() => Both(Words.LeftOvers, [(LeftOverTo.Stays, "stays"), (LeftOverTo.Buffer, "buffer")]);

    /// <summary>A new list of words has its table here.</summary>
    [Fact]
    public void EachListOfWords_HasItsTest()
    {
        Assert.Equal(
            ["DifferenceEnds", "EntryKinds", "FillStates", "LineUses", "OwedKinds", "SetAsideModes", "Steps", "Targets", "WrittenKinds"],
            Lists(typeof(StoredChoices), typeof(StoredWords<>)));
        Assert.Equal(
            ["Banks", "CardRoundings", "DayWords", "DebtOrders", "FillPers", "HolidaySets", "LadderOrders", "LeftOvers", "Looks", "NumberStyles", "Places", "PotUses", "Schedules", "SetAsideModes", "Shifts", "WeekUses", "Weekdays"],
            Lists(typeof(Words), typeof(JsonChoices<>)));
    }

    private static IEnumerable<string> Lists(Type holder, Type list) => holder
        .GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
        .Where(one => one.PropertyType.IsGenericType && one.PropertyType.GetGenericTypeDefinition() == list)
        .Select(one => one.Name)
        .Order(StringComparer.Ordinal);

    private static void Documents<T>(StoredWords<T> stored, params (T Member, string Word)[] words)
        where T : struct, Enum
    {
        AllAreThere(words);
        Assert.Equal(words.Select(one => one.Word).Order(StringComparer.Ordinal), stored.All.Order(StringComparer.Ordinal));
        foreach ((T member, string word) in words)
        {
            Assert.Equal(word, stored.WordFor(member));
            Assert.Equal(member, stored.ValueOf(word));
        }

        Assert.Throws<FormatException>(() => stored.ValueOf("neither"));
    }

    private static void Files<T>(JsonChoices<T> choices, params (T Member, string Word)[] words)
        where T : struct, Enum
    {
        AllAreThere(words);
        Both(choices, words);
    }

    private static void Both<T>(JsonChoices<T> choices, (T Member, string Word)[] words)
        where T : struct
    {
        Assert.Equal(words.Select(one => one.Word).Order(StringComparer.Ordinal), choices.Words.Order(StringComparer.Ordinal));
        foreach ((T member, string word) in words)
        {
            Assert.Equal(word, choices.WordFor(member));
            Assert.Equal(member, choices.Find(word));
        }
    }

    private static void AllAreThere<T>((T Member, string Word)[] words)
        where T : struct, Enum
    {
        Assert.Equal(Enum.GetValues<T>().Order(), words.Select(one => one.Member).Order());
        Assert.Equal(words.Length, words.Select(one => one.Word).Distinct(StringComparer.Ordinal).Count());
    }

    private static void Key(string key, LedgerEnd end)
    {
        Assert.Equal(key, end.Key);
        Assert.Equal(end, LedgerEnd.FromKey(key));
    }
}
