using Payday.Store.Contents;
using Payday.Store.Documents;
using Payday.Store.Edits;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Snapshots;

/// <summary>What a journal came to at one of its lines, kept so that a long life is not read line by line each evening.</summary>
/// <param name="Place">The place in the journal.</param>
/// <param name="Records">What was stored there.</param>
/// <remarks>
/// It is made from journal and database and holds nothing that is not there: lost, damaged or left behind, it is
/// passed over and made anew. It is believed only where its hash is right and the journal goes on from its place.
/// </remarks>
internal sealed record Snapshot(JournalPlace Place, StoredRecords Records)
{
    /// <summary>What is stored now: the snapshot, and what the journal says since.</summary>
    /// <param name="journal">The journal, open.</param>
    /// <returns>The records; null where the journal is another one, or holds what can't be done here.</returns>
    public StoredRecords? CarriedOn(JournalFile journal)
    {
        if (journal.Last?.Number == Place.Number)
        {
            return journal.Last.Sha == Place.Sha ? Records : null;
        }

        try
        {
            return journal.After(Place) is { } lines && Apply([.. lines.SelectMany(line => line.Edits())]) ? Records : null;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            // The whole read finds out what is wrong, and says it.
            return null;
        }
    }

    /// <summary>Whether it holds something else than a journal came to at its line.</summary>
    /// <param name="lines">The journal's lines from the first on; where they don't come to what they say themselves, nothing can be told.</param>
    public bool Differs(IEnumerable<JournalLine> lines)
    {
        try
        {
            return StoredRecords.Of(JournalScan.ContentOf(lines.Take((int)Place.Number))) is not { } records
                || !SnapshotFile.Packed(this with { Records = records }).AsSpan().SequenceEqual(SnapshotFile.Packed(this));
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return false;
        }
    }

    private bool Apply(IReadOnlyList<Edit> edits)
    {
        ILookup<string, Edit> byCollection = edits.ToLookup(edit => edit.Collection, StringComparer.Ordinal);

        return byCollection[CollectionNames.Households].All(Settles)
            && Records.Columns.All(column => !byCollection.Contains(column.Collection) || column.Apply(byCollection[column.Collection], Records.Currency));
    }

    // In another currency all would have to be read anew.
    private bool Settles(Edit household)
    {
        if (household.Document is not { } document || HouseholdDocument.To(document).Currency != Records.Currency)
        {
            return false;
        }

        Records.Household = new Stored<string>(document["file"].AsString, Digest.Of(household.Collection, document));
        return true;
    }
}
