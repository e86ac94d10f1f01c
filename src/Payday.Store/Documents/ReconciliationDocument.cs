using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A reconciliation as it is stored.</summary>
internal static class ReconciliationDocument
{
    public static readonly RecordForm<Reconciliation> Form =
        new(CollectionNames.Reconciliations, one => one.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read) { IsNumbered = true };

    private static void Write(IFieldWriter to, Reconciliation one)
    {
        to.Whole("_id", one.Number);
        to.Date("date", one.Date);
        to.Amount("balance", one.Balance);
        to.Amount("difference", one.Difference);
        to.List("atBank", one.AtBank, static (item, line) => item.Whole("line", line));
        to.OptionalFlag("undone", one.Undone ? true : null);
        to.OptionalText("name", one.Name.Length == 0 ? null : one.Name);
        to.OptionalWhole("ledgerTo", one.LastMovement);
    }

    private static Reconciliation Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.Date("date"),
        from.Amount("balance"),
        from.Amount("difference"),
        [.. from.List("atBank", static item => item.Whole("line"))])
    {
        Undone = from.OptionalFlag("undone") ?? false,
        Name = from.OptionalText("name") ?? "",
        LastMovement = from.OptionalWhole("ledgerTo"),
    };
}
