using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Reconciling;
using Payday.Core.StatementTaking;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using Payday.Statements.Lines;
using Payday.Statements.Taking;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.StatementTaking;

/// <summary>Statements of a household with rent, power and a card debt, its payday of 6 March closed: what is known, what is proposed, and what comes of it.</summary>
public class TakingTests
{
    private static readonly LocalDate Today = new(2026, 4, 2);

    private static readonly Household Rented = House with
    {
        Bills = [Bill("Rent", 310, new LocalDate(2026, 3, 25), essential: true), Bill("Power", 46, new LocalDate(2026, 3, 20))],
        Opening = House.Opening with { Account = Usd(1500), SetAside = BillSums(("rent", 310), ("power", 60)) },
    };

    private static readonly Book Book = Close(Core.Books.Book.Begin(Rented), Friday6March);

    private static readonly LineTarget Food = new(LineUse.For, LedgerEnd.InCash(Purpose.Pot(new PotId("food"))));
    private static readonly LineTarget Gifts = new(LineUse.For, LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))));

    [Fact]
    public void Twins_OfTheSameAmountDayAndText_AreEachMatchedOnce()
    {
        Book book = Book.Spend("gifts", 5, Day(9)).Spend("gifts", 5, Day(9));
        StatementPlan both = Plan(book, Sent(Line(9, -5, "SHOP"), Line(9, -5, "SHOP")));
        Assert.Equal(2, both.Matched.Select(line => ((Partner.Entered)line.Partners[0]).Line.Number).Distinct().Count());

        StatementPlan one = Plan(book, Sent(Line(9, -5, "SHOP")));
        Assert.Single(one.Matched);
        Assert.Contains(one.Open, open => open.Line.Amount == Usd(-5));

        StatementPlan three = Plan(book, Sent(Line(9, -5, "SHOP"), Line(9, -5, "SHOP"), Line(9, -5, "SHOP")));
        Assert.Equal((2, 1), (three.Matched.Count(), three.Others.Count()));
    }

    [Fact]
    public void Twins_OfWhichOneWasTaken_LeaveTheOtherNew()
    {
        Book taken = Take(Book, Sent(Line(9, -5, "SHOP")), (1, Gifts));
        StatementPlan next = Plan(taken, Sent(Line(9, -5, "SHOP"), Line(9, -5, "SHOP")));
        Assert.Equal((1, 1), (next.Known, next.Lines.Length));
    }

    [Fact]
    public void Pending_ThatComesBackBooked_IsOneLine()
    {
        Statement first = Sent(Line(9, -5, "SHOP")) with { Pending = [Line(10, -7, "CARD 1234 RESERVED", "P1")] };
        Book taken = Take(Book, first, (1, Gifts));
        Assert.Single(taken.Weeks.Takings[0].Lines);
        StatementPlan next = Plan(taken, Sent(Line(9, -5, "SHOP"), Line(13, -7, "KIOSK AT THE PIER", "B9")));
        Assert.Equal((1, 1), (next.Known, next.Others.Count()));
    }

    [Fact]
    public void Id_ThatIsUsedAgainOrChanged_NeitherJoinsNorParts()
    {
        Book taken = Take(Book, Sent(Line(9, -5, "SHOP", "1"), Line(10, -6, "MILL", "2")), (1, Gifts), (2, Gifts));
        StatementPlan next = Plan(taken, Sent(Line(9, -5, "SHOP", "7"), Line(10, -6, "MILL", "2"), Line(11, -8, "PIER", "1")));
        Assert.Equal(2, next.Known);
        Assert.Equal(Usd(-8), Assert.Single(next.Lines).Line.Amount);
    }

    [Theory]
    [InlineData(-5, 0, false)]
    [InlineData(-10, 0, true)]
    [InlineData(-99, 1, false)]
    public void OtherWords_OfAKnownDayAndAmount_AreSettledByTheBalancesOrAsked(decimal difference, int asked, bool isNew)
    {
        Statement first = Sent(Line(9, -5, "SHOP"));
        Book taken = Take(Book, first, (1, Gifts));
        Money closing = first.Closing!.Amount + Usd(difference + 5);
        Statement next = new(StatementFormat.Ofx, Dollars)
        {
            Account = "77",
            From = Day(6),
            To = Day(31),
            Lines = [Line(9, -5, "OTHER WORDS")],
            Closing = new Balance(closing, Day(31), 1),
        };
        StatementPlan plan = Plan(taken, next);
        Assert.Equal(asked, plan.Others.Count(line => line.State == PlannedState.Unsure));
        Assert.Equal(isNew, plan.Others.Any(line => line.State == PlannedState.New));
    }

    [Theory]
    [InlineData(30, 12, 2025)]
    [InlineData(31, 12, 2025)]
    [InlineData(2, 1, 2026)]
    [InlineData(5, 1, 2026)]
    public void DecemberAndJanuary_FindTheDueOfTheYearsTurn(int day, int month, int year)
    {
        Household home = Rented with { Start = new LocalDate(2025, 12, 15), Bills = [Bill("Rent", 310, new LocalDate(2025, 12, 1))], Opening = Rented.Opening with { SetAside = BillSums(("rent", 310)) } };
        Book book = Core.Books.Book.Begin(home);
        Statement statement = Sent(new StatementLine(new LocalDate(year, month, day), Usd(-310)) { Text = "RENT" }) with { From = new LocalDate(2025, 12, 15), To = new LocalDate(2026, 1, 10) };
        Proposal proposal = Assert.Single(Plan(book, statement).Others).Proposal!;
        Assert.Equal((new LocalDate(2026, 1, 1), true), (proposal.Due!.Value.Scheduled, proposal.IsSure));
        Book taken = Take(book, statement);
        Assert.Equal(Usd(0), taken.Weeks.Reconciliations[^1].Difference);
    }

    [Theory]
    [InlineData("POWER COMPANY", -46, true)]
    [InlineData("POWER COMPANY", -51.2, true)]
    [InlineData("POWER COMPANY", -40, true)]
    [InlineData("POWER COMPANY", -99, false)]
    [InlineData("ZORBLATT", -51.2, false)]
    public void Due_OfNearlyItsAmount_IsProposedWhereItsWordsAreKnown(string text, decimal amount, bool isDue)
    {
        Statement statement = Sent(Line(21, amount, text));
        Proposal? proposal = Assert.Single(Plan(Book, statement).Others).Proposal;
        Assert.Equal(isDue, proposal is { Reason: ProposalReason.Due });
        if (isDue)
        {
            Book taken = Take(Book, statement);
            Assert.Equal((-Usd(amount), true), (taken.Weeks.Payments[^1].Amount, taken.Weeks.Payments[^1].Completes));
            Assert.DoesNotContain(DueLines.Of(taken, Day(31)), due => due.Name == "Power" && due.Date == new LocalDate(2026, 3, 20));
        }
    }

    [Fact]
    public void Pay_OfAPaydayThatIsntClosed_WaitsAndProposesNothing()
    {
        StatementPlan plan = Plan(Book, Sent(Line(20, 1000, "WAGE")));
        PlannedLine line = Assert.Single(plan.Others);
        Assert.Equal(PlannedState.Waits, line.State);
        Assert.Null(line.Effective);
        Book closed = Close(Book, new LocalDate(2026, 3, 20));
        Assert.Single(Plan(closed, Sent(Line(20, 1000, "WAGE"))).Matched);
    }

    // Pay about an open payday comes with that payday, whatever a rule says; a bill is sure only where one is due about then.
    [Fact]
    public void Rule_ForPayOrABill_IsSureOnlyWhereItCanBeThat()
    {
        var wage = new LineTarget(LineUse.Income, LedgerEnd.PaidBy(Rented.Sources[0].Id));
        var rent = new LineTarget(LineUse.For, LedgerEnd.InAccount(Purpose.SetAside(new BillId("rent"))));
        Book ruled = Book with { Weeks = Book.Weeks.With(new StatementRule("works", wage)).With(new StatementRule("flat", rent)) };
        Assert.Equal((wage, false), Guess(ruled, Sent(Line(20, 1000, "WORKS"))));
        Assert.Equal((wage, false), Guess(ruled, Sent(Line(19, 90, "WORKS"))));
        Assert.Null(Assert.Single(Plan(ruled, Sent(Line(20, 1000, "WORKS"))).Others).Effective);
        Assert.Equal((rent, true), Guess(ruled, Sent(Line(24, -290, "FLAT"))));
        Assert.Equal((rent, false), Guess(ruled, Sent(Line(6, -290, "FLAT"))));
    }

    [Fact]
    public void Debt_WithoutADueAboutThen_IsPaidBesideItsMinimums()
    {
        var target = new LineTarget(LineUse.For, new LedgerEnd.Owed(new DebtId("card")));
        Statement statement = Sent(Line(12, -25, "CARD"), Line(28, -40, "CARD AGAIN"));
        Assert.Equal(ProposalReason.Due, Plan(Book, statement).Others.First().Proposal?.Reason);
        Book taken = Take(Book, statement, (2, target));
        Assert.Equal((WrittenKind.Payment, WrittenKind.Move), (taken.Weeks.Takings[0].Lines[0].Wrote!.Kind, taken.Weeks.Takings[0].Lines[1].Wrote!.Kind));
        Assert.Equal(Usd(0), taken.Weeks.Reconciliations[^1].Difference);
    }

    [Fact]
    public void LinesTickedByHandBefore_AreNotOfferedAgain()
    {
        Book book = Book.Spend("gifts", 5, Day(9));
        ReconciliationPlan byHand = ReconciliationPlan.Of(book, new ReconciliationDraft(Day(10), Usd(1495), [.. AccountLines.Of(book).All.Select(line => line.Number)]));
        Book ticked = byHand.Accept().Value!;
        StatementPlan plan = Plan(ticked, Sent(Line(9, -5, "SHOP"), Line(12, -6, "MILL")));
        Assert.True(Assert.IsType<Partner.Entered>(Assert.Single(plan.Matched).Partners[0]).IsAtBank);
        Assert.Equal(Usd(-6), Assert.Single(plan.Others).Line.Amount);
    }

    [Fact]
    public void OlderStatement_AfterANewerOne_ClosesTheDifferenceOfTheLaterDay()
    {
        Money all = Usd(1500) + AccountLines.Of(Book).All.Aggregate(Usd(0), (sum, line) => sum + line.Amount);
        StatementLine[] closed = [.. AccountLines.Of(Book).All.Select(line => new StatementLine(line.Date, line.Amount) { Text = line.What })];
        Statement march = new(StatementFormat.Camt053, Dollars)
        {
            Account = "77", From = Day(6), To = Day(13), Lines = [.. closed, Line(11, -7, "PIER")],
            Opening = new Balance(Usd(1500), Day(6), 1), Closing = new Balance(all - Usd(7), Day(13), 1),
        };
        Statement later = new(StatementFormat.Camt053, Dollars)
        {
            Account = "77", From = Day(20), To = Day(31), Lines = [Line(21, -4, "MILL")],
            Opening = new Balance(all - Usd(7), Day(20), 1), Closing = new Balance(all - Usd(11), Day(31), 1),
        };
        Book first = Take(Book, later, (1, Gifts));
        Assert.NotEqual(Usd(0), first.Weeks.Reconciliations[^1].Difference);
        Book both = Take(first, march, (1, Gifts));
        Assert.Equal((Day(31), Usd(0)), (both.Weeks.Reconciliations[^1].Date, both.Weeks.Reconciliations[^1].Difference));
    }

    [Fact]
    public void Party_ThatBecameTheSameTwice_IsSure_OnceIsAsked_AndBothIsNothing()
    {
        Book once = Take(Book, Sent(Line(9, -5, "PIER SHOP")), (1, Gifts));
        Assert.Equal((Gifts, false), Guess(once, Sent(Line(9, -5, "PIER SHOP"), Line(16, -6, "PIER SHOP"))));
        Book twice = Take(once, Sent(Line(9, -5, "PIER SHOP"), Line(16, -6, "PIER SHOP")), (1, Gifts));
        Assert.Equal((Gifts, true), Guess(twice, Sent(Line(9, -5, "PIER SHOP"), Line(16, -6, "PIER SHOP"), Line(23, -7, "PIER SHOP"))));
        Book mixed = Take(once, Sent(Line(9, -5, "PIER SHOP"), Line(16, -6, "PIER SHOP")), (1, Food));
        Assert.Null(Guess(mixed, Sent(Line(9, -5, "PIER SHOP"), Line(16, -6, "PIER SHOP"), Line(23, -7, "PIER SHOP"))));
    }

    [Fact]
    public void Words_OfPurchasesFromOnePotAlone_AreAGuess_OfTwoPotsNothing()
    {
        Book book = Book.Spend("gifts", 5, Day(9), "Green grocer");
        Assert.Equal((Gifts, false), Guess(book, Sent(Line(23, -7, "CARD 12 GREEN GROCER SPRINGFIELD"))));
        Assert.Null(Guess(book.Spend("food", 5, Day(9), "grocer"), Sent(Line(23, -7, "CARD 12 GREEN GROCER SPRINGFIELD"))));
        Assert.Null(Guess(book, Sent(Line(23, -7, "GREEN HILL"))));
    }

    [Fact]
    public void Rule_ComesBeforeGuesses_AndIsPassedOverWhereItsPotIsGone()
    {
        Book book = Book.Spend("gifts", 5, Day(9), "Green grocer");
        Book ruled = book with { Weeks = book.Weeks.With(new StatementRule("grocer", Food)) };
        Assert.Equal((Food, true), Guess(ruled, Sent(Line(23, -7, "Green Grocer"))));
        Book more = ruled with { Weeks = ruled.Weeks.With(new StatementRule("green grocer", Gifts)) };
        Assert.Equal((Gifts, true), Guess(more, Sent(Line(23, -7, "Gréen Grocer 12"))));
        Book gone = book with { Weeks = book.Weeks.With(new StatementRule("grocer", new LineTarget(LineUse.For, LedgerEnd.InCash(Purpose.Pot(new PotId("gone")))))) };
        Assert.Equal((Gifts, false), Guess(gone, Sent(Line(23, -7, "Green Grocer"))));
        Book byMandate = book with { Weeks = book.Weeks.With(new StatementRule("de-77", Gifts)) };
        Assert.Equal((Gifts, true), Guess(byMandate, Sent(Line(23, -7, "Zorblatt") with { Mandate = "DE-77" })));
    }

    [Fact]
    public void Left_IsOfferedByTheSameFileAgain_AndTakenThen()
    {
        Statement statement = Sent(Line(9, -5, "SHOP"), Line(10, -6, "MILL"));
        Book taken = Take(Book, statement, (1, Gifts));
        Assert.Equal(Usd(-6), taken.Weeks.Reconciliations[^1].Difference);
        StatementPlan again = Plan(taken, statement);
        Assert.True(Assert.Single(again.Lines).WasLeft);
        Assert.IsType<TakingFault.AllKnown>(again.Taken(Today).Fault);
        Book rest = Take(taken, statement, (1, Gifts));
        Assert.Equal(Usd(0), rest.Weeks.Reconciliations[^1].Difference);
        Assert.Equal(2, TakenLines.Of(rest).Length);
        Assert.IsType<TakingFault.AllKnown>(Plan(rest, statement).Taken(Today).Fault);
    }

    [Fact]
    public void Refused_AtOneLine_NothingIsWritten()
    {
        StatementPlan plan = Plan(Book, Sent(Line(9, -5, "SHOP"), Line(10, -600, "MILL")));
        plan = plan.With(plan.Lines[0].Key, new Proposal(Gifts, ProposalReason.Chosen, true)).With(plan.Lines[1].Key, new Proposal(Gifts, ProposalReason.Chosen, true));
        TakingFault.AtLine at = Assert.IsType<TakingFault.AtLine>(plan.Taken(Today).Fault);
        Assert.Equal(Usd(-600), at.Line.Amount);
        Assert.IsType<PurchaseFault.PotHasLess>(at.Why);
    }

    [Theory]
    [InlineData(99999, typeof(TakingFault.NoSuchLine))]
    [InlineData(0, typeof(TakingFault.OtherAmount))]
    public void Chosen_AsALineThatIsntIt_IsRefused(long offset, Type why)
    {
        StatementPlan plan = Plan(Book, Sent(Line(9, -5, "SHOP")));
        long number = AccountLines.Of(Book).All[0].Number + offset;
        Result<Book> taken = plan.With(plan.Lines[0].Key, new Proposal(LineTarget.Leave, ProposalReason.Chosen, true) { Lines = [number] }).Taken(Today);
        Assert.Equal(why, Assert.IsType<TakingFault.AtLine>(taken.Fault).Why.GetType());
    }

    [Fact]
    public void Undo_NamesWhatIsInTheWay_AndPartsLeadToTheWhole()
    {
        Book taken = Take(Book, Sent(Line(9, -5, "SHOP"), Line(10, -6, "MILL")), (1, Food), (2, Gifts));
        TakingOfStatements taking = taken.Weeks.Takings[0];
        Assert.IsType<BookEntry.Statement>(Assert.IsType<Obstacle.OfStatement>(ReconciliationUndo.Of(taken, taken.Weeks.Reconciliations[0]).Fault).First);
        Assert.IsType<Obstacle.AtBank>(Purchasing.Undo(taken, 1, Today).Fault);

        Book later = Take(taken, Sent(Line(9, -5, "SHOP"), Line(10, -6, "MILL"), Line(14, -2, "PIER")), (1, Gifts));
        Assert.Equal(2, ((BookEntry.Statement)Assert.IsType<Obstacle.StatementSince>(TakingUndo.Of(later, taking, Today).Fault).Later).Number);

        Book returned = ReturnPlan.Of(taken, ReturnDraft.AsPlanned).Confirm(Day(15)).Value!;
        Assert.IsAssignableFrom<Obstacle>(TakingUndo.Of(returned, taking, Today).Fault);
        Assert.True(TakingUndo.Of(taken, taking, Today) is { Ok: true });
    }

    [Theory]
    [InlineData("77", "78", typeof(PlanFault.OtherAccount))]
    [InlineData("77", "77", null)]
    [InlineData("77", "", null)]
    [InlineData("", "78", null)]
    public void Account_OfALaterFile_HasToBeTheSame(string first, string next, Type? fault)
    {
        Book taken = Take(Book, Sent(Line(9, -5, "SHOP")) with { Account = first }, (1, Gifts));
        Result<StatementPlan> plan = StatementPlan.Of(taken, [Sent(Line(12, -5, "SHOP")) with { Account = next }], new PlanOptions(), Today);
        Assert.Equal(fault, plan.Fault?.GetType());
        Assert.True(StatementPlan.Of(taken, [Sent(Line(12, -5, "SHOP")) with { Account = "78" }], new PlanOptions { Account = "7-8" }, Today).Ok);
    }

    [Fact]
    public void Accounts_OfOneFile_AreChosenAmong()
    {
        Statement[] two = [Sent(Line(9, -5, "SHOP", "1")), Sent(Line(9, -6, "SHOP", "1")) with { Account = "78" }];
        Assert.IsType<PlanFault.WhichAccount>(StatementPlan.Of(Book, two, new PlanOptions(), Today).Fault);
        Assert.Equal(Usd(-6), StatementPlan.Of(Book, two, new PlanOptions { Account = "78" }, Today).Value!.Lines[0].Line.Amount);
        Assert.IsType<PlanFault.OfACard>(StatementPlan.Of(Book, [two[0] with { IsCard = true }], new PlanOptions(), Today).Fault);
    }

    private static (LineTarget, bool)? Guess(Book book, Statement statement) =>
        Plan(book, statement).Others.Last().Proposal is { } proposal ? (proposal.Target, proposal.IsSure) : null;

    private static Book Take(Book book, Statement statement, params (int Number, LineTarget Target)[] choices)
    {
        StatementPlan plan = Plan(book, statement);
        plan = choices.Aggregate(plan, (one, choice) => one.With(one.Others.Single(line => line.Number == choice.Number).Key, new Proposal(choice.Target, ProposalReason.Chosen, true)));
        Result<Book> taken = plan.Taken(Today);
        Assert.True(taken.Ok, taken.Fault.Said());
        AssertSound(taken.Value);
        return taken.Value;
    }

    private static StatementPlan Plan(Book book, Statement statement)
    {
        Result<StatementPlan> plan = StatementPlan.Of(book, [statement], new PlanOptions(), Today);
        Assert.True(plan.Ok, plan.Fault.Said());
        return plan.Value;
    }

    // From the first day of the book to the end of March; the closing balance is that of the lines, what the payday did taken as shown.
    private static Statement Sent(params StatementLine[] lines)
    {
        Money opening = Usd(1500);
        Money sum = Money.Sum(lines.Select(line => line.Amount), Dollars);
        return new Statement(StatementFormat.Camt053, Dollars)
        {
            Account = "77",
            From = Day(6),
            To = Day(31),
            Lines = [.. lines],
            Opening = new Balance(opening, Day(6), 1),
            Closing = new Balance(opening + sum, Day(31), 1),
        };
    }

    private static StatementLine Line(int day, decimal amount, string text, string id = "") => new(Day(day), Usd(amount)) { Text = text, BankId = id };

    private static LocalDate Day(int day) => new(2026, 3, day);
}
