using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

/// <summary>A store as the first version of the documents has it: kept as a file, so that it never changes with the program.</summary>
internal static class StoreOfVersion1
{
    /// <summary>The payday closed in it, with every field.</summary>
    public static ClosedPayday Closed { get; } = new(
        new PayPeriod(Samples.Payday, new LocalDate(2026, 3, 19)),
        6,
        8,
        [new ClosedDue(new DueKey(new BillId("rent"), new LocalDate(2026, 3, 15)), Samples.Cents(840_00), true), new ClosedDue(new DueKey(new BillId("rent"), new LocalDate(2026, 2, 15)), Samples.Cents(1), false)],
        [new ClosedPart(new PotId("food"), Samples.Payday, Notes((20_00, 4), (5_00, 1))), new ClosedPart(new PotId("roof"), null, Notes())],
        Amounts(id => new PotId(id), ("food", 1_25)),
        Notes((100_00, 1), (20_00, 3)),
        Notes((20_00, 2)),
        Notes((5_00, 9)),
        new RoutineDraft(Samples.Payday));

    /// <summary>The draft in it, with every field.</summary>
    public static RoutineDraft Draft { get; } = new(new LocalDate(2026, 3, 20))
    {
        Step = RoutineStep.Pots,
        Incomes = Amounts(id => new SourceId(id), ("wage", 1_700_00)),
        OneOffs = Amounts(name => name, ("Gift", 50_00), ("gift: from aunt/uncle 🎁", 20_00)).WithComparers(StringComparer.Ordinal),
        Dues = ImmutableSortedDictionary<DueKey, DueDecision>.Empty
            .Add(new DueKey(new BillId("rent"), new LocalDate(2026, 3, 31)), new DueDecision(Samples.Cents(841_50), false))
            .Add(new DueKey(new BillId("rent"), new LocalDate(2026, 4, 30)), new DueDecision(null, true))
            .Add(new DueKey(new BillId("rent"), new LocalDate(2026, 5, 29)), new DueDecision()),
        SetAsides = SetAsideMode.AsTheyFall,
        DebtPayments = Amounts(id => new DebtId(id), ("card", 35_00)),
        Fills = Amounts(id => new PotId(id), ("food", 160_00), ("roof", 0)),
        Placements = [new Placement(MoveTarget.Debt(new DebtId("card")), Samples.Cents(10_00)), new Placement(MoveTarget.Buffer, Samples.Cents(3))],
    };

    /// <summary>Puts the database in a folder.</summary>
    public static void CopyTo(StoreFolder folder)
    {
        Directory.CreateDirectory(folder.Path);
        KeptFile.Unpack("version-1.db.gz", folder.Database);
    }

    private static ImmutableSortedDictionary<TId, Money> Amounts<TId>(Func<string, TId> id, params (string Id, long Cents)[] amounts)
        where TId : notnull =>
        amounts.ToImmutableSortedDictionary(pair => id(pair.Id), pair => Samples.Cents(pair.Cents));

    private static ImmutableSortedDictionary<long, int> Notes(params (long Note, int Count)[] notes) =>
        notes.ToImmutableSortedDictionary(pair => pair.Note, pair => pair.Count);
}
