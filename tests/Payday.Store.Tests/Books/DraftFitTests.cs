using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Store.Changes;

namespace Payday.Store.Tests.Books;

public sealed class DraftFitTests
{
    // Everything decided once for something in the household and once for something that is gone.
    private static readonly RoutineDraft Draft = new(Samples.Payday)
    {
        Step = RoutineStep.Surplus,
        Incomes = Of(("wage", 171_235), ("old-job", 500_00)),
        OneOffs = Of(("old-job", 20_00)),
        Dues = ImmutableSortedDictionary<DueKey, DueDecision>.Empty
            .Add(new DueKey("rent", Samples.Payday), new DueDecision(Samples.Cents(840_00), true))
            .Add(new DueKey("old-bill", Samples.Payday), new DueDecision(Samples.Cents(50_00), true)),
        DebtPayments = Of(("card", 30_00), ("old-loan", 40_00)),
        Fills = Of(("food", 170_00), ("old-pot", 60_00)),
        Placements =
        [
            new Placement(PlacementTarget.Debt, "card", Samples.Cents(10_00)),
            new Placement(PlacementTarget.Debt, "old-loan", Samples.Cents(11_00)),
            new Placement(PlacementTarget.Pot, "old-pot", Samples.Cents(12_00)),
            new Placement(PlacementTarget.Buffer, "", Samples.Cents(13_00)),
        ],
    };

    [Fact]
    public void Load_DraftAboutThingsThatAreGone_IgnoresThemAndKeepsTheRest()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Draft = Draft });

        RoutineDraft loaded = store.Load()!.Draft!;

        Assert.Equal(RoutineStep.Surplus, loaded.Step);
        Assert.Equal(["wage"], loaded.Incomes.Keys);
        Assert.Equal(["old-job"], loaded.OneOffs.Keys);
        Assert.Equal(["rent"], loaded.Dues.Keys.Select(due => due.BillId));
        Assert.Equal(["card"], loaded.DebtPayments.Keys);
        Assert.Equal(["food"], loaded.Fills.Keys);
        Assert.Equal(["card", ""], loaded.Placements!.Value.Select(placement => placement.Id));
    }

    [Fact]
    public void Load_DraftAboutThingsThatAreGone_CanBePlannedAndClosed()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Draft = Draft with { Fills = Of(("old-pot", 60_00)), Dues = Draft.Dues.Clear() } });
        Book book = store.Load()!;

        RoutinePlan plan = Routine.Plan(book, book.Draft!).Value!;
        Money left = plan.LeftToPlace;
        Assert.True(left.IsPositive);
        Result<Closing> closing = Closing.Of(Routine.Plan(book, book.Draft! with
        {
            Placements = book.Draft!.Placements!.Value.Add(new Placement(PlacementTarget.Buffer, "", left)),
        }).Value!);

        Assert.True(closing.Ok, closing.Fault);
    }

    [Fact]
    public void Load_PlacementsThatAreAllGone_LeavesThePlacingToThePersonAsBefore()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Draft = Draft with { Placements = [new Placement(PlacementTarget.Debt, "old-loan", Samples.Cents(1))] } });

        Assert.Empty(store.Load()!.Draft!.Placements!.Value);
    }

    private static ImmutableSortedDictionary<string, Money> Of(params (string Id, long Cents)[] amounts) =>
        amounts.ToImmutableSortedDictionary(pair => pair.Id, pair => Samples.Cents(pair.Cents), StringComparer.Ordinal);
}
