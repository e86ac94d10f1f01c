using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class RecomputedTests
{
    private static readonly Book Start = Book.Begin(Bare with
    {
        Debts = [Debt("Card", 640, 0.1999m, 25, due: 15)],
        Pots = [CashPot("Food", 60), CashPot("Fares", 20), AccountPot("Gifts", 12.50m)],
    });

    private static readonly PartKey Food = new(new PotId("food"), Friday6March);

    private static readonly RoutineDraft Chosen = new(Friday6March)
    {
        Notes = ImmutableSortedDictionary<PartKey, ImmutableSortedDictionary<long, int>>.Empty
            .Add(Food, Notes(1000, 6))
            .Add(new PartKey(new PotId("fares"), Friday6March), Notes(500, 4)),
        Placements = [new Placement(MoveTarget.Debt(new DebtId("card")), Usd(300)), new Placement(MoveTarget.Buffer, Usd(502.50m))],
    };

    [Fact]
    public void After_AFillThatChangesAShare_ProposesItsNotesAnewAndSaysSo()
    {
        Recomputed after = After(Chosen with { Fills = PotSums(("food", 100)) });

        Assert.Equal(["The notes chosen for Food no longer make its share, so they are proposed anew."], after.Dropped);
        Assert.Equal([new PartKey(new PotId("fares"), Friday6March)], after.Plan.Draft.Notes.Keys);
        Assert.Equal(Chosen.Placements, after.Plan.Draft.Placements);
    }

    [Fact]
    public void After_LessComesInThanWasPlaced_ProposesTheSurplusAnewAndSaysSo()
    {
        Recomputed after = After(Chosen with { Incomes = SourceSums(("wage", 900)) });

        Assert.Equal(["802.50 was placed and 702.50 is left now, so the surplus is proposed anew."], after.Dropped);
        Assert.Null(after.Plan.Draft.Placements);
        Assert.Equal(Usd(0), after.Plan.LeftToPlace);
        Assert.Equal(Chosen.Notes, after.Plan.Draft.Notes);
    }

    [Fact]
    public void After_MoreComesIn_KeepsWhatWasPlacedAndLeavesTheRestToPlace()
    {
        Recomputed after = After(Chosen with { Incomes = SourceSums(("wage", 1100)) });

        Assert.Empty(after.Dropped);
        Assert.Equal(Chosen.Placements, after.Plan.Draft.Placements);
        Assert.Equal(Usd(100), after.Plan.LeftToPlace);
    }

    [Fact]
    public void After_ADecisionInTheSurplusOrTheNotes_IsNeverDropped()
    {
        Recomputed placed = After(Chosen with { Placements = [new Placement(MoveTarget.Debt(new DebtId("card")), Usd(900))] });
        Recomputed noted = After(Chosen with { Notes = Chosen.Notes.SetItem(Food, Notes(5000, 2)) });

        Assert.Empty(placed.Dropped);
        Assert.Equal(Usd(-97.50m), placed.Plan.LeftToPlace);
        Assert.Empty(noted.Dropped);
        Assert.Equal(Notes(5000, 2), noted.Plan.Draft.Notes[Food]);
    }

    [Fact]
    public void After_TheShortfallTakesAPotsCash_DropsItsNotes()
    {
        Recomputed after = After(Chosen with { Incomes = SourceSums(("wage", 30)) });

        Assert.Equal(2, after.Dropped.Length);
        Assert.DoesNotContain(after.Plan.Draft.Notes.Keys, part => part.PotId == new PotId("food"));
    }

    private static ImmutableSortedDictionary<long, int> Notes(long value, int count) =>
        ImmutableSortedDictionary<long, int>.Empty.Add(value, count);

    private static Recomputed After(RoutineDraft draft) =>
        Recomputed.After(Routine.Plan(Start, Chosen).Value!, draft).Value!;
}
