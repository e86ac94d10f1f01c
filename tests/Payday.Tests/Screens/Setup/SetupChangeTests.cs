using System.Drawing;
using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Tests.Screens.Setup;

public sealed class SetupChangeTests : IDisposable
{
    private readonly DemoBook demo = new();

    private Hand Hand => demo.Hand;

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Add_ABill_IsStoredWithItsLastNeededField()
    {
        int before = demo.Household.Bills.Length;
        Hand.To("Bills").Press("Enter", "a").Type("Piano lessons", "30+15");
        Assert.Equal(before, demo.Stored.Household.Bills.Length);

        Hand.To("Day").Type("2nd tuesday");

        Bill bill = demo.Stored.Household.Bills[^1];
        Assert.Equal(("Piano lessons", "piano-lessons", "45.00"), (bill.Name, bill.Id.Text, bill.Amount.ToPlain()));
        Assert.Equal(new Schedule.Monthly(new MonthDay.NthWeekday(2, IsoDayOfWeek.Tuesday)), bill.Schedule);
    }

    [Fact]
    public void Esc_FromAnItemThatIsNotComplete_AsksOnceAndSaysWhatIsMissing()
    {
        Hand.To("Bills").Press("Enter", "a").Type("Piano lessons").Press("Esc");
        Assert.Equal("Not stored, still to fill in: Amount, Day. The same key again leaves it, and a goes on with it another time.", Hand.Message);

        Hand.Press("Esc");

        Assert.Equal("Bills", Hand.Top.Title);
        Assert.DoesNotContain(demo.Stored.Household.Bills, bill => bill.Name == "Piano lessons");
        Assert.Contains(Hand.Press("a").Shown(new Size(80, 24)), line => line.Contains("Piano lessons", StringComparison.Ordinal));
    }

    [Fact]
    public void Debt_AfterAPayment_ShowsWhatIsOwedNowAndWhatWasAtFirst()
    {
        demo.CloseOne();
        demo.CloseOne();
        string now = demo.Session.Book.Ledger.Balances.OwedOn(new DebtId("sofa-card")).ToString(demo.Session.Style);
        string[] list = Hand.To("Debts").Press("Enter").Shown(new Size(80, 24));
        string[] form = Hand.Press("Enter").To("Owed now").Shown(new Size(80, 24));

        Assert.NotEqual("1,846.19", now);
        Assert.Contains(list, line => line.Contains("Sofa card", StringComparison.Ordinal) && line.Contains(now, StringComparison.Ordinal));
        Assert.Contains(form, line => line.StartsWith(" >Owed now", StringComparison.Ordinal) && line.EndsWith($" {now}", StringComparison.Ordinal));
        Assert.Contains(form, line => line.StartsWith("  Owed at first", StringComparison.Ordinal) && line.EndsWith(" 1,846.19", StringComparison.Ordinal));
        Hand.Press("Enter");
        Assert.Equal("The ledger keeps what is owed: payments and interest change it.", Hand.Message);
    }

    [Fact]
    public void Debt_BeforeAnyPayday_StoresWhatItBeganWithAlone()
    {
        Hand.To("Debts").Press("Enter", "Enter").To("Owed at first").Type("1900");
        Assert.Equal("1900.00", demo.Stored.Household.Debts[0].Opening.ToPlain());
        Assert.Contains(Hand.Shown(new Size(80, 24)), line => line.StartsWith("  Owed now", StringComparison.Ordinal) && line.EndsWith(" 1,900.00", StringComparison.Ordinal));
    }

    [Fact]
    public void Cycle_ToAScheduleThatNeedsMore_KeepsTheStoredOneUntilItIsThere()
    {
        Schedule before = demo.Household.Bills[0].Schedule;
        Hand.To("Bills").Press("Enter", "Enter").To("Falls due").Pick("o");
        Assert.Equal(before, demo.Stored.Household.Bills[0].Schedule);

        Hand.To("Dates").Type("2026-05-02 2026-04-01");

        Assert.Equal([new LocalDate(2026, 4, 1), new LocalDate(2026, 5, 2)], Assert.IsType<Schedule.OnDates>(demo.Stored.Household.Bills[0].Schedule).Dates);
    }

    [Fact]
    public void Type_TheNameOfAnother_IsRefusedInPlainWords()
    {
        string taken = demo.Household.Bills[1].Name;

        Assert.Equal($"\"{taken}\" is already the name of another one; give each its own.", Hand.To("Bills").Press("Enter", "Enter").To("Name").Try(taken));
    }

    [Fact]
    public void Move_APot_ExchangesRankAndPlace()
    {
        (Pot first, Pot second) = (demo.Household.Pots[0], demo.Household.Pots[1]);

        Hand.To("Pots").Press("Enter", ">");

        Assert.Equal([(second.Id, 1), (first.Id, 2)], demo.Stored.Household.Pots.Take(2).Select(pot => (pot.Id, pot.Rank)));
        Hand.Press("Shift+Up");
        Assert.Equal(first.Id, demo.Stored.Household.Pots[0].Id);
    }

    // The cursor then stands where the new one would have come.
    [Fact]
    public void Move_AfterANewOneWasBegunAndLeft_MovesTheLast()
    {
        BillId last = demo.Household.Bills[^1].Id;

        Hand.To("Bills").Press("Enter", "a", "Esc", "Esc", "Shift+Up");

        Assert.Equal(last, demo.Stored.Household.Bills[^2].Id);
    }

    [Fact]
    public void End_ASource_StoresItsLastDate()
    {
        Hand.To("Income sources").Press("Enter", "d").Type("2026-12-31");
        Assert.Equal(new LocalDate(2026, 12, 31), demo.Stored.Household.Sources[0].Until);

        Hand.Press("d").Type("");
        Assert.Null(demo.Stored.Household.Sources[0].Until);
    }

    [Fact]
    public void TakeOut_APotBeforeAnyPayday_GoesAfterAQuestion()
    {
        string id = demo.Household.Pots[0].Id.Text;

        Hand.To("Pots").Press("Enter", "x", "Enter");

        Assert.DoesNotContain(demo.Stored.Household.Pots, pot => pot.Id == new PotId(id));
        Assert.Equal("Pots", Hand.Top.Title);
    }

    [Theory]
    [InlineData("Pots", "With an amount of 0 it is filled no more.")]
    [InlineData("Debts", "It asks for nothing once it is paid.")]
    public void TakeOut_WhatTheLedgerNames_SaysWhyNot(string part, string instead)
    {
        demo.CloseOne();
        Hand.To(part).Press("Enter", "x");

        Assert.Matches($"ledger lines?, the last of .*, names? it, so it stays. {instead}$", Hand.Message);
    }

    [Fact]
    public void TakeOut_TheOnlySource_IsRefused()
    {
        Hand.To("Income sources").Press("Enter", "x", "Enter", "x", "Enter");

        Assert.Equal("A household needs at least one income source; add who pays, and when.", Hand.Message);
        Assert.Single(demo.Stored.Household.Sources);
    }

    [Theory]
    [InlineData("Settings", "Currency", "The ledger is in this currency; another one needs a household in a folder of its own.")]
    [InlineData("Opening", "In the account", "It is part of the ledger since a payday was closed, and stays as it is.")]
    public void Change_WhatIsHistory_SaysWhyNot(string part, string label, string reason)
    {
        demo.CloseOne();
        Hand.To(part).Press("Enter").To(label).Press("Enter");

        Assert.Equal(reason, Hand.Message);
    }

    [Fact]
    public void Change_ToAMachine_IsStoredWithItsNotes()
    {
        Hand.To("Settings").Press("Enter").To("Notes come from").Press("Space").To("Machine's notes");
        Assert.IsType<Payday.Core.Cash.CashSource.Teller>(demo.Stored.Household.Settings.Bank);

        Hand.Type("20");

        Assert.Equal("20.00", Assert.IsType<Payday.Core.Cash.CashSource.Machine>(demo.Stored.Household.Settings.Bank).Notes.Single().ToPlain());
    }

    [Fact]
    public void Type_NotesWithoutOneThatIsStillWanted_NamesWhere()
    {
        Hand.To("Settings").Press("Enter").To("Notes ");

        Assert.Equal("Opening balances: There is no note of 20 in use; write one of 10, 5.", Hand.Try("10 5"));
        Assert.Equal("Fares: There is no note of 10 in use; write one of 20, 5.", Hand.Try("20 5"));
    }

    [Fact]
    public void LeftOver_GoesRoundWithoutThePotItself()
    {
        Hand.To("Pots").Press("Enter").To("Food").Press("Enter").To("Left over");
        Assert.DoesNotContain("to Food", string.Join(' ', Hand.Shown(new Size(120, 60))), StringComparison.Ordinal);
        for (int i = 0; i < 40; i++)
        {
            Hand.Press("Enter");
            Assert.Equal("", Hand.Message);
        }
    }

    [Fact]
    public void Choice_ALetterTwice_GoesToTheNextThatBeginsWithIt()
    {
        Hand.To("Income").Press("Enter", "Enter").To("Comes").Pick("t");
        Assert.Contains(Hand.Shown(new Size(80, 24)), line => line.Contains("twice a month", StringComparison.Ordinal));
        Hand.Pick("e").Pick("e");
        Assert.Contains(Hand.Shown(new Size(80, 24)), line => line.StartsWith(" >", StringComparison.Ordinal) && line.Contains("every so many months", StringComparison.Ordinal));
    }
}
