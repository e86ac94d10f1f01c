using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A move as it is stored.</summary>
internal static class MoveDocument
{
    public static readonly RecordForm<Move> Form =
        new(CollectionNames.Moves, move => move.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read) { IsNumbered = true };

    private static void Write(IFieldWriter to, Move move)
    {
        to.Whole("_id", move.Number);
        to.Date("date", move.Date);
        to.Text("from", move.From.Key);
        to.Text("to", move.To.Key);
        to.Amount("amount", move.Amount);
        to.Text("why", move.Why);
        to.OptionalNotes("notes", move.Notes);
        to.Whole("firstMovement", move.FirstMovement);
        to.Whole("lastMovement", move.LastMovement);
        to.OptionalFlag("undone", move.Undone ? true : null);
        TakenUpDocument.Write(to, move.TakenUp);
    }

    private static Move Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.Date("date"),
        from.End("from"),
        from.End("to"),
        from.Amount("amount"),
        from.Text("why"),
        from.OptionalNotes("notes"),
        from.Whole("firstMovement"),
        from.Whole("lastMovement"))
    {
        Undone = from.OptionalFlag("undone") ?? false,
        TakenUp = TakenUpDocument.Read(from),
    };
}
