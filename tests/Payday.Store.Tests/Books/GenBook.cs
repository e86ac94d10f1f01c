using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Store.Tests.Books;

/// <summary>Generates what a store may be given, with every field filled or left.</summary>
internal static partial class GenBook
{
    // Ids are plain, but a one-off's name is whatever a person types, and it becomes an id in the ledger.
    public static readonly Gen<string> Names = Gen.OneOf(
        "Gift", "gift", "GIFT", "Grüße 👩‍👧", "\"quoted\"", "a.b.c", "$date", "$.x[*]", "_id", "from: aunt/uncle", "'", "\\", " ", "é", "e\u0301", "ß", "SS", "x\ty", "猫");

    private static readonly Gen<LocalDate> Dates = Gen.Int[-20_000, 60_000].Select(Samples.Payday.PlusDays);

    private static readonly Gen<LocalDate?> SomeDates = Gen.Select(Dates, Gen.Bool).Select((date, there) => there ? date : (LocalDate?)null);

    private static readonly Gen<Money> Amounts = Gen.OneOf(Gen.Long[0, 1_000_000], Gen.Long[-1_000_000_000_000, 1_000_000_000_000]).Select(Samples.Cents);

    private static readonly Gen<Money> AmountsAboveZero = Gen.Long[1, 1_000_000_000_000].Select(Samples.Cents);

    private static readonly Gen<ImmutableSortedDictionary<string, Money>> Named =
        Gen.Select(Names, Amounts).Array[0, 6].Select(pairs => Sorted(pairs.DistinctBy(pair => pair.Item1)));

    private static readonly Gen<Notes> Notes =
        Gen.Select(Gen.Long[1, 100_000], Gen.Int[0, 1_000]).Array[0, 5]
            .Select(pairs => Core.Cash.Notes.Of(pairs.DistinctBy(pair => pair.Item1)));

    private static readonly Gen<DueKey> DueKeys = Gen.Select(Names, Dates).Select((bill, date) => new DueKey(new BillId(bill), date));

    private static readonly Gen<Purpose> Purposes = Gen.OneOf(
        Gen.Const(Purpose.Buffer),
        Gen.Const(Purpose.LeftToPlace),
        Names.Select(id => Purpose.SetAside(new BillId(id))),
        Names.Select(id => Purpose.Pot(new PotId(id))),
        Names.Select(id => Purpose.KeptBack(new PotId(id))),
        Names.Select(id => Purpose.Wallet(new PotId(id))),
        Names.Select(id => Purpose.OwedBack(new PotId(id))));

    private static readonly Gen<LedgerEnd> Sources = Gen.OneOf<LedgerEnd>(
        Purposes.Select(LedgerEnd.InAccount),
        Names.Select(id => (LedgerEnd)new LedgerEnd.Owed(new DebtId(id))),
        Gen.Select(Gen.Enum<OutsideKind>(), Names).Select((kind, id) => Outside(kind, id)));

    // Nothing leaves cash here, so cash is never below zero and any of them make a sound ledger.
    private static readonly Gen<LedgerEnd> Targets = Gen.OneOf(Sources, Purposes.Select(LedgerEnd.InCash));

    /// <summary>Movements that make a sound ledger in any number and order.</summary>
    public static Gen<Movement> Movement { get; } =
        from ends in Gen.Select(Sources, Targets).Where((source, target) => source != target)
        from amount in AmountsAboveZero
        from reason in Names
        from dates in Gen.Select(Dates, SomeDates)
        from reverses in Gen.Select(Gen.Long[1, long.MaxValue], Gen.Bool)
        select new Movement(0, dates.Item1, ends.Item1, ends.Item2, amount, reason, dates.Item2, reverses.Item2 ? reverses.Item1 : null);

    /// <summary>Drafts with every field.</summary>
    public static Gen<RoutineDraft> Draft { get; } =
        from payday in Dates
        from step in Gen.Enum<RoutineStep>()
        from named in Gen.Select(Named, Named, Named, Named)
        from dues in Gen.Select(DueKeys, Amounts, Gen.Int[0, 8]).Array[0, 4]
        from mode in Gen.Select(Gen.Enum<SetAsideMode>(), Gen.Bool)
        from placed in Gen.Select(Gen.Enum<PlacementTarget>(), Names, Amounts).Array[0, 4]
        from isPlaced in Gen.Bool
        from chosen in Gen.Select(Names, SomeDates, Notes).Array[0, 4]
        from ways in Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool)
        from ticked in Names.Array[0, 3]
        select new RoutineDraft(payday)
        {
            Notes = chosen.DistinctBy(part => (part.Item1, part.Item2))
                .ToImmutableSortedDictionary(part => new PartKey(new PotId(part.Item1), part.Item2), part => part.Item3),
            FromBuffer = ways.Item1 == ways.Item2 ? named.Item1.Values.FirstOrDefault() is { MinorUnits: not 0 } some ? some : null : null,
            ToOverdraft = ways.Item1 && !ways.Item2 ? named.Item2.Values.FirstOrDefault() is { MinorUnits: not 0 } paid ? paid : null : null,
            Minimums = ticked.Zip(named.Item2.Values).DistinctBy(pair => pair.First)
                .ToImmutableSortedDictionary(pair => new DueKey(new DebtId(pair.First), payday), pair => pair.Second),
            LeavesNotesAtHome = ways.Item1,
            AsksATeller = ways.Item2,
            UsesOwedBack = ways.Item3,
            Machine = ways.Item1 && ways.Item3 && named.Item4.Values.Any()
                ? new CashSource.Machine([.. named.Item4.Values], ways.Item2 ? named.Item4.Values.First() : null)
                : null,
            Step = step,
            Incomes = ById(named.Item1, name => new SourceId(name)),
            OneOffs = named.Item2,
            DebtPayments = ById(named.Item3, name => new DebtId(name)),
            Fills = ById(named.Item4, name => new PotId(name)),
            PaidMinimums = dues.DistinctBy(due => due.Item1).ToImmutableSortedDictionary(due => new DueKey(new DebtId(due.Item1.Bill!.Value.Text), due.Item1.Scheduled), due => due.Item3 % 2 == 0),
            Dues = dues.DistinctBy(due => due.Item1).ToImmutableSortedDictionary(due => due.Item1, due => Decision(due.Item2, due.Item3)),
            SetAsides = mode.Item2 ? mode.Item1 : null,
            Placements = isPlaced ? [.. placed.Select(place => new Placement(Target(place.Item1, place.Item2), place.Item3))] : null,
        };

    /// <summary>Closed paydays whose movements are the first of the ledger.</summary>
    public static Gen<ClosedPayday> Closed { get; } =
        from first in Dates
        from days in Gen.Int[0, 60]
        from movements in Gen.Long[0, 3]
        from dues in Gen.Select(DueKeys, Amounts, Gen.Bool).Array[0, 4]
        from parts in Gen.Select(Names, SomeDates, Notes).Array[0, 4]
        from kept in Named
        from notes in Gen.Select(Notes, Notes, Notes)
        from draft in Draft
        select new ClosedPayday(
            new PayPeriod(first, first.PlusDays(days)),
            1,
            movements,
            [.. dues.Select(due => new ClosedDue(due.Item1, due.Item2, due.Item3, due.Item3))],
            [.. parts.Select(part => new ClosedPart(new PotId(part.Item1), part.Item2, part.Item3))],
            ById(kept, name => new PotId(name)),
            notes.Item1,
            notes.Item2,
            notes.Item3,
            draft)
        {
            Minimums = dues.Length % 2 == 0 ? [.. dues.Select(due => new ClosedDue(new DueKey(new DebtId(due.Item1.Bill!.Value.Text), due.Item1.Scheduled), due.Item2, due.Item3) { Asked = due.Item3 ? due.Item2 : null, Bought = movements > 1 ? due.Item2 : null })] : null,
            Charged = dues.Length % 3 == 0 ? [.. dues.Select(due => new DueKey(new DebtId(due.Item1.Bill!.Value.Text), due.Item1.Scheduled))] : null,
            Trips = dues.Length % 2 == 0 ? [.. dues.Select(due => due.Item2)] : [],
        };

    private static ImmutableSortedDictionary<TId, Money> ById<TId>(ImmutableSortedDictionary<string, Money> named, Func<string, TId> id)
        where TId : notnull => named.ToImmutableSortedDictionary(pair => id(pair.Key), pair => pair.Value);

    private static MoveTarget Target(PlacementTarget target, string id) => target switch
    {
        PlacementTarget.Debt => MoveTarget.Debt(new DebtId(id)),
        PlacementTarget.Pot => MoveTarget.Pot(new PotId(id)),
        _ => MoveTarget.Buffer,
    };

    private static LedgerEnd Outside(OutsideKind kind, string id) => kind switch
    {
        OutsideKind.Opening => LedgerEnd.Opening,
        OutsideKind.Source => LedgerEnd.PaidBy(new SourceId(id)),
        OutsideKind.Bill => LedgerEnd.PaidFor(new BillId(id)),
        OutsideKind.Interest => LedgerEnd.InterestOn(new DebtId(id)),
        OutsideKind.Spending => LedgerEnd.SpentFrom(new PotId(id)),
        _ => LedgerEnd.MissedIn(new PotId(id)),
    };

    // Each of three ways for each of two fields.
    private static DueDecision Decision(Money actual, int way) =>
        new(way % 3 == 0 ? null : actual, (way / 3) switch { 0 => null, 1 => false, _ => true });

    private static ImmutableSortedDictionary<string, Money> Sorted(IEnumerable<(string Id, Money Amount)> pairs) =>
        pairs.ToImmutableSortedDictionary(pair => pair.Id, pair => pair.Amount, StringComparer.Ordinal);
}
