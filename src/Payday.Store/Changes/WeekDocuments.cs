using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Books;
using Payday.Store.Contents;
using Payday.Store.Documents;
using Payday.Store.Edits;

namespace Payday.Store.Changes;

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
        documents.Add(FillDocument.Form, known.Fills, after.Fills, anew);
        documents.Add(PurchaseDocument.Form, known.Purchases, after.Purchases, anew);
        documents.Add(CountDocument.Form, known.Counts, after.Counts, anew);
        documents.Add(SettledDocument.Form, known.Settled, after.Settled, anew);
        documents.Add(ReturnDocument.Form, known.Returns, after.Returns, anew);
        documents.Add(PaymentDocument.Form, known.Payments, after.Payments, anew);
        documents.Add(MoveDocument.Form, known.Moves, after.Moves, anew);
        documents.Add(EntryDocument.Form, known.Entries, after.Entries, anew);
        documents.Add(ReconciliationDocument.Form, known.Reconciliations, after.Reconciliations, anew);
        documents.Add(ReceivedDocument.Form, known.Received, after.Received, anew);
        documents.Add(TakingDocument.Form, known.Takings, after.Takings, anew);
        documents.Add(StatementRuleDocument.Form, known.StatementRules, after.StatementRules, anew);
        documents.Add(ReadingDocument.Form, known.Readings, after.Readings, anew);
        documents.Add(FormDocument.Form, known.Forms, after.Forms, anew);
        documents.AddOne(CountDraftDocument.Form, known.Draft, after.Draft, anew);
        documents.AddOne(ReconcilingDocument.Form, known.Reconciling, after.Reconciling, anew);
        return documents;
    }

    /// <summary>Says what they do to the documents stored.</summary>
    public void AddTo(EditList edits) => writes.ForEach(write => write(edits));

    // Of such there is one or none.
    private void AddOne<T>(RecordForm<T> form, T? before, T? after, bool anew)
        where T : class
    {
        if (anew || !ReferenceEquals(before, after))
        {
            BsonDocument? one = after is null ? null : form.From(after);
            writes.Add(edits =>
            {
                edits.Clear(form.Collection);
                if (one is not null)
                {
                    edits.Add(form.Collection, one);
                }
            });
        }
    }

    // They are numbered without a gap, so none goes from its place.
    private void Add<T, TTraits>(RecordForm<T> form, RecordList<T, TTraits> before, RecordList<T, TTraits> after, bool anew)
        where T : class, IRecord<TTraits>
        where TTraits : struct, Enum =>
        Add(form, before.OtherThanIn(after).ToImmutableArray(), after.OtherThanIn(before).ToImmutableArray(), anew);

    // A record that is the same object is the same document: they never change in themselves.
    private void Add<T>(
        RecordForm<T> form,
        ImmutableArray<T> before,
        ImmutableArray<T> after,
        bool anew)
        where T : class
    {
        // Of many records few are other ones, and these are together: what is the same before and behind them is passed over.
        int same = SameAtTheStart(before, after);
        int sameBehind = SameAtTheEnd(before.AsSpan()[same..], after.AsSpan()[same..]);
        T[] known = before.AsSpan()[same..^sameBehind].ToArray();
        var still = new HashSet<T>(known, ReferenceEqualityComparer.Instance);
        BsonDocument[] changed = [.. after.AsSpan()[same..^sameBehind].ToArray().Where(record => !still.Remove(record)).Select(form.From)];
        HashSet<BsonValue> written = [.. changed.Select(one => one["_id"])];
        BsonValue[] gone = [.. known.Where(still.Contains).Select(form.Id).Where(id => !written.Contains(id))];
        writes.Add(edits =>
        {
            if (anew)
            {
                edits.Clear(form.Collection);
            }

            foreach (BsonValue id in gone)
            {
                edits.Remove(form.Collection, id);
            }

            foreach (BsonDocument one in changed)
            {
                edits.Put(form.Collection, one);
            }
        });
    }

    private static int SameAtTheStart<T>(ImmutableArray<T> before, ImmutableArray<T> after)
        where T : class
    {
        int same = 0;
        while (same < before.Length && same < after.Length && ReferenceEquals(before[same], after[same]))
        {
            same++;
        }

        return same;
    }

    private static int SameAtTheEnd<T>(ReadOnlySpan<T> before, ReadOnlySpan<T> after)
        where T : class
    {
        int same = 0;
        while (same < before.Length && same < after.Length && ReferenceEquals(before[^(same + 1)], after[^(same + 1)]))
        {
            same++;
        }

        return same;
    }
}
