using System.Collections.Immutable;
using System.Drawing;
using NodaTime;
using NodaTime.Text;
using Payday.Commands;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Screens.Home;
using Payday.Screens.Routines;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Start;

public sealed class FirstStartTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 3, 2);
    private static readonly Size Complete = new(80, 24);

    private readonly ScratchFolder folder = new();
    private readonly BookStore store;

    public FirstStartTests() => store = BookStore.Open(new StoreFolder(folder.Path));

    private string DraftFile => folder.In("start.json");

    public void Dispose()
    {
        store.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void FirstStart_FromNothing_EndsInThePlanOfTheFirstRoutine()
    {
        var story = new List<string>();
        Hand hand = Begun();
        story.AddRange(hand.Shown(Complete));

        hand.Press("Enter").Type("Alder flat", "eur");
        story.AddRange(hand.Shown(Complete));
        hand.Press("Right");
        story.AddRange(hand.Shown(Complete));
        hand.Press("Right");
        story.AddRange(hand.Shown(Complete));
        story.AddRange(hand.Shown(new Size(60, 20)));
        hand.Press("a").Type("Mira, bakery", "1,840.50").To("Day").Type("25").Press("Esc", "Right");
        hand.Press("a").Type("Rent", "640").To("Day").Type("1").Press("Esc", "Right", "Right");
        hand.Press("a").Type("Food").To("Amount").Type("90").Press("Esc");
        hand.Press("Right").To("Fill day").Pick("s").Press("Right");
        hand.To("In the account").Type("712.40").To("Notes of 20 ").Type("2").Press("Right");
        story.AddRange(hand.Shown(Complete));
        story.AddRange(hand.Shown(new Size(120, 40)));
        hand.Press("Enter");

        Assert.IsType<HomeScreen>(hand.Top);
        Assert.False(File.Exists(DraftFile));
        Book book = store.Load()!;
        Assert.Equal(("Alder flat", "EUR", "712.40"), (book.Household.Name, book.Household.Currency.Code, book.Household.Opening.Account.ToPlain()));
        Assert.Equal(2, book.Household.Opening.LooseNotes[2000]);
        Result<RoutinePlan> plan = Routine.Plan(book, new RoutineDraft(Routine.Next(book).Value));
        Assert.Equal("1840.50", plan.Value!.Income.CameIn.ToPlain());
        Assert.IsType<RoutineScreen>(hand.Press("Enter").Top);
        Golden.Equal("first-start", story);
    }

    // All figures begin with what is in the account, and a field that was passed by says nothing of it.
    [Theory]
    [InlineData("")]
    [InlineData("0")]
    public void Begin_WithNothingInTheAccount_AsksOnce(string typed)
    {
        Hand hand = Begun();
        hand.Press("Enter").Type("Alder flat", "eur").Press("Right", "Right");
        hand.Press("a").Type("Mira, bakery", "1,840.50").To("Day").Type("25").Press("Esc", "Esc");
        hand.To("What is there now").Press("Enter");
        if (typed.Length > 0)
        {
            hand.To("In the account").Type(typed);
        }

        hand.Press("Esc").To("Begin").Press("Enter");
        Assert.Equal("The account begins with nothing in it: is that so? Enter once more begins; the part above says what is there now.", hand.Message);
        Assert.Null(store.Load());
        Assert.IsType<HomeScreen>(hand.Press("Enter").Top);
        Assert.True(hand.Top.IsNews);
    }

    // Where the machine says which region it is in, nothing of it is asked.
    [Fact]
    public void FirstStart_WhereTheRegionIsKnown_AsksForNeitherCurrencyNorNotes()
    {
        Hand hand = new Hand(Door(_ => new HouseholdOffer(null, []), "de_DE.UTF-8")).Press("Enter");

        string[] shown = hand.Shown(Complete);
        Assert.Contains(shown, line => line.StartsWith("\u2713 1", StringComparison.Ordinal) && line.Contains("Our household, EUR, 1.234,56", StringComparison.Ordinal));
        Assert.Contains(shown, line => line.StartsWith(" >3", StringComparison.Ordinal));
        Assert.Contains(shown, line => line.Contains("Friday, a teller, TARGET (euro)", StringComparison.Ordinal));
    }

    [Fact]
    public void Lines_PastedOnThePartsAndCutOff_AreThereAgainAndTakenPartByPart()
    {
        Hand hand = Begun().Paste("Pots\nFood 100");
        Assert.Equal("Name and currency come first: Enter.", hand.Message);
        hand.Press("Enter").Type("Alder flat", "usd").Press("Esc").Paste("Wage 1840 25\nBills\nRent 1450 1\nWater soon\nPots\nFood 100\n");
        Assert.Equal("Pasted: 1 line in Income sources, 2 lines in Bills and 1 line in Pots. Nothing is taken yet.", hand.Message);

        hand = Begun();
        Assert.Contains(hand.Shown(Complete), line => line.Contains("none yet, 2 lines to take", StringComparison.Ordinal));
        hand.To("Who pays").Press("Enter", "Right", "Right");
        Assert.Equal("1 bill taken. 1 line to mend; Right again goes on and leaves them here.", hand.Message);
        hand.Press("Right", "Right", "Right");
        Assert.Equal(["Wage", "Rent", "Food"], Names(new DraftWork(store, () => Today).Draft));

        hand.Press("Esc").To("Begin").Press("Enter");
        Assert.Equal("In Bills there are lines that aren't taken yet. Enter once more begins without them.", hand.Message);
        Assert.IsType<HomeScreen>(hand.Press("Enter", "Enter").Top);

        static IEnumerable<string?> Names(HouseholdDraft draft) => [draft.Sources!.Value.Single().Name, draft.Bills!.Value.Single().Name, draft.Pots!.Value.Single().Name];
    }

    [Fact]
    public void FirstStart_CutOff_GoesOnWithEveryFieldThatWasLeft()
    {
        Begun().Press("Enter").Type("Alder flat", "EUR").Press("Right", "Right", "a").Type("Mira, bakery", "1840.50").To("Day").Type("25").Press("Esc", "Right", "Right");

        Hand again = Begun();

        Golden.Equal("guide-again-80x24", again.Shown(Complete));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, OperatingSystem.IsWindows() ? UnixFileMode.UserRead | UnixFileMode.UserWrite : File.GetUnixFileMode(DraftFile));
    }

    [Theory]
    [InlineData("usd", "United States")]
    [InlineData("gbp", "England and Wales")]
    [InlineData("eur", "TARGET (euro)")]
    [InlineData("jpy", "weekends only")]
    public void Currency_Typed_BringsTheBankHolidaysUsualForIt(string code, string holidays)
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", code).Press("Esc").To("Fill day and bank").Press("Enter").To("Bank holidays");
        Assert.Contains(hand.Shown(Complete), line => line.Contains(holidays, StringComparison.Ordinal));
    }

    [Fact]
    public void Currency_TypedAgainAsItWas_KeepsWhatWasChangedSince()
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", "usd").Press("Right").Type("50 20").Press("Left").To("Currency").Type("USD");
        Assert.Equal([50, 20], new DraftWork(store, () => Today).Notes);
        hand.To("Currency").Type("EUR");
        Assert.NotEqual([50, 20], new DraftWork(store, () => Today).Notes);
    }

    [Fact]
    public void Left_InAPart_LeadsToTheOneBefore()
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", "usd").Press("Right", "Right", "Left");
        Assert.StartsWith(" Notes and coins", hand.Shown(Complete)[0], StringComparison.Ordinal);
        hand.Press("Left");
        Assert.Contains("part 1 of 8", hand.Shown(Complete)[0], StringComparison.Ordinal);
        hand.Press("Left");
        Assert.IsType<GuideScreen>(hand.Top);
    }

    [Theory]
    [InlineData("usd", "2026-10-09")]
    [InlineData("eur", "2026-09-10")]
    public void Date_InFigures_IsReadAsTheHouseholdsRegionReadsIt(string code, string date)
    {
        Begun().Press("Enter").Type("Alder flat", code).Press("Esc").To("What is there now").Press("Enter").To("Counted on").Type("10/9/2026");
        Assert.Equal(date, LocalDatePattern.Iso.Format(new DraftWork(store, () => Today).Draft.Start!.Value));
    }

    [Fact]
    public void Date_InFiguresWhereNothingSettlesIt_IsAsked() => Assert.StartsWith(
        "It can be 10 September or 9 October",
        Begun().Press("Enter").Type("Alder flat", "cad").Press("Esc").To("What is there now").Press("Enter").To("Counted on").Try("10/9/2026"),
        StringComparison.Ordinal);

    [Fact]
    public void NewItem_CutOffHalfTyped_IsThereAgain()
    {
        Begun().Press("Enter").Type("Alder flat", "USD").Press("Right", "Right", "a").Type("Mira, bakery", "1840.50").To("Comes").Pick("t");

        Hand hand = Begun();
        Assert.Contains(hand.Shown(Complete), line => line.EndsWith("none yet, one begun", StringComparison.Ordinal));
        hand.To("Who pays").Press("Enter");
        Assert.Contains("Begun and not complete yet: Mira, bakery; a goes on with it.", string.Join(' ', hand.Shown(Complete)), StringComparison.Ordinal);
        hand.Press("a");
        Golden.Equal("begun-80x24", hand.Shown(Complete));
        hand.To("First day").Type("1", "15");

        Assert.Equal("Mira, bakery", Assert.Single(new DraftWork(store, () => Today).Draft.Sources!.Value).Name);
        Assert.Equal(BegunItems.None, new DraftWork(store, () => Today).Begun);
        Assert.DoesNotContain("begun", File.ReadAllText(DraftFile), StringComparison.Ordinal);
    }

    [Fact]
    public void NewItem_BegunAndForgotten_IsEmpty()
    {
        Begun().Press("Enter").Type("Alder flat", "USD").Press("Right", "Right", "a").Type("Mira, bakery");
        Begun().To("Who pays").Press("Enter", "a", "Del").Type("Jon, lodger");
        Assert.Equal("Jon, lodger", new DraftWork(store, () => Today).Begun.Source!.Name);
    }

    [Fact]
    public void Begin_WithAnItemBegun_AsksOnce()
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", "USD").Press("Right", "Right", "a").Type("Mira, bakery", "1840.50").To("Day").Type("25").Press("Esc", "Right");
        hand.Press("a").Type("Rent").Press("Esc", "Esc", "Esc").To("Begin").Press("Enter");
        Assert.Equal("In Bills one is begun and not complete: a goes on with it there. Enter once more begins without it.", hand.Message);
        Assert.Null(store.Load());

        Assert.StartsWith("The account begins with nothing in it", hand.Press("Enter").Message, StringComparison.Ordinal);
        Assert.IsType<HomeScreen>(hand.Press("Enter").Top);
    }

    [Fact]
    public void Form_EachOfItsFields_HasAWordOnItsHelpPage()
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", "USD").Press("Right", "Right", "a");
        Assert.Equal(["Name", "Expected", "Comes", "Day", "On a closed day", "Changes to", "Until"], hand.Top.Words.Select(word => word.Word));
        Assert.All(hand.Top.Words, word => Assert.NotEmpty(word.Meaning));
    }

    [Fact]
    public void Type_AField_LeadsToTheNextInOrder()
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", "USD").Press("Right", "Right", "a").Type("Mira, bakery", "1840.50");
        Assert.Contains(hand.Shown(Complete), line => line.StartsWith(" >Comes", StringComparison.Ordinal));
    }

    [Fact]
    public void Guide_WithoutACurrency_LeadsBackToIt()
    {
        Hand hand = Begun().To("Bills").Press("Enter");
        Assert.Equal("Name and currency come first: Enter.", hand.Message);

        hand.Press("Enter").Type("Alder flat").Press("Right");

        Assert.Equal("Name and currency is needed before the rest; Enter goes back to it.", hand.Message);
    }

    [Fact]
    public void Begin_WithoutASource_NamesWhatIsNeeded()
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", "EUR").Press("Esc").To("Begin").Press("Enter");

        Assert.Equal("Who pays, and when is still needed: Enter.", hand.Message);
        Assert.Null(store.Load());
    }

    [Fact]
    public void Begin_WithMoreInPotsThanInTheAccount_SaysSo()
    {
        Hand hand = Begun().Press("Enter").Type("Alder flat", "EUR").Press("Right", "Right", "a").Type("Mira, bakery", "1840.50").To("Day").Type("25").Press("Esc", "Right", "a").Type("Rent", "640").To("Day").Type("1");
        hand.To("Set aside").Type("100").Press("Esc", "Esc").To("Begin").Press("Enter");

        Assert.Contains(hand.Shown(Complete), line => line.Contains("already have 100.00, but the account", StringComparison.Ordinal));
        Assert.Null(store.Load());
    }

    [Fact]
    public void Currency_Changed_BringsItsOwnNotes()
    {
        Begun().Press("Enter").Type("Alder flat", "EUR").To("Currency").Type("jpy");

        Assert.Equal([10_000, 5_000, 2_000, 1_000], new DraftWork(store, () => Today).Notes);
    }

    [Fact]
    public void TakeFile_WithFaults_ListsThemAll()
    {
        Hand hand = new Hand(Door(_ => new HouseholdOffer(null, ["x: name: This is missing; add a text in quotes.", "x: start: This is missing."]))).To("Take a household file").Press("Enter", "Enter").Type("x");

        Golden.Equal("file-faults-80x24", hand.Shown(Complete));
    }

    [Fact]
    public void TakeFile_ThatIsRight_IsStoredAfterEnter()
    {
        Hand hand = new Hand(Door(_ => new HouseholdOffer(DemoCommand.Household(), []))).To("Take a household file").Press("Enter", "Enter").Type("demo.json");
        Golden.Equal("file-80x24", hand.Shown(Complete));
        Assert.Null(store.Load());

        hand.Press("Enter");

        Assert.Equal("Fernhollow house", store.Load()!.Household.Name);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    [InlineData(120, 40)]
    public void StartScreen_AtASize_IsAsRecorded(int width, int height)
    {
        string[] lines = new Hand(Door(_ => new HouseholdOffer(null, ImmutableArray<string>.Empty))).Shown(new Size(width, height));

        Golden.Equal($"start-{width}x{height}", lines.Select(line => line.StartsWith(" Everything is kept in", StringComparison.Ordinal) ? " Everything is kept in DIR" : line));
    }

    [Fact]
    public void Demo_LoadedFromHereAndLeft_ComesBackAndSaysSo()
    {
        using var demo = new DemoFolder();
        var hand = new Hand(new StartScreen(new StartDoor(store, () => Today, _ => new HouseholdOffer(null, []), demo.Open)));
        hand.To("Load the demo").Press("Enter", "Enter", "Esc", "Esc");
        Assert.Contains("Throw the demo household away", hand.Top.Bindings[0].Help, StringComparison.Ordinal);
        hand.Press("Enter");

        Assert.IsType<StartScreen>(hand.Top);
        Assert.Equal("The demo household is thrown away. Your own can be set up here.", hand.Message);
        Assert.Null(store.Load());
        hand.To("Load the demo").Press("Enter");
        Assert.IsType<HomeScreen>(hand.Top);
    }

    private Hand Begun() => new Hand(Door(_ => new HouseholdOffer(null, []))).Press("Enter");

    private StartScreen Door(Func<string, HouseholdOffer> read, string? locale = null) =>
        new(new StartDoor(store, () => Today, read, _ => throw new InvalidOperationException("No demo here.")) { Locale = locale });
}
