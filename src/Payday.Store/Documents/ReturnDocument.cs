using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A cash return as it is stored.</summary>
internal static class ReturnDocument
{
    public static readonly RecordForm<CashReturn> Form =
        new(CollectionNames.Returns, back => back.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read) { IsNumbered = true };

    private static void Write(IFieldWriter to, CashReturn back)
    {
        to.Whole("_id", back.Number);
        to.Date("date", back.Date);
        to.OptionalDate("payday", back.Payday);
        to.List("pots", back.Pots, static (item, pot) =>
        {
            item.Text("pot", pot.PotId.Text);
            item.Amount("amount", pot.Amount);
            item.OptionalNotes("notes", pot.Notes);
        });
        to.List("swaps", back.Swaps, static (item, swap) =>
        {
            item.Text("pot", swap.PotId.Text);
            item.OptionalText("with", swap.With?.Text);
            item.Notes("gives", swap.Gives);
            item.Notes("gets", swap.Gets);
        });
        to.List("settles", back.Settles, static (item, settle) =>
        {
            item.Choice("kind", StoredChoices.OwedKinds, settle.Item.Kind);
            item.Whole("number", settle.Item.Number);
            item.Amount("amount", settle.Amount);
        });
        to.Whole("firstMovement", back.FirstMovement);
        to.Whole("lastMovement", back.LastMovement);
        to.OptionalFlag("undone", back.Undone ? true : null);
    }

    private static CashReturn Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.Date("date"),
        from.OptionalDate("payday"),
        from.List("pots", static item => new ReturnedPot(new(item.Text("pot")), item.Amount("amount"), item.OptionalNotes("notes"))),
        from.List("swaps", static item => new NoteSwap(
            new(item.Text("pot")), item.OptionalText("with") is { } with ? new PotId(with) : null, item.Notes("gives"), item.Notes("gets"))),
        from.List("settles", static item => new SettledItem(
            new OwedKey(item.Choice("kind", StoredChoices.OwedKinds), item.Whole("number")), item.Amount("amount"))),
        from.Whole("firstMovement"),
        from.Whole("lastMovement"))
    {
        Undone = from.OptionalFlag("undone") ?? false,
    };
}
