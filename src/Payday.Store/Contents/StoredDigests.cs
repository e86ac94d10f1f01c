using Payday.Store.Documents;
using Payday.Store.Edits;

namespace Payday.Store.Contents;

/// <summary>Which documents are stored, and the digest of each that may change: what a change is reckoned from.</summary>
/// <remarks>
/// Not read from the database when a change is made: a document that was damaged there would go into the digest of
/// all, and the journal would vouch for it.
/// </remarks>
/// <param name="records">What is stored when this begins; null where nothing is.</param>
internal sealed class StoredDigests(StoredRecords? records)
{
    // What changed since; null for a document that was taken out.
    private readonly Dictionary<(string Collection, object Key), Digest?> changed = [];

    /// <summary>How many movements are stored, which is the number of the last one.</summary>
    public long Movements { get; private set; } = records?.Movements.Count ?? 0;

    /// <summary>The digest of a document; null where it is not stored. Of movements none is kept, as they never change.</summary>
    public Digest? Find(string collection, object key)
    {
        if (collection == CollectionNames.Movements)
        {
            return key is long number && number >= 1 && number <= Movements ? default(Digest) : null;
        }

        return changed.TryGetValue((collection, key), out Digest? digest) ? digest : AtFirst(collection, key);
    }

    /// <summary>The ids of all documents of a collection other than that of the movements.</summary>
    public IReadOnlyCollection<object> Keys(string collection) =>
    [
        .. (Column(collection)?.Digests.Select(pair => pair.Key) ?? []).Where(key => !changed.ContainsKey((collection, key))),
        .. changed.Where(pair => pair.Key.Collection == collection && pair.Value is not null).Select(pair => pair.Key.Key),
    ];

    /// <summary>Takes note of a change that was stored.</summary>
    public void Take(EditList edits)
    {
        foreach (Edit edit in edits.Edits)
        {
            if (edit.Collection == CollectionNames.Movements)
            {
                Movements++;
            }
            else
            {
                changed[(edit.Collection, Edit.Key(edit.Id))] = edit.Document is null ? null : edits.DigestOf(edit);
            }
        }
    }

    private Digest? AtFirst(string collection, object key) => collection == CollectionNames.Households
        ? key is HouseholdDocument.Id ? records?.Household.Digest : null
        : Column(collection)?.Find(key);

    private IColumn? Column(string collection) => records?.Columns.Single(column => column.Collection == collection);
}
