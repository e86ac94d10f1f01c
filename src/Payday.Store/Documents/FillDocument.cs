using System.Text;
using LiteDB;
using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A fill of the wallet as it is stored.</summary>
internal static class FillDocument
{
    public static readonly RecordForm<WalletFill> Form = new(CollectionNames.Fills, fill => Id(fill.Key), InOrder, Write, Read);

    private static void Write(IFieldWriter to, WalletFill fill)
    {
        to.Derived("_id", Id(fill.Key));
        WriteMark(to, fill);
        to.OptionalPart("before", fill.Before, WriteMark);
    }

    private static void WriteMark(IFieldWriter to, WalletFill fill)
    {
        to.Date("payday", fill.Key.Payday);
        to.OptionalDate("week", fill.Key.Week);
        to.Text("pot", fill.Key.PotId.Text);
        to.Choice("state", StoredChoices.FillStates, fill.State);
        to.Date("date", fill.Date);
        to.Amount("amount", fill.Amount);
        to.OptionalWhole("movement", fill.Movement);
    }

    private static WalletFill Read(IFieldReader from)
    {
        WalletFill mark = ReadMark(from);

        // A second one is made only where it is needed: most were marked once.
        return from.OptionalPart("before", ReadMark) is { } before ? mark with { Before = before } : mark;
    }

    private static WalletFill ReadMark(IFieldReader from) => new(
        new FillKey(from.Date("payday"), from.OptionalDate("week"), new(from.Text("pot"))),
        from.Choice("state", StoredChoices.FillStates),
        from.Date("date"),
        from.Amount("amount"),
        from.OptionalWhole("movement"));

    private static int InOrder(WalletFill left, WalletFill right)
    {
        int order = left.Key.Payday.CompareTo(right.Key.Payday);
        order = order != 0 ? order : Nullable.Compare(left.Key.Week, right.Key.Week);
        return order != 0 ? order : left.Key.PotId.CompareTo(right.Key.PotId);
    }

    // The pot in hexadecimal, because ids of documents don't differ by case alone.
    private static string Id(FillKey key) =>
        $"{Bson.Of(key.Payday).AsString} {(key.Week is { } week ? Bson.Of(week).AsString : "-")} {Convert.ToHexString(Encoding.UTF8.GetBytes(key.PotId.Text))}";
}
