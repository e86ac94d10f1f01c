using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Ids;
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
        Incomes = Of(id => new SourceId(id), ("wage", 171_235), ("old-job", 500_00)),
        OneOffs = Of(name => name, ("old-job", 20_00)).WithComparers(StringComparer.Ordinal),
        Dues = ImmutableSortedDictionary<DueKey, DueDecision>.Empty
            .Add(new DueKey(new BillId("rent"), Samples.Payday), new DueDecision(Samples.Cents(840_00), true))
            .Add(new DueKey(new BillId("old-bill"), Samples.Payday), new DueDecision(Samples.Cents(50_00), true)),
        DebtPayments = Of(id => new DebtId(id), ("card", 30_00), ("old-loan", 40_00)),
        Fills = Of(id => new PotId(id), ("food", 170_00), ("old-pot", 60_00)),
        Placements =
        [
            new Placement(MoveTarget.Debt(new DebtId("card")), Samples.Cents(10_00)),
            new Placement(MoveTarget.Debt(new DebtId("old-loan")), Samples.Cents(11_00)),
            new Placement(MoveTarget.Pot(new PotId("old-pot")), Samples.Cents(12_00)),
            new Placement(MoveTarget.Buffer, Samples.Cents(13_00)),
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
        Assert.Equal(["wage"], loaded.Incomes.Keys.Select(id => id.Text));
        Assert.Equal(["old-job"], loaded.OneOffs.Keys);
        Assert.Equal(["rent"], loaded.Dues.Keys.Select(due => due.Bill!.Value.Text));
        Assert.Equal(["card"], loaded.DebtPayments.Keys.Select(id => id.Text));
        Assert.Equal(["food"], loaded.Fills.Keys.Select(id => id.Text));
        Assert.Equal(["card", ""], loaded.Placements!.Value.Select(placement => placement.Target.IdText));
    }

    [Fact]
    public void Load_DraftAboutThingsThatAreGone_CanBePlannedAndClosed()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Draft = Draft with { Fills = Of(id => new PotId(id), ("old-pot", 60_00)), Dues = Draft.Dues.Clear() } });
        Book book = store.Load()!;

        RoutinePlan plan = Routine.Plan(book, book.Draft!).Value!;
        Money left = plan.LeftToPlace;
        Assert.True(left.IsPositive);
        Result<Book> closing = Closing.Of(Routine.Plan(book, book.Draft! with
        {
            Placements = book.Draft!.Placements!.Value.Add(new Placement(MoveTarget.Buffer, left)),
        }).Value!);

        Assert.True(closing.Ok, $"{closing.Fault}");
    }

    [Fact]
    public void Load_PlacementsThatAreAllGone_LeavesThePlacingToThePersonAsBefore()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Draft = Draft with { Placements = [new Placement(MoveTarget.Debt(new DebtId("old-loan")), Samples.Cents(1))] } });

        Assert.Empty(store.Load()!.Draft!.Placements!.Value);
    }

    private static ImmutableSortedDictionary<TId, Money> Of<TId>(Func<string, TId> id, params (string Id, long Cents)[] amounts)
        where TId : notnull =>
        amounts.ToImmutableSortedDictionary(pair => id(pair.Id), pair => Samples.Cents(pair.Cents));
}
