using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Weeks;
using Payday.Store.Contents;

namespace Payday.Store.Documents;

/// <summary>What happened between paydays, as the documents that differ from those stored.</summary>
internal sealed class WeekDocuments
{
    private readonly List<Action<EditList>> writes = [];

    /// <summary>The documents to write and to take out.</summary>
    /// <param name="before">What is stored; null where that is not known, and all is written anew.</param>
    /// <param name="after">What is to be stored.</param>
    public static WeekDocuments Of(WeekRecords? before, WeekRecords after)
    {
        var documents = new WeekDocuments();
        WeekRecords known = before ?? WeekRecords.None;
        bool anew = before is null;
        documents.Add(CollectionNames.Fills, known.Fills, after.Fills, FillDocument.From, anew);
        documents.Add(CollectionNames.Purchases, known.Purchases, after.Purchases, PurchaseDocument.From, anew);
        documents.Add(CollectionNames.Counts, known.Counts, after.Counts, CountDocument.From, anew);
        documents.Add(CollectionNames.Settled, known.Settled, after.Settled, SettledDocument.From, anew);
        documents.Add(CollectionNames.Returns, known.Returns, after.Returns, ReturnDocument.From, anew);
        if (anew || !ReferenceEquals(known.Draft, after.Draft))
        {
            BsonDocument? draft = after.Draft is { } begun ? CountDraftDocument.From(begun) : null;
            documents.writes.Add(edits =>
            {
                edits.Clear(CollectionNames.CountDrafts);
                if (draft is not null)
                {
                    edits.Add(CollectionNames.CountDrafts, draft);
                }
            });
        }

        return documents;
    }

    /// <summary>Reads them all.</summary>
    public static WeekRecords Read(BookContent content, Currency currency) => new(
        [.. content.In(CollectionNames.Fills).Select(document => FillDocument.To(document, currency)).OrderBy(fill => fill.Key.Payday).ThenBy(fill => fill.Key.Week).ThenBy(fill => fill.Key.PotId, StringComparer.Ordinal)],
        [.. content.In(CollectionNames.Purchases).Select(document => PurchaseDocument.To(document, currency)).OrderBy(purchase => purchase.Number)],
        [.. content.In(CollectionNames.Counts).Select(document => CountDocument.To(document, currency)).OrderBy(count => count.Number)],
        [.. content.In(CollectionNames.Settled).Select(SettledDocument.To).OrderBy(settled => settled.Movement)],
        [.. content.In(CollectionNames.Returns).Select(document => ReturnDocument.To(document, currency)).OrderBy(back => back.Number)],
        content.In(CollectionNames.CountDrafts).Select(document => CountDraftDocument.To(document, currency)).FirstOrDefault());

    /// <summary>Says what they do to the documents stored.</summary>
    public void AddTo(EditList edits) => writes.ForEach(write => write(edits));

    // A record that is the same object is the same document: they never change in themselves.
    private void Add<T>(
        string collection,
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
        writes.Add(edits =>
        {
            if (anew)
            {
                edits.Clear(collection);
            }

            foreach (BsonValue id in gone)
            {
                edits.Remove(collection, id);
            }

            foreach (BsonDocument one in changed)
            {
                edits.Put(collection, one);
            }
        });
    }
}
