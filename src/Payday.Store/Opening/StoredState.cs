using Payday.Core.Books;
using Payday.Store.Changes;
using Payday.Store.Contents;

namespace Payday.Store.Opening;

/// <summary>What has to be known of what is stored, to take a change.</summary>
/// <param name="records">All that is stored when this begins; null where nothing is.</param>
/// <param name="weeks">What of it happened between paydays; null where that was not made out.</param>
internal sealed class StoredState(StoredRecords? records, WeekRecords? weeks)
{
    private StoredDigests? digests;

    /// <summary>What is stored between paydays; null where that was not made out.</summary>
    public WeekRecords? Weeks { get; private set; } = weeks;

    /// <summary>Which documents are stored; gathered when the first change comes, for many an evening brings none.</summary>
    public StoredDigests Digests => digests ??= new StoredDigests(records);

    /// <summary>Takes note of a change that was stored.</summary>
    public void Take(EditList edits, BookChange change)
    {
        Digests.Take(edits);
        Weeks = change.Weeks ?? Weeks;
    }
}
