using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>An account entry as it is stored.</summary>
internal static class EntryDocument
{
    public static readonly RecordForm<AccountEntry> Form =
        new(CollectionNames.Entries, entry => entry.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read) { IsNumbered = true };

    private static void Write(IFieldWriter to, AccountEntry entry)
    {
        to.Whole("_id", entry.Number);
        to.Date("date", entry.Date);
        to.Choice("kind", StoredChoices.EntryKinds, entry.Kind);
        to.Text("for", entry.For.Key);
        to.Amount("amount", entry.Amount);
        to.Text("what", entry.What);
        to.OptionalWhole("cheque", entry.Cheque);
        to.OptionalNotes("notes", entry.Notes);
        to.Whole("firstMovement", entry.FirstMovement);
        to.Whole("lastMovement", entry.LastMovement);
        to.OptionalFlag("undone", entry.Undone ? true : null);
        to.OptionalNotes("counted", entry.Counted);
        TakenUpDocument.Write(to, entry.TakenUp);
    }

    private static AccountEntry Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.Date("date"),
        from.Choice("kind", StoredChoices.EntryKinds),
        from.End("for"),
        from.Amount("amount"),
        from.Text("what"),
        from.OptionalWhole("cheque"),
        from.OptionalNotes("notes"),
        from.Whole("firstMovement"),
        from.Whole("lastMovement"))
    {
        Undone = from.OptionalFlag("undone") ?? false,
        Counted = from.OptionalNotes("counted"),
        TakenUp = TakenUpDocument.Read(from),
    };
}
