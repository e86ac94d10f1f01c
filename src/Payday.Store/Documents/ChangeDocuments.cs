using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Weeks;
using Payday.Store.Databases;

namespace Payday.Store.Documents;

/// <summary>A change as the documents it comes to, all of them made before the database is touched.</summary>
internal sealed class ChangeDocuments
{
    /// <summary>The id of the one household.</summary>
    public const string HouseholdId = "household";

    private readonly BsonDocument? household;
    private readonly ImmutableArray<BsonDocument> movements;
    private readonly BsonDocument? closed;
    private readonly BsonDocument? corrected;
    private readonly BsonValue? reopened;
    private readonly BsonDocument? draft;
    private readonly bool dropsDraft;
    private readonly WeekDocuments? weeks;

    /// <param name="change">The change.</param>
    /// <param name="lastMovement">The number of the last movement stored.</param>
    /// <param name="lastWeeks">What is stored of what happened between paydays, or null where that is not known.</param>
    /// <exception cref="ArgumentException">The household is one that could not be read again.</exception>
    public ChangeDocuments(BookChange change, long lastMovement, WeekRecords? lastWeeks)
    {
        household = change.Household is { } set ? HouseholdDocument.From(set, HouseholdId) : null;
        movements = [.. change.Movements.Select((movement, i) => MovementDocument.From(movement with { Number = lastMovement + 1 + i }))];
        closed = change.Closed is { } done ? ClosedDocument.From(done) : null;
        corrected = change.Corrected is { } put ? ClosedDocument.From(put) : null;
        reopened = change.Reopened is { } again ? Bson.Of(again) : null;
        draft = change.Draft is { } begun ? DraftDocument.From(begun) : null;
        dropsDraft = change.DropsDraft || draft is not null;
        weeks = change.Weeks is { } happened ? WeekDocuments.Of(lastWeeks, happened) : null;
    }

    /// <summary>Writes them, within a change.</summary>
    public void WriteTo(BookDatabase database)
    {
        if (household is not null)
        {
            database.Households.Upsert(household);
        }

        foreach (BsonDocument movement in movements)
        {
            database.Movements.Insert(movement);
        }

        if (closed is not null)
        {
            database.Closed.Insert(closed);
        }

        if (corrected is not null)
        {
            database.Closed.Update(corrected);
        }

        if (reopened is not null)
        {
            database.Closed.Delete(reopened);
        }

        if (dropsDraft)
        {
            database.Drafts.DeleteAll();
        }

        if (draft is not null)
        {
            database.Drafts.Insert(draft);
        }

        weeks?.WriteTo(database);
    }
}
