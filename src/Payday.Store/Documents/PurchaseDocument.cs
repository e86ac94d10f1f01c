using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A card purchase as it is stored.</summary>
internal static class PurchaseDocument
{
    public static readonly RecordForm<CardPurchase> Form =
        new(CollectionNames.Purchases, purchase => purchase.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read)
        {
            IsNumbered = true,
            Mark = purchase => ((byte)purchase.Traits, RecordList.MarkOf(purchase).Pot),
        };

    private static void Write(IFieldWriter to, CardPurchase purchase)
    {
        to.Whole("_id", purchase.Number);
        to.Date("date", purchase.Date);
        to.OptionalText("pot", purchase.PotId?.Text);
        to.Amount("amount", purchase.Amount);
        to.Amount("owedBack", purchase.OwedBack);
        to.Text("what", purchase.What);
        to.Whole("firstMovement", purchase.FirstMovement);
        to.Whole("lastMovement", purchase.LastMovement);
        to.Flag("undone", purchase.Undone);
        TakenUpDocument.Write(to, purchase.TakenUp);
        to.OptionalWhole("whole", purchase.Whole);
        to.OptionalText("card", purchase.Card?.Text);
    }

    private static CardPurchase Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.Date("date"),
        from.OptionalText("pot") is { } pot ? new PotId(pot) : null,
        from.Amount("amount"),
        from.Amount("owedBack"),
        from.Text("what"),
        from.Whole("firstMovement"),
        from.Whole("lastMovement"))
    {
        Undone = from.Flag("undone"),
        TakenUp = TakenUpDocument.Read(from),
        Whole = from.OptionalWhole("whole"),
        Card = from.OptionalText("card") is { } card ? new DebtId(card) : null,
    };
}
