using Payday.Core.Books;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>Notes received, as they are stored.</summary>
internal static class ReceivedDocument
{
    public static readonly RecordForm<NotesReceived> Form =
        new(CollectionNames.Received, one => one.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read) { IsNumbered = true };

    private static void Write(IFieldWriter to, NotesReceived one)
    {
        to.Whole("_id", one.Number);
        to.Date("date", one.Date);
        to.Date("payday", one.Payday);
        to.Notes("got", one.Got);
        to.List("parts", one.Parts, static (item, part) =>
        {
            item.Text("pot", part.PotId.Text);
            item.OptionalDate("week", part.Week);
            item.Notes("notes", part.Notes);
        });
        to.Whole("firstMovement", one.FirstMovement);
        to.Whole("lastMovement", one.LastMovement);
        to.OptionalFlag("undone", one.Undone ? true : null);
    }

    private static NotesReceived Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.Date("date"),
        from.Date("payday"),
        from.Notes("got"),
        from.List("parts", static item => new ClosedPart(new(item.Text("pot")), item.OptionalDate("week"), item.Notes("notes"))),
        from.Whole("firstMovement"),
        from.Whole("lastMovement"))
    {
        Undone = from.OptionalFlag("undone") ?? false,
    };
}
