using System.Collections.Immutable;
using CsCheck;
using LiteDB;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Store.Changes;
using Payday.Store.Checks;
using Payday.Store.Contents;
using Payday.Store.Documents;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Store.Snapshots;
using Payday.Store.Tests.HouseholdFiles;

namespace Payday.Store.Tests.Books;

public sealed class BookRoundTripTests
{
    [Fact]
    public void Movement_AsBytesAndBack_IsTheSame() => GenBook.Movement.Sample(
        movement => Same(movement, MovementDocument.Form.To(Stored(MovementDocument.Form.From(movement)), Samples.Usd)), iter: 500);

    [Fact]
    public void Closed_AsBytesAndBack_IsTheSame() => GenBook.Closed.Sample(
        closed => Same(closed, ClosedDocument.Form.To(Stored(ClosedDocument.Form.From(closed)), Samples.Usd)), iter: 300);

    [Fact]
    public void Draft_AsBytesAndBack_IsTheSame() => GenBook.Draft.Sample(
        draft => Same(draft, DraftDocument.Form.To(Stored(DraftDocument.Form.From(draft)), Samples.Usd)), iter: 300);

    [Fact]
    public void Weeks_AsBytesAndBack_AreTheSame() => GenBook.Weeks.Sample(
        weeks =>
        {
            Assert.All(weeks.Fills, fill => Same(fill, FillDocument.Form.To(Stored(FillDocument.Form.From(fill)), Samples.Usd)));
            Assert.All(weeks.Purchases, purchase => Same(purchase, PurchaseDocument.Form.To(Stored(PurchaseDocument.Form.From(purchase)), Samples.Usd)));
            Assert.All(weeks.Counts, count => Same(count, CountDocument.Form.To(Stored(CountDocument.Form.From(count)), Samples.Usd)));
            Assert.All(weeks.Settled, settled => Same(settled, SettledDocument.Form.To(Stored(SettledDocument.Form.From(settled)), Samples.Usd)));
            Assert.All(weeks.Returns, back => Same(back, ReturnDocument.Form.To(Stored(ReturnDocument.Form.From(back)), Samples.Usd)));
            Same(weeks.Draft, weeks.Draft is { } draft ? CountDraftDocument.Form.To(Stored(CountDraftDocument.Form.From(draft)), Samples.Usd) : null);
        },
        iter: 200);

    [Fact]
    public void Save_WeeksAfterWeeks_LoadsTheLast() =>
        Gen.Select(GenBook.Weeks, GenBook.Weeks, GenBook.Movement.Array[3]).Sample(
            (first, second, movements) =>
            {
                using var scratch = new ScratchFolder();
                using (BookStore store = BookStore.Open(scratch.Data))
                {
                    store.Save(new BookChange { Household = Samples.Household, Movements = [.. movements], Weeks = first });
                    store.Save(new BookChange { Weeks = second with { Purchases = [.. first.Purchases.Take(1), .. second.Purchases.Skip(1)] } });
                    store.Save(new BookChange { Weeks = second });
                }

                using BookStore again = BookStore.Open(scratch.Data);
                Assert.Equal(Structure.Of(second.Fitting(Samples.Household)), Structure.Of(again.Load()!.Weeks));
            },
            iter: 10,
            threads: 1);

    /// <summary>What was done in a book that came of a snapshot, by whatever has been entered since: added to, changed in its place, or another.</summary>
    [Fact]
    public void Save_WeeksOfABookFromASnapshot_CarriesThemOn() =>
        Gen.Select(GenBook.Weeks, GenBook.Weeks, GenBook.Movement.Array[3], Gen.Int[0, 9]).Sample(
            (first, second, movements, at) =>
            {
                using var scratch = new ScratchFolder();
                StoreFolder folder = scratch.Data with { Snapshots = new SnapshotWish(FewestRecords: 1, FurthestBehind: int.MaxValue) };
                using (BookStore store = BookStore.Open(folder))
                {
                    store.Save(new BookChange { Household = Samples.Household, Movements = [.. movements], Weeks = first });
                }

                Reload(folder);
                WeekRecords grown = Done(folder, weeks => weeks with
                {
                    Purchases = second.Purchases.Aggregate(Undone(weeks.Purchases, at), (all, one) => all.Add(one with { Number = all.Count + 1 })),
                    Counts = second.Counts.Aggregate(weeks.Counts, (all, one) => all.Add(one with { Number = all.Count + 1 })),
                });
                Assert.Equal(Structure.Of(grown.Fitting(Samples.Household)), Structure.Of(CarriedOn(folder)));
                Assert.Equal(grown.Purchases.Select(one => one.Traits), CarriedOn(folder).Purchases.Select(one => one.Traits));
                Assert.Equal(grown.StandingPurchases.Select(one => one.Number), CarriedOn(folder).StandingPurchases.Select(one => one.Number));

                WeekRecords other = Done(folder, _ => second);
                Assert.Equal(Structure.Of(other.Fitting(Samples.Household)), Structure.Of(CarriedOn(folder)));
                Assert.DoesNotContain(StoreCheck.Run(folder).Findings, finding => finding.Part != CheckPart.Ledger);
            },
            iter: 10,
            threads: 1);

    private static RecordList<CardPurchase, PurchaseTraits> Undone(RecordList<CardPurchase, PurchaseTraits> all, int at) =>
        all.Count == 0 ? all : all.Put(all[at % all.Count] with { Undone = true });

    private static void Reload(StoreFolder folder)
    {
        using BookStore store = BookStore.Open(folder);
        store.Load();
    }

    private static WeekRecords Done(StoreFolder folder, Func<WeekRecords, WeekRecords> change)
    {
        using BookStore store = BookStore.Open(folder);
        Book book = store.Load()!;
        Book after = book with { Weeks = change(book.Weeks) };
        store.Save(book, after);
        return after.Weeks;
    }

    // The snapshot, and the journal since.
    private static WeekRecords CarriedOn(StoreFolder folder) => ContentBook.Of(folder, Assert.IsType<StoredRecords>(SnapshotFile.TryLook(folder))).Book.Weeks;

    [Fact]
    public void Household_AsBytesAndBack_IsTheSame() => GenHousehold.Any.Sample(
        household => Same(household, HouseholdDocument.To(Stored(HouseholdDocument.From(household)))), iter: 100);

    [Fact]
    public void Save_AnyBook_LoadsTheSameFromTheFile() =>
        Gen.Select(GenBook.Movement.Array[3, 30], GenBook.Closed.Array[0, 3], GenBook.Draft).Sample(
            (movements, closed, draft) =>
            {
                using var scratch = new ScratchFolder();
                ClosedPayday[] paydays = [.. closed.DistinctBy(payday => payday.Payday).OrderBy(payday => payday.Payday)];
                using (BookStore store = BookStore.Open(scratch.Data))
                {
                    store.Save(new BookChange { Household = Samples.Household, Movements = [.. movements], Draft = draft });
                    foreach (ClosedPayday payday in paydays)
                    {
                        store.Save(new BookChange { Closed = [payday] });
                    }
                }

                using BookStore again = BookStore.Open(scratch.Data);
                var book = new Book(
                    Samples.Household, Ledger.Of(Samples.Usd, [.. movements.Select((movement, i) => movement with { Number = i + 1 })]), [.. paydays], DraftFit.To(Samples.Household, draft));
                Assert.Equal(Samples.Text(book), Samples.Text(again.Load()));
            },
            iter: 15,
            threads: 1);

    [Fact]
    public void Save_OneOffsThatDifferByCaseAlone_KeepsBoth()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        var draft = new RoutineDraft(Samples.Payday) { OneOffs = ImmutableSortedDictionary.Create<string, Core.Amounts.Money>(StringComparer.Ordinal)
            .Add("Gift", Samples.Cents(1)).Add("gift", Samples.Cents(2)) };
        store.Save(new BookChange { Draft = draft });

        Assert.Equal(Structure.Of(draft), Structure.Of(store.Load()!.Draft));
    }

    private static void Same<T>(T expected, T actual) => Assert.Equal(Structure.Of(expected), Structure.Of(actual));

    private static BsonDocument Stored(BsonDocument document) => BsonSerializer.Deserialize(BsonSerializer.Serialize(document));
}
