using System.Drawing;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Home;
using Payday.Screens.Learning;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Statements.Files;
using Payday.Statements.Taking;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Learning;

/// <summary>From files of a bank that is made up to a household that was confirmed line by line.</summary>
public sealed class StatementStartTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 3, 6);
    private static readonly Size Complete = new(80, 24);
    private static readonly Size Small = new(60, 20);

    private readonly ScratchFolder folder = new();
    private readonly BookStore store;

    public StatementStartTests()
    {
        store = BookStore.Open(new StoreFolder(folder.In("data")));
        Directory.CreateDirectory(Bank);
        foreach ((string name, string text) in HalfYearExport.Before(new DateOnly(2026, 3, 6)))
        {
            File.WriteAllText(Path.Combine(Bank, name), text);
        }
    }

    private string Bank => folder.In("bank");

    private HouseholdDraft Draft => new DraftWork(store, () => Today).Draft;

    public void Dispose()
    {
        store.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void FromStatements_LineByLine_EndsInThePlanOfTheFirstRoutine()
    {
        var story = new List<string>();
        Hand hand = Files();
        story.AddRange(hand.Shown(Complete));
        hand.Press("Enter").Type(Bank, "");
        story.AddRange(hand.Shown(Complete));
        hand.Press("Right");
        story.AddRange(hand.Shown(Complete));
        story.AddRange(hand.Shown(Small));

        hand.Press("Enter", "Enter").To("Harbour").Press("Enter");
        story.AddRange(hand.Shown(Complete));
        hand.Press("Enter").Type("3000", "5").Press("Esc");
        hand.To("Brightwire").Press("Enter").To("Farnet").Press("Enter").To("Cash machine").Press("x").To("Corner Grocer").Press("Enter");
        hand.To("Corner Grocer").Press("Enter").To("Name").Type("Food").Press("Esc");
        Assert.DoesNotContain(hand.Shown(Complete), line => line.Contains("Corner Grocer", StringComparison.Ordinal));
        hand.To("Food").Press("Enter", "Esc").To("Millers").Press("x").To("In the account").Press("Enter");
        story.AddRange(hand.Shown(Complete));
        hand.Press("Right");
        story.AddRange(hand.Shown(Complete));
        Assert.Null(store.Load());

        hand.To("Name and currency").Press("Enter").Type("Alder flat").Press("Esc").To("Begin").Press("Enter");
        Assert.IsType<HomeScreen>(hand.Top);
        Book book = store.Load()!;
        Assert.Equal(["Northlane Rent", "Brightwire Power", "Farnet Internet"], book.Household.Bills.Select(bill => bill.Name));
        Assert.Equal(["60.00", "34.00"], book.Household.Bills.Skip(1).Select(bill => bill.Amount.ToPlain()));
        Assert.Equal(("Tidewater Works", "1840.50"), book.Household.Sources.Select(source => (source.Name, source.Expected.ToPlain())).Single());
        Assert.Equal(("Harbour Loan Office", "3000.00", new Schedule.Monthly(new MonthDay.Numbered(15))), book.Household.Debts.Select(debt => (debt.Name, debt.Opening.ToPlain(), (Schedule.Monthly)debt.Schedule)).Single());
        Assert.IsType<MinimumRule.Fixed>(book.Household.Debts[0].Minimum);
        Assert.Equal(["Food"], book.Household.Pots.Select(pot => pot.Name));
        Assert.Equal(new LocalDate(2026, 3, 5), book.Household.Start);
        Assert.True(book.Household.Opening.Account.IsPositive);
        Assert.True(Routine.Plan(book, new RoutineDraft(Routine.Next(book).Value)).Ok);
        Assert.Equal(
            ["brightwire: Brightwire Power", "corner: Food", "farnet: Farnet Internet", "harbour: Harbour Loan Office", "northlane: Northlane Rent", "tidewater: Tidewater Works"],
            book.Weeks.StatementRules.Select(rule => $"{rule.Words}: {TargetText.Name(book.Household, rule.Target)}"));
        Assert.Equal("Date|Name|Text|Amount|Currency|Balance", Assert.Single(book.Weeks.Readings).Header);
        Golden.Equal("from-statements", story.Select(line => line.Replace(folder.Path, "DIR", StringComparison.Ordinal)));
    }

    [Fact]
    public void Found_NothingPressed_TakesNothing()
    {
        Hand hand = Found();
        hand.Press("Right");

        Assert.IsType<GuideScreen>(hand.Top);
        Assert.Equal((null, null, null, 0m), (Draft.Sources, Draft.Bills, Draft.Pots, Draft.Opening!.Account!.Value));
        Assert.Null(Draft.Settings.Currency);
    }

    // The number it says is what it takes; what asks whether it is a debt is never among them.
    [Fact]
    public void Found_AllAtOnce_TakesAsManyAsTheKeySaysAndNoQuestion()
    {
        Hand hand = Found();
        int said = int.Parse(hand.Top.Bindings.Single(key => key.Name == "i").Label.Split(' ')[^1], System.Globalization.CultureInfo.InvariantCulture);
        hand.Press("i");

        Assert.StartsWith($"{said} taken.", hand.Message, StringComparison.Ordinal);
        Assert.Equal(said - 1, Draft.Sources!.Value.Length + Draft.Bills!.Value.Length + Draft.Pots!.Value.Length);
        Assert.DoesNotContain(Draft.Bills!.Value, bill => bill.Name == "Harbour Loan Office");
        Assert.DoesNotContain(hand.Top.Bindings, key => key.Name == "i");
    }

    [Theory]
    [InlineData("Tidewater")]
    [InlineData("Northlane")]
    [InlineData("Corner Grocer")]
    [InlineData("In the account")]
    public void Found_TakenAndTakenOut_IsAsBefore(string row)
    {
        Hand hand = Found().To("Farnet").Press("Enter");
        HouseholdDraft before = Draft;

        hand.To(row).Press("Enter").To(row).Press("x");

        Assert.Equal(Whole(before), Whole(Draft));
        Assert.Contains("1 taken, 0 left out", string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
    }

    [Fact]
    public void Found_ADebtBegunAndTakenOut_IsForgotten()
    {
        Hand hand = Found().To("Harbour").Press("t").Press("Esc", "Esc").To("Harbour");
        Assert.Equal("Harbour Loan Office", new DraftWork(store, () => Today).Begun.Debt!.Name);

        hand.Press("x");

        Assert.Null(new DraftWork(store, () => Today).Begun.Debt);
        Assert.StartsWith("?>", hand.Shown(Complete).Single(line => line.Contains("Harbour", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    // Files, answers, what was taken and what was left: all is there again after the program was cut off.
    [Fact]
    public void CutOff_GoesOnWithFilesAndDecisions()
    {
        Found().To("Northlane").Press("Enter").To("Cash machine").Press("x");

        Hand again = Files();
        Assert.Contains("2025-09.csv", string.Join('\n', again.Shown(Complete)), StringComparison.Ordinal);
        again.Press("Right");

        string[] shown = again.Shown(Complete);
        Assert.StartsWith("\u2713 ", shown.Single(line => line.Contains("Northlane", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.StartsWith("- ", shown.Single(line => line.Contains("Cash machine", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains(" >pay", string.Join('\n', shown), StringComparison.Ordinal);
    }

    [Fact]
    public void Files_GoneInTheMeantime_AreSaidAndWhatWasTakenStays()
    {
        Found().To("Northlane").Press("Enter");
        File.Delete(Path.Combine(Bank, "2025-10.csv"));

        Hand again = Files().To("2025-10.csv");

        Assert.Contains("There is no file", string.Join(' ', again.Shown(Complete)), StringComparison.Ordinal);
        Assert.Equal("Northlane Rent", Draft.Bills!.Value.Single().Name);
    }

    [Fact]
    public void File_ThatAsks_IsAnsweredOnTheScreen()
    {
        string file = folder.In("half.csv");
        File.WriteAllText(file, "Date;Name;Amount\n03/04/2025;Corner Grocer;-12,50\n05/04/2025;Tidewater Works;1.200,00\n");
        Hand hand = Files().Press("Enter").Type(file, "").Press("Enter");
        Assert.Contains("its currency", string.Join(' ', hand.Shown(Complete)), StringComparison.Ordinal);
        hand.Pick("e").Press("Enter", "Enter");
        Golden.Equal("question-80x24", hand.Shown(Complete).Select(line => line.Replace(folder.Path, "DIR", StringComparison.Ordinal)));
        hand.Press("Down", "Enter");

        Assert.Contains("4 Mar 2025", string.Join(' ', hand.Shown(Complete)), StringComparison.Ordinal);
        Assert.Equal(2, new DraftWork(store, () => Today).Statements.Files.Single().Answers.Length);
        hand.Press("Right");
        Assert.StartsWith("These statements cover", hand.Message, StringComparison.Ordinal);
        Assert.IsType<StatementFilesScreen>(hand.Top);
    }

    // What was answered once while the household was set up is known when the account's next file comes.
    [Fact]
    public void Answers_GivenAtTheStart_AreKeptForTheNextFile()
    {
        string text = "Date;Name;Amount\n" + string.Concat(Enumerable.Range(1, 9).Select(month => $"03/0{month}/2025;Northlane Rent;640.00\n05/0{month}/2025;Farnet Internet;30.00\n"));
        string file = folder.In("asks.csv");
        File.WriteAllText(file, text);
        Hand hand = Files().Press("Enter").Type(file, "");
        for (int i = 0; i < 4 && hand.Top is StatementFilesScreen { Bindings: [{ Label: "answer" }, ..] }; i++)
        {
            hand.Press("Enter", "Enter");
        }

        var work = new DraftWork(store, () => Today);
        Assert.NotEmpty(work.Statements.Files.Single().Answers);
        Assert.Null(work.Put(There, DraftPlace.Whole));
        Assert.Empty(work.Begin().Faults);
        KeptReading kept = Assert.Single(store.Load()!.Weeks.Readings);
        CsvProfile profile = KeptReadings.ProfileOf(kept);
        Assert.NotNull(profile.DateOrder);
        Assert.NotNull(profile.AboveZeroGoesOut);
        Assert.Empty(Payday.Statements.Reading.StatementReader.Read(
            System.Text.Encoding.UTF8.GetBytes("Date;Name;Amount\n03/04/2026;Northlane Rent;640.00\n"),
            new ReadingOptions { Currency = Currency.FromCode("EUR"), Today = Today, Profiles = [profile] }).Questions);
    }

    // A debt that was taken stays one, also where it was taken out in the lists; a bill that was stays a bill.
    [Fact]
    public void Debt_IsKeptAsOne_WhereverItStandsNow()
    {
        Hand hand = Found().To("Harbour").Press("t").Type("3000", "5").Press("Esc").To("Northlane").Press("Enter");
        Assert.Contains("debt  Harbour", string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
        var work = new DraftWork(store, () => Today);
        Assert.Equal("bill Harbour Loan Office", Assert.Single(work.Statements.Debts));
        Assert.Null(work.Put(work.Draft with { Bills = [], Debts = [] }, DraftPlace.Whole));
        string shown = string.Join('\n', Files().Press("Right").Shown(Complete));
        Assert.Contains("debt  Harbour", shown, StringComparison.Ordinal);
        Assert.Contains("bill  Northlane", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void File_ThatIsNone_IsSaidAndTakenOut()
    {
        string file = folder.In("letter.txt");
        File.WriteAllText(file, "Dear customer,\n");

        Assert.Equal($"There is no file {folder.In("nowhere.csv")}.", Files().Press("Enter").Try(folder.In("nowhere.csv")));
        Hand hand = Files().Press("Enter").Type(file, "");
        Assert.Contains("can't be read", string.Join(' ', hand.Shown(Complete)), StringComparison.Ordinal);
        Assert.Contains("1 file says nothing yet", string.Join(' ', hand.Shown(Complete)), StringComparison.Ordinal);
        Assert.Equal("That is among the files already.", hand.Press("a").Try(file));
        Files().Press("x");
        Assert.True(new DraftWork(store, () => Today).Statements.Files.IsEmpty);
    }

    [Fact]
    public void Files_Pasted_AreAdded()
    {
        Hand hand = Files();

        Assert.True(hand.Top.Pasted($"{Path.Combine(Bank, "2025-09.csv")}\n{Path.Combine(Bank, "2025-10.csv")}\n"));

        Assert.Equal(2, new DraftWork(store, () => Today).Statements.Files.Length);
    }

    [Fact]
    public void Found_InAnotherCurrency_IsRefused()
    {
        new Hand(Door()).Press("Enter", "Enter").Type("Alder flat", "usd");

        Hand hand = Files().Press("Enter").Type(Bank, "").Press("Right");

        Assert.Equal("The household is in USD, and these files have no line in it.", hand.Message);
    }

    [Fact]
    public void Found_ANameThatIsThere_IsRefusedWithASentence()
    {
        Hand hand = new Hand(Door()).Press("Enter", "Enter").Type("Alder flat", "eur").Press("Esc").To("Bills").Press("Enter", "i", "Enter").Type("Northlane Rent 640 1st", "").Press("Right", "Esc");
        hand.Press("i", "Enter").Type(Bank, "").Press("Right").To("Northlane").Press("Enter");

        Assert.Contains("Northlane Rent", hand.Message, StringComparison.Ordinal);
        Assert.Single(Draft.Bills!.Value);
        hand.Press("Down");
        Assert.Contains("0 taken", string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
    }

    // From the guide the way leads back to it.
    [Fact]
    public void Guide_ToStatementsAndOn_IsTheGuideAgain()
    {
        Hand hand = new Hand(Door()).Press("Enter", "i", "Enter").Type(Bank, "").Press("Right", "Right");

        Assert.IsType<GuideScreen>(hand.Top);
        Assert.IsType<StartScreen>(hand.Press("Esc").Top);
    }

    // The same for a household that is there: only what it hasn't, and an amount that is another.
    [Fact]
    public void Household_ThatIsThere_TakesANewAmountAndABill()
    {
        BookSession session = NewBook.Store(store, HouseholdCheck.Of(There).Value!, () => Today);
        Hand hand = new Hand(new HomeScreen(session)).Press("h", "i", "Enter").Type(Bank, "").Press("Right");
        Golden.Equal("household-80x24", hand.Shown(Complete));

        hand.To("Internet").Press("Enter").To("Brightwire").Press("Enter");
        Household household = store.Load()!.Household;
        Assert.Equal("34.00", household.Bills[1].AmountOn(Today).ToPlain());
        Assert.Equal(["Rent", "Internet", "Brightwire Power"], household.Bills.Select(bill => bill.Name));
        StatementRule rule = Assert.Single(store.Load()!.Weeks.StatementRules);
        Assert.Equal(("brightwire", "Brightwire Power"), (rule.Words, TargetText.Name(household, rule.Target)));
        hand.To("Internet").Press("x").To("Brightwire").Press("x");
        Assert.Empty(store.Load()!.Weeks.StatementRules);
        Assert.Equal(session.Book.Household.Bills, store.Load()!.Household.Bills);
        Assert.Equal(["30.00", "Rent, Internet"], [store.Load()!.Household.Bills[1].AmountOn(Today).ToPlain(), string.Join(", ", store.Load()!.Household.Bills.Select(bill => bill.Name))]);
        Assert.IsType<SetupScreen>(hand.Press("Right").Top);
    }

    // What the household has and the bank doesn't show any more stands above what was found.
    [Fact]
    public void Household_WithABillThatStopped_SaysSince()
    {
        HouseholdDraft locker = There with
        {
            Bills = [.. There.Bills!.Value, new() { Name = "Storage locker", Amount = 42, Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(3) }, Shift = Shift.After, Essential = false }],
        };
        BookSession session = NewBook.Store(store, HouseholdCheck.Of(locker).Value!, () => Today);
        Hand hand = new Hand(new HomeScreen(session)).Press("h", "i", "Enter").Type(Bank, "").Press("Right");
        Assert.Contains(" Storage locker: no line since", string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
    }

    private static HouseholdDraft There => new()
    {
        Name = "Alder flat",
        Start = new LocalDate(2026, 1, 2),
        Settings = new() { Currency = Currency.FromCode("EUR"), FillDay = IsoDayOfWeek.Friday, Holidays = new() { Set = HolidaySet.None } },
        Opening = new() { Account = 500 },
        Sources = [new() { Name = "Tidewater", Expected = 1840.50m, Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(25) }, Shift = Shift.After }],
        Bills =
        [
            new() { Name = "Rent", Amount = 640, Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(1) }, Shift = Shift.After, Essential = true },
            new() { Name = "Internet", Amount = 30, Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(12) }, Shift = Shift.After, Essential = false },
        ],
    };

    private static string Whole(HouseholdDraft draft) =>
        $"{draft.Start} {draft.Opening!.Account} {string.Join(',', (draft.Sources ?? []).Select(one => one.Name))} {string.Join(',', (draft.Bills ?? []).Select(one => one.Name))} {string.Join(',', (draft.Pots ?? []).Select(one => one.Name))}";

    private Hand Found() => Files().Press("Enter").Type(Bank, "").Press("Right");

    private Hand Files() => new Hand(Door()).To("Begin from bank statements").Press("Enter");

    private StartScreen Door() =>
        new(new StartDoor(store, () => Today, _ => new HouseholdOffer(null, []), _ => throw new InvalidOperationException("No demo here.")));
}
