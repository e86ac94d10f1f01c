using NodaTime;
using Payday.Core.Books;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Questions;

/// <summary>The routine asked line by line and on the full screen: the same book, and each goes on where the other was left.</summary>
public sealed class AskRoutineTests
{
    // A decision changed at each step, the last of them closing it.
    private static readonly string[] Changed =
    [
        "2200", "Gift=50", "", "10",
        "70 paid", "", "", "", "", "when due",
        "40", "paid",
        "390", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "20",
        "Food=20", "Sofa card", "Food=30", "",
        "notes", "20=3,10=2", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "",
        "yes",
    ];

    [Fact]
    public void Decisions_ChangedAtEachStep_EndInTheSameBookAsOnTheFullScreen()
    {
        using var asked = new AskedBook();
        using var worked = new AskedBook();

        string[] said = asked.AskFor("payday", Changed);
        Assert.Contains(said, line => line.StartsWith("The payday is closed.", StringComparison.Ordinal));

        Hand hand = worked.Hand.Press("Enter");
        ToWithdrawal(hand);
        Notes(hand);
        hand.Press("Right", "c", "Enter");
        Assert.StartsWith("The payday is closed.", hand.Message, StringComparison.Ordinal);

        Assert.Equal(worked.Digest, asked.Digest);
        asked.IsSound();
    }

    [Theory]
    [InlineData(RoutineStep.Bills)]
    [InlineData(RoutineStep.DebtMinimums)]
    [InlineData(RoutineStep.Pots)]
    [InlineData(RoutineStep.Surplus)]
    [InlineData(RoutineStep.Withdrawal)]
    public void Routine_BegunOnTheFullScreen_IsGoneOnWithAtItsStep(RoutineStep step)
    {
        using var both = new AskedBook();
        Hand hand = both.Hand.Press("Enter");
        Income(hand);
        for (RoutineStep at = RoutineStep.Income; at < step; at++)
        {
            hand.Press("Right");
        }

        string[] said = both.Ask("payday");

        Assert.Contains(said, line => line.StartsWith($"Step {(int)step} of 7, ", StringComparison.Ordinal));
        Assert.Equal(step, both.Book.Draft!.Step);
        Assert.Equal(2, both.Book.Draft!.Incomes.Count + both.Book.Draft!.OneOffs.Count);
    }

    [Fact]
    public void Routine_BegunLineByLine_IsGoneOnWithOnTheFullScreenAndEndsInTheSameBook()
    {
        using var both = new AskedBook();
        using var asked = new AskedBook();
        asked.AskFor("payday", Changed);

        // Up to the notes here, then there.
        both.AskFor("payday", Changed[..32]);
        Assert.Equal(RoutineStep.Withdrawal, both.Book.Draft!.Step);
        Hand hand = both.Hand.Press("Enter");
        Assert.StartsWith("Withdrawal", hand.Top.Title, StringComparison.Ordinal);
        Notes(hand);
        hand.Press("Right", "c", "Enter");

        Assert.Equal(asked.Digest, both.Digest);
        Assert.Equal(["What now? fill proposed; ? names the rest."], both.Ask()[^1..]);
    }

    [Fact]
    public void Closing_DaysBeforeThePayday_IsNotProposed()
    {
        using var book = new AskedBook { Today = new LocalDate(2026, 3, 1) };
        string[] said = book.AskFor("payday", [.. Enumerable.Repeat("", 40)]);

        Assert.Contains("This payday is 5 days off: close it once the money is there. Close the payday? no proposed.", string.Join(' ', said), StringComparison.Ordinal);
        Assert.Empty(book.Book.Closed);
    }

    [Fact]
    public void Shortfall_IsNamedAndLeadsBack()
    {
        using var book = new AskedBook();
        string[] said = book.AskFor("payday", ["300", .. Enumerable.Repeat("", 32), "?", "back", "stop"]);
        string all = string.Join(' ', said);

        Assert.Contains("It doesn't fit: ", all, StringComparison.Ordinal);
        Assert.Contains("More is placed than there is; lower something before going on.", all, StringComparison.Ordinal);
        Assert.Contains(" short of ", all, StringComparison.Ordinal);
        Assert.DoesNotContain("Step 6", all, StringComparison.Ordinal);
        Assert.Contains(said[^3..], line => line.StartsWith("Piano fund: ", StringComparison.Ordinal));
        Assert.Empty(book.Book.Closed);
    }

    private static void Income(Hand hand)
    {
        hand.To("Odette").Type("2200").Press("a").Type("Gift=50");
    }

    private static void ToWithdrawal(Hand hand)
    {
        Income(hand);
        hand.To("From the buffer").Type("10").Press("Right");
        hand.To("After-school club").Type("70").Press("Space").Press("=", "Enter").Press("Right");
        hand.To("Sofa card").Type("40").To("Car loan").Press("Space").Press("Right");
        hand.To("Food").Type("390").To("Piano fund").Type("20").Press("Right");
        hand.To("Food").Type("20").To("Sofa card").Press("Space").To("Food").Type("30").Press("Right");
    }

    private static void Notes(Hand hand) => hand.To("Food").Press("Tab", "Tab").Type("3").Press("Tab").Type("2").Press("Tab").Type("0");
}
