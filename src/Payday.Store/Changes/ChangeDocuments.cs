using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Books;
using Payday.Store.Contents;
using Payday.Store.Documents;
using Payday.Store.Edits;

namespace Payday.Store.Changes;

/// <summary>A change as the documents it comes to, all of them made before the database is touched.</summary>
internal sealed class ChangeDocuments
{
    private readonly BsonDocument? household;
    private readonly ImmutableArray<BsonDocument> movements;
    private readonly ImmutableArray<BsonDocument> closed;
    private readonly ImmutableArray<BsonDocument> corrected;
    private readonly ImmutableArray<BsonValue> reopened;
    private readonly BsonDocument? draft;
    private readonly bool dropsDraft;
    private readonly WeekDocuments? weeks;

    /// <param name="change">The change.</param>
    /// <param name="lastMovement">The number of the last movement stored.</param>
    /// <param name="lastWeeks">What is stored of what happened between paydays, or null where that is not known.</param>
    /// <exception cref="ArgumentException">The household is one that could not be read again.</exception>
    public ChangeDocuments(BookChange change, long lastMovement, WeekRecords? lastWeeks)
    {
        household = change.Household is { } set ? HouseholdDocument.From(set) : null;
        movements = [.. change.Movements.Select((movement, i) => MovementDocument.Form.From(movement with { Number = lastMovement + 1 + i }))];
        closed = [.. change.Closed.Select(ClosedDocument.Form.From)];
        corrected = [.. change.Corrected.Select(ClosedDocument.Form.From)];
        reopened = [.. change.Reopened.Select(Bson.Of)];
        draft = change.Draft is { } begun ? DraftDocument.Form.From(begun) : null;
        dropsDraft = change.DropsDraft || draft is not null;
        weeks = change.Weeks is { } happened ? WeekDocuments.Of(lastWeeks, happened) : null;
    }

    /// <summary>Says what they do to the documents stored.</summary>
    /// <exception cref="InvalidOperationException">Something new is stored already.</exception>
    public void AddTo(EditList edits)
    {
        if (household is not null)
        {
            edits.Put(CollectionNames.Households, household);
        }

        foreach (BsonDocument movement in movements)
        {
            edits.Add(CollectionNames.Movements, movement);
        }

        foreach (BsonDocument payday in closed)
        {
            edits.Add(CollectionNames.Closed, payday);
        }

        foreach (BsonDocument payday in corrected)
        {
            edits.Put(CollectionNames.Closed, payday);
        }

        foreach (BsonValue payday in reopened)
        {
            edits.Remove(CollectionNames.Closed, payday);
        }

        if (dropsDraft)
        {
            edits.Clear(CollectionNames.Drafts);
        }

        if (draft is not null)
        {
            edits.Add(CollectionNames.Drafts, draft);
        }

        weeks?.AddTo(edits);
    }
}
