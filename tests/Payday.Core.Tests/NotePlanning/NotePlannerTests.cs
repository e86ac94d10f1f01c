using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.NotePlanning;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

public sealed class NotePlannerTests
{
    private static readonly ImmutableArray<Money> UsNotes = Notes(100, 50, 20, 10, 5);

    [Fact]
    public void Plan_NoWishes_TakesTheFewestNotes()
    {
        NotePlan plan = NotePlanner.Plan(Teller(UsNotes, Part("food", 85), Part("fun", 40)));
        Assert.Equal("50x1 20x1 10x1 5x1", plan.Parts[0].Notes.Text());
        Assert.Equal("20x2", plan.Parts[1].Notes.Text());
        Assert.Equal("50x1 20x3 10x1 5x1", plan.Withdraw.Text());
        Assert.Equal(Units(125), plan.WithdrawTotal);
        Assert.Equal(6, plan.NoteCount);
        Assert.Empty(plan.Faults);
        Assert.True(plan.Proven);
    }

    [Theory]
    [InlineData(60, "20x3", 0)] // the largest first would give 50 and be stuck
    [InlineData(110, "50x1 20x3", 0)]
    [InlineData(130, "50x1 20x4", 0)]
    [InlineData(30, "20x1", 10)]
    [InlineData(10, "", 10)]
    [InlineData(0, "", 0)]
    public void Plan_FiftyAndTwenty_IsNotGreedy(long amount, string notes, long keptBack)
    {
        NotePlan plan = NotePlanner.Plan(Teller(Notes(50, 20), Part("pot", amount)));
        Assert.Equal(notes, plan.Parts[0].Notes.Text());
        Assert.Equal(Units(keptBack), plan.Parts[0].KeptBack);
    }

    [Fact]
    public void Plan_MinorUnitsNoNoteCanMake_AreKeptBack()
    {
        NotePart part = Part("pot", 0) with { Amount = Money.FromMinorUnits(8_537, Usd) };
        NotePlan plan = NotePlanner.Plan(Teller(UsNotes, part));
        Assert.Equal(Money.FromMinorUnits(37, Usd), plan.KeptBack());
        Assert.Equal(Units(85), plan.Parts[0].Paid);
        Assert.Empty(plan.Faults);
    }

    [Fact]
    public void Plan_TopNote_IsTheLargestGiven()
    {
        NotePlan plan = NotePlanner.Plan(Teller(UsNotes, Part("food", 85, top: 20)));
        Assert.Equal("20x4 5x1", plan.Parts[0].Notes.Text());
    }

    [Fact]
    public void Plan_TopNoteBelowAllNotes_KeepsAllBackAndNamesIt()
    {
        NotePlan plan = NotePlanner.Plan(Teller(UsNotes, Part("coins", 12, top: 2), Part("food", 20)));
        Assert.Equal(Units(12), plan.Parts[0].KeptBack);
        NoteFault fault = Assert.Single(plan.Faults);
        Assert.Equal((NoteFaultKind.TopNote, "coins", Units(2), Units(5)), (fault.Kind, fault.Pot.Text, fault.Wished, fault.Possible));
        Assert.Equal(
            "coins takes no note above 2.00 but the smallest to be had is 5.00; raise its top note or keep it in the account.",
            fault.Said(NumberStyle.CommaPoint));
    }

    [Fact]
    public void Plan_SmallMoney_IsHeldInSmallNotes()
    {
        NotePlan plan = NotePlanner.Plan(Teller(UsNotes, Part("food", 85, small: (10, 30))));
        Assert.Equal("50x1 10x3 5x1", plan.Parts[0].Notes.Text());
        Assert.Empty(plan.Faults);
    }

    [Fact]
    public void Plan_SmallMoneyThatCostsExactness_IsStillHeld()
    {
        NotePlan plan = NotePlanner.Plan(Teller(Notes(50, 20), Part("pot", 50, small: (20, 20))));
        Assert.Equal("20x2", plan.Parts[0].Notes.Text());
        Assert.Equal(Units(10), plan.Parts[0].KeptBack);
        Assert.Empty(plan.Faults);
    }

    [Theory]
    [InlineData(15, 5, 20, "5x3", 15)] // more than the amount
    [InlineData(85, 2, 10, "50x1 20x1 10x1 5x1", 0)] // no note so small
    [InlineData(8, 5, 8, "5x1", 5)] // no note makes the rest
    public void Plan_SmallMoneyOutOfReach_GivesTheMostAndNamesIt(long amount, long note, long atLeast, string notes, long possible)
    {
        NotePart part = Part("food", amount, small: (note, atLeast)) with { Week = new LocalDate(2026, 3, 6) };
        NotePlan plan = NotePlanner.Plan(Teller(UsNotes, part));
        Assert.Equal(notes, plan.Parts[0].Notes.Text());
        NoteFault fault = Assert.Single(plan.Faults);
        Assert.Equal((NoteFaultKind.SmallMoney, Units(atLeast), Units(possible)), (fault.Kind, fault.Wished, fault.Possible));
        Assert.StartsWith("food (2026-03-06) wants ", fault.Said(NumberStyle.Plain), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_NotesOnHand_AreReusedBeforeFewerNotes()
    {
        NoteRequest request = Teller(UsNotes, Part("food", 50)) with { Loose = Loose((10, 3), (20, 1), (5, 1)) };
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal("20x1 10x3", plan.Parts[0].Notes.Text());
        Assert.Empty(plan.Withdraw);
        Assert.Equal("5x1", plan.Return.Text());
        Assert.Equal(Units(50), plan.ReusedTotal);
    }

    [Fact]
    public void Plan_NoteOnHandNoLongerInUse_IsUsedUpButNotFetched()
    {
        NoteRequest request = Teller(Notes(20), Part("a", 30), Part("b", 30)) with { Loose = Loose((10, 1)) };
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal(Units(10), plan.KeptBack());
        Assert.Equal("20x2", plan.Withdraw.Text());
        Assert.Equal("10x1", plan.Reused.Text());
    }

    [Fact]
    public void Plan_TopNoteThatNotesOnHandMeet_IsNotNamed()
    {
        NoteRequest request = Teller(UsNotes, Part("coins", 12, top: 2), Part("more", 4, top: 2)) with { Loose = Loose((2, 7)) };
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal(["2x6", "2x1"], plan.Parts.Select(part => part.Notes.Text()));
        Assert.Equal("more", Assert.Single(plan.Faults).Pot.Text);
    }

    [Fact]
    public void Plan_KeptBackBesideSmallMoney_IsNotCountedAsSmall()
    {
        // One of them can be paid 50, 20 and the 5, which is 25 in small notes; the other only three twenties.
        NotePart[] parts = [Part("a", 75, small: (20, 25)), Part("b", 75, small: (20, 25))];
        NotePlan plan = NotePlanner.Plan(Teller(Notes(50, 20), parts) with { Loose = Loose((5, 1)) });
        Assert.Equal(Units(15), plan.KeptBack());
        Assert.Empty(plan.Faults);
        Assert.True(plan.Proven);
    }

    [Fact]
    public void Plan_TwoPartsForTheSameNotes_EarlierGetsTheLarger()
    {
        NoteRequest request = Teller(UsNotes, Part("a", 50), Part("b", 50)) with { Loose = Loose((50, 1), (20, 2), (10, 1)) };
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal("50x1", plan.Parts[0].Notes.Text());
        Assert.Equal("20x2 10x1", plan.Parts[1].Notes.Text());
    }

    [Fact]
    public void Plan_NoParts_ReturnsAllOnHand()
    {
        NotePlan plan = NotePlanner.Plan(Teller(UsNotes) with { Loose = Loose((20, 2), (5, 0)) });
        Assert.Equal("20x2", plan.Return.Text());
        Assert.Equal(0, plan.NoteCount);
    }

    [Fact]
    public void Plan_HugeAmounts_AreStillPaidInFull()
    {
        NoteRequest request = Teller(Notes(1, 3, 4), Part("a", 5_000_003, small: (3, 400_001)), Part("b", 7_777_777));
        NotePlan plan = NotePlanner.Plan(request);
        Assert.Equal(Money.Zero(Usd), plan.KeptBack());
        Assert.Empty(plan.Faults);
        Assert.False(plan.Proven);
    }

    [Fact]
    public void Plan_WrongRequests_Throw()
    {
        NotePart euros = Part("a", 0) with { Amount = Money.FromUnits(5, Currency.FromCode("EUR")) };
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller([])));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(Notes(0))));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(UsNotes, Part("a", -5))));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(UsNotes, Part("a", 5, top: 0))));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(UsNotes, Part("a", 5, small: (5, -1)))));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(UsNotes, euros)));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(UsNotes) with { Loose = Loose((5, -1)) }));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(UsNotes) with { Source = new CashSource.Machine([], null) }));
        Assert.Throws<ArgumentException>(() => NotePlanner.Plan(Teller(UsNotes) with { Source = new CashSource.Machine(Notes(20), Units(-1)) }));
    }
}
