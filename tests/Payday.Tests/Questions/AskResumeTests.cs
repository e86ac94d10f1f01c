using Payday.Core.Books;

namespace Payday.Tests.Questions;

/// <summary>However the asking ends, nothing is half done, and the next start goes on at the same question.</summary>
public sealed class AskResumeTests
{
    private static readonly string[] Lines =
    [
        "payday", "2200", "Gift=50", "", "", "70 paid", "junk", "", "", "", "", "when due", "40", "paid", "390", "back", "380", "", "", "", "?", "", "",
        "", "", "", "", "", "", "", "", "", "", "Food=20", "Sofa card", "", "notes", "20=3,10=2", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "yes",
    ];

    [Fact]
    public void Ask_EndedAfterAnyLine_GoesOnAndEndsInTheSameBook()
    {
        using var whole = new AskedBook();
        whole.Ask(Lines);
        Assert.Single(whole.Book.Closed);

        using var parts = new AskedBook();
        foreach (string line in Lines)
        {
            parts.Ask(line);
            parts.IsSound();
        }

        Assert.Equal(whole.Digest, parts.Digest);
    }

    [Theory]
    [InlineData("")]
    [InlineData("stop")]
    [InlineData("junk")]
    [InlineData("?")]
    public void Ask_EndedAtAQuestion_AsksItAgain(string last)
    {
        using var book = new AskedBook();
        string[] before = book.Ask("payday", "", "", "", "", last);
        string[] again = book.Ask();

        Assert.Equal("Going on where it was left; menu leads to what else there is to do.", again[0]);
        Assert.Equal(before[^1], again[^1]);
        Assert.StartsWith(last.Length == 0 ? "Inhaler refill, " : "Phones, ", again[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_EndedAfterBack_AsksTheQuestionBefore()
    {
        using var book = new AskedBook();
        book.Ask("payday", "", "", "", "", "back");

        Assert.StartsWith("After-school club, ", book.Ask()[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Back_OverAStep_KeepsTheStepOfItsQuestion()
    {
        using var book = new AskedBook();
        book.Ask("payday", "", "", "", "back");

        Assert.Equal(RoutineStep.Income, book.Book.Draft!.Step);
        Assert.StartsWith("From the buffer", book.Ask()[^2], StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_EndedInAForm_GoesOnInIt()
    {
        using var book = new AskedBook();
        book.Ask("move", "reserve", "birthdays", "30");

        string[] said = book.Ask("", "", "", "");

        Assert.Contains("Why: nothing yet. What is it?", said);
        Assert.Single(book.Book.Weeks.StandingMoves);
        Assert.Equal(["What now? payday proposed, Fri 6 Mar 2026; ? names the rest."], book.Ask()[^1..]);
    }

    [Fact]
    public void Ask_EndedInThePaymentOfABill_GoesOnInIt()
    {
        using var book = new AskedBook();
        book.Closed();
        book.Ask("bills", "", "phones", "70");

        string[] said = book.Ask("", "");

        Assert.StartsWith("Day: ", said[2], StringComparison.Ordinal);
        Assert.Equal(7000, Assert.Single(book.Book.Weeks.StandingPayments).Amount.MinorUnits);
    }

    [Fact]
    public void Return_Decided_IsKeptForTheNextStartHereAndOnTheFullScreen()
    {
        using var book = new AskedBook();
        book.Closed();
        book.Ask("card", "Bread", "12.40", "food", "", "", "", "menu", "return", "no");

        Assert.Contains("Food: 15.00 to pay back.", string.Join(' ', book.AskFor("return")), StringComparison.Ordinal);
        Assert.Contains(book.Hand.Press("r").Shown(new System.Drawing.Size(80, 24)), line => line.Contains("stays", StringComparison.Ordinal));
    }

    [Fact]
    public void Menu_FromAnyQuestion_LeadsToWhatThereIsToDo()
    {
        using var book = new AskedBook();

        Assert.Equal("What now? stop proposed; ? names the rest.", book.Ask("payday", "", "menu")[^1]);
        Assert.Equal("What now? payday proposed, Fri 6 Mar 2026; ? names the rest.", book.Ask()[^1]);
    }

    [Fact]
    public void Menu_AtTheMenu_NamesAllThereIs()
    {
        using var book = new AskedBook();

        Assert.Contains("count: the week-end count", string.Join(' ', book.Ask("menu")), StringComparison.Ordinal);
    }
}
