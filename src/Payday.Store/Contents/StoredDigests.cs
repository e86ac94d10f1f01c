using Payday.Store.Documents;

namespace Payday.Store.Contents;

/// <summary>Which documents are stored, and the digest of each that may change: what a change is reckoned from.</summary>
/// <remarks>
/// Not read from the database when a change is made: a document that was damaged there would go into the digest of
/// all, and the journal would vouch for it.
/// </remarks>
internal sealed class StoredDigests
{
    private readonly Dictionary<string, Dictionary<object, Digest>> collections;

    /// <param name="records">What is stored; null where nothing is.</param>
    public StoredDigests(StoredRecords? records)
    {
        collections = CollectionNames.All.Where(name => name != CollectionNames.Movements)
            .ToDictionary(name => name, _ => new Dictionary<object, Digest>(), StringComparer.Ordinal);
        if (records is null)
        {
            return;
        }

        Movements = records.Movements.Count;
        collections[CollectionNames.Households].Add(ChangeDocuments.HouseholdId, records.Household.Digest);
        foreach (IColumn column in records.Columns.Where(column => column.Collection != CollectionNames.Movements))
        {
            Dictionary<object, Digest> digests = collections[column.Collection];
            digests.EnsureCapacity(column.Count);
            foreach ((object key, Digest digest) in column.Digests)
            {
                digests.Add(key, digest);
            }
        }
    }

    /// <summary>How many movements are stored, which is the number of the last one.</summary>
    public long Movements { get; private set; }

    /// <summary>Whether a document is stored, and its digest where that is kept.</summary>
    public (bool IsStored, Digest Digest) Find(string collection, object key) => collection == CollectionNames.Movements
        ? (key is long number && number >= 1 && number <= Movements, default)
        : (collections[collection].TryGetValue(key, out Digest digest), digest);

    /// <summary>The ids of all documents of a collection other than that of the movements.</summary>
    public IReadOnlyCollection<object> Keys(string collection) => collections[collection].Keys;

    /// <summary>Takes note of a change that was stored.</summary>
    public void Take(EditList edits)
    {
        foreach (Edit edit in edits.Edits)
        {
            if (edit.Collection == CollectionNames.Movements)
            {
                Movements++;
            }
            else if (edit.Document is not null)
            {
                collections[edit.Collection][Edit.Key(edit.Id)] = edits.DigestOf(edit);
            }
            else
            {
                collections[edit.Collection].Remove(Edit.Key(edit.Id));
            }
        }
    }
}
