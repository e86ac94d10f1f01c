using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Weeks;
using Payday.Store.Databases;

namespace Payday.Store.Documents;

/// <summary>What happened between paydays, as the documents that differ from those stored.</summary>
internal sealed class WeekDocuments
{
    private readonly List<Action<BookDatabase>> writes = [];

    /// <summary>The documents to write and to take out.</summary>
    /// <param name="before">What is stored; null where that is not known, and all is written anew.</param>
    /// <param name="after">What is to be stored.</param>
    public static WeekDocuments Of(WeekRecords? before, WeekRecords after)
    {
        var documents = new WeekDocuments();
        WeekRecords known = before ?? WeekRecords.None;
        bool anew = before is null;
        documents.Add(database => database.Fills, known.Fills, after.Fills, FillDocument.From, anew);
        documents.Add(database => database.Purchases, known.Purchases, after.Purchases, PurchaseDocument.From, anew);
        documents.Add(database => database.Counts, known.Counts, after.Counts, CountDocument.From, anew);
        documents.Add(database => database.Settled, known.Settled, after.Settled, SettledDocument.From, anew);
        documents.Add(database => database.Returns, known.Returns, after.Returns, ReturnDocument.From, anew);
        if (anew || !ReferenceEquals(known.Draft, after.Draft))
        {
            BsonDocument? draft = after.Draft is { } begun ? CountDraftDocument.From(begun) : null;
            documents.writes.Add(database =>
            {
                database.CountDrafts.DeleteAll();
                if (draft is not null)
                {
                    database.CountDrafts.Insert(draft);
                }
            });
        }

        return documents;
    }

    /// <summary>Reads them all.</summary>
    public static WeekRecords Read(BookDatabase database, Currency currency) => new(
        [.. database.Fills.FindAll().Select(document => FillDocument.To(document, currency)).OrderBy(fill => fill.Key.Payday).ThenBy(fill => fill.Key.Week).ThenBy(fill => fill.Key.PotId, StringComparer.Ordinal)],
        [.. database.Purchases.FindAll().Select(document => PurchaseDocument.To(document, currency)).OrderBy(purchase => purchase.Number)],
        [.. database.Counts.FindAll().Select(document => CountDocument.To(document, currency)).OrderBy(count => count.Number)],
        [.. database.Settled.FindAll().Select(SettledDocument.To).OrderBy(settled => settled.Movement)],
        [.. database.Returns.FindAll().Select(document => ReturnDocument.To(document, currency)).OrderBy(back => back.Number)],
        database.CountDrafts.FindAll().Select(document => CountDraftDocument.To(document, currency)).FirstOrDefault());

    /// <summary>Writes them, within a change.</summary>
    public void WriteTo(BookDatabase database) => writes.ForEach(write => write(database));

    // A record that is the same object is the same document: they never change in themselves.
    private void Add<T>(
        Func<BookDatabase, ILiteCollection<BsonDocument>> collection,
        ImmutableArray<T> before,
        ImmutableArray<T> after,
        Func<T, BsonDocument> document,
        bool anew)
        where T : class
    {
        var known = new HashSet<T>(before, ReferenceEqualityComparer.Instance);
        BsonDocument[] changed = [.. after.Where(record => !known.Contains(record)).Select(document)];
        known.ExceptWith(after);
        HashSet<BsonValue> written = [.. changed.Select(one => one["_id"])];
        BsonValue[] gone = [.. known.Select(record => document(record)["_id"]).Where(id => !written.Contains(id))];
        writes.Add(database =>
        {
            ILiteCollection<BsonDocument> stored = collection(database);
            if (anew)
            {
                stored.DeleteAll();
            }

            foreach (BsonValue id in gone)
            {
                stored.Delete(id);
            }

            foreach (BsonDocument one in changed)
            {
                stored.Upsert(one);
            }
        });
    }
}
