using System.Drawing;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Screens.Routines;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens;

/// <summary>What a sinking pot asks on the Pots step, answered by key.</summary>
public sealed class PotQuestionTests : IDisposable
{
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 20));

    public PotQuestionTests()
    {
        demo.CloseOne();
        demo.Session.Take(Purchasing.Enter(
            demo.Session.Book, new PurchaseEntry(new(2026, 3, 10), new PotId("lake-week"), Core.Amounts.Money.ParsePlain("84.00", demo.Household.Currency).Value, "tent")).Value!);
    }

    public void Dispose() => demo.Dispose();

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Pots_OneThatAsks_IsAsRecorded(int width, int height) =>
        Golden.Equal($"pots-asks-{width}x{height}", AtTheQuestion().Shown(new Size(width, height)));

    [Fact]
    public void Finished_IsStoredAndAsksNoMore()
    {
        Hand hand = AtTheQuestion().Press("x");

        Assert.True(Purpose.Finished);
        Assert.Contains("is finished", hand.Message, StringComparison.Ordinal);
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("0.00  finished", StringComparison.Ordinal));
        Assert.DoesNotContain(hand.Top.Bindings, key => key.Name == "x");
    }

    [Fact]
    public void EveryYear_IsStoredAndSavesForTheNext()
    {
        Hand hand = AtTheQuestion().Press("*");

        Assert.Equal(new Schedule.EveryMonths(12, new(2026, 7, 31)), Purpose.Repeats);
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("1,050 short, ", StringComparison.Ordinal));
    }

    [Fact]
    public void GoOn_IsStoredAndSavesForTheSameDate()
    {
        Hand hand = AtTheQuestion().Press("&");

        Assert.Equal(new LocalDate(2026, 3, 10), Purpose.SettledTo);
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("1,050 short, 14 paydays", StringComparison.Ordinal));
    }

    [Fact]
    public void NewDate_OfADateThatIsPast_IsTypedAndCheckedAndKeepsWhatWasDecided()
    {
        Payday.Core.Households.Household early = demo.Household with
        {
            Pots = [.. demo.Household.Pots.Select(pot => pot.Id == new PotId("school-trip") ? pot with { Kind = (PotKind.Sinking)pot.Kind with { By = new(2026, 3, 15) } } : pot)],
        };
        Assert.Null(demo.Session.Change(early));
        Hand hand = AtThePots().To("Fuel").Type("60").To("School trip").Press("d");

        Assert.Equal("No payday comes by 12 Mar 2026 any more; name 20 Mar 2026, the next one, or a later day.", hand.Try("12 Mar 2026"));
        hand.Press("d").Type("1 Jun 2026");

        Assert.Equal(new LocalDate(2026, 6, 1), ((PotKind.Sinking)demo.Stored.Household.Pots.Single(pot => pot.Id == new PotId("school-trip")).Kind).By);
        Assert.Equal("60.00", demo.Stored.Draft!.Fills[new PotId("fuel")].ToPlain());
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("School trip", StringComparison.Ordinal) && line.Contains(" short, ", StringComparison.Ordinal));
    }

    [Fact]
    public void Form_OfAPot_HasWhatIsAskedAndTheWeeks()
    {
        demo.Hand.To("Pots").Press("Enter").To("School trip").Press("Enter").To("Needed again").Pick("e");
        PotKind.Sinking trip = Assert.IsType<PotKind.Sinking>(demo.Stored.Household.Pots.Single(pot => pot.Id == new PotId("school-trip")).Kind);
        Assert.Equal(new Schedule.EveryMonths(12, trip.By), trip.Repeats);

        demo.Hand.To("Needed again").Pick("n").To("Finished").Pick("y").Press("Esc");
        trip = Assert.IsType<PotKind.Sinking>(demo.Stored.Household.Pots.Single(pot => pot.Id == new PotId("school-trip")).Kind);
        Assert.Equal((null, true), (trip.Repeats, trip.Finished));

        demo.Hand.To("Haircuts").Press("Enter").To("In the wallet").Pick("w");
        Assert.True(((PotKind.Spending)demo.Stored.Household.Pots.Single(pot => pot.Id == new PotId("haircuts")).Kind).SplitsOverWeeks);
        demo.Hand.To("Per").Pick("w");
        Assert.False(((PotKind.Spending)demo.Stored.Household.Pots.Single(pot => pot.Id == new PotId("haircuts")).Kind).SplitsOverWeeks);
    }

    private PotKind.Sinking Purpose => (PotKind.Sinking)demo.Stored.Household.Pots.Single(pot => pot.Id == new PotId("lake-week")).Kind;

    private Hand AtTheQuestion() => AtThePots().To("Week at the lake");

    private Hand AtThePots() => new Hand(RoutineScreen.Open(demo.Session).Value!).Press("Right", "Right", "Right");
}
