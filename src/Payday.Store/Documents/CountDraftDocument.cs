using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A count begun, as it is stored: only what was entered.</summary>
internal static class CountDraftDocument
{
    public static readonly RecordForm<CountDraft> Form =
        new(CollectionNames.CountDrafts, draft => Bson.Of(draft.Date), (left, right) => left.Date.CompareTo(right.Date), Write, Read);

    private static void Write(IFieldWriter to, CountDraft draft)
    {
        to.Date("_id", draft.Date);
        to.List("entries", draft.Entries, static (item, pair) =>
        {
            item.Text("pot", pair.Key.Text);
            item.Amount("left", pair.Value.Left);
            item.OptionalNotes("notes", pair.Value.Notes);
            item.Amount("missing", pair.Value.Missing);
            item.Flag("isFind", pair.Value.IsFind);
            item.Text("differenceName", pair.Value.DifferenceName);
            item.Flag("isDecided", pair.Value.Then is not null);
            item.OptionalPart("movesOnTo", pair.Value.Then?.MovesOnTo, CountDocument.WriteTarget);
        });
    }

    private static CountDraft Read(IFieldReader from) => new(
        from.Date("_id"),
        from.List("entries", Entry).Sorted());

    private static KeyValuePair<PotId, CountEntry> Entry(IFieldReader from) => KeyValuePair.Create(
        new PotId(from.Text("pot")),
        new CountEntry(from.Amount("left"))
        {
            Notes = from.OptionalNotes("notes"),
            Missing = from.Amount("missing"),
            IsFind = from.Flag("isFind"),
            DifferenceName = from.Text("differenceName"),
            Then = Then(from.Flag("isDecided"), from.OptionalPart("movesOnTo", CountDocument.ReadTarget)),
        });

    private static CountThen? Then(bool isDecided, MoveTarget? movesOnTo) => isDecided ? new CountThen(movesOnTo) : null;
}
