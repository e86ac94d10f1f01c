using System.Collections.Immutable;
using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Weeks;

namespace Payday.Store.Documents;

/// <summary>A count begun, as it is stored: only what was entered.</summary>
internal static class CountDraftDocument
{
    public static BsonDocument From(CountDraft draft) => new()
    {
        ["_id"] = Bson.Of(draft.Date),
        ["entries"] = Bson.Array(draft.Entries.Select(pair => new BsonDocument
        {
            ["pot"] = pair.Key,
            ["left"] = pair.Value.Left.MinorUnits,
            ["notes"] = pair.Value.Notes is { } notes ? Bson.Of(notes) : BsonValue.Null,
            ["missing"] = pair.Value.Missing.MinorUnits,
            ["isFind"] = pair.Value.IsFind,
            ["differenceName"] = pair.Value.DifferenceName,
            ["isDecided"] = pair.Value.Then is not null,
            ["movesOnTo"] = CountDocument.Of(pair.Value.Then?.MovesOnTo),
        })),
    };

    public static CountDraft To(BsonDocument document, Currency currency) => new(
        Bson.Date(document["_id"]),
        document["entries"].AsArray.ToImmutableSortedDictionary(
            entry => entry["pot"].AsString,
            entry => new CountEntry(Bson.Amount(entry["left"], currency))
            {
                Notes = entry["notes"].IsNull ? null : Bson.Notes(entry["notes"]),
                Missing = Bson.Amount(entry["missing"], currency),
                IsFind = entry["isFind"].AsBoolean,
                DifferenceName = entry["differenceName"].AsString,
                Then = entry["isDecided"].AsBoolean ? new CountThen(CountDocument.Target(entry["movesOnTo"])) : null,
            },
            StringComparer.Ordinal));
}
