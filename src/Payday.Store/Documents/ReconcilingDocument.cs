using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A reconciliation begun, as it is stored: only what was entered.</summary>
internal static class ReconcilingDocument
{
    public static readonly RecordForm<ReconciliationDraft> Form =
        new(CollectionNames.Reconciling, draft => Bson.Of(draft.Date), (left, right) => left.Date.CompareTo(right.Date), Write, Read);

    private static void Write(IFieldWriter to, ReconciliationDraft draft)
    {
        to.Date("_id", draft.Date);
        to.OptionalAmount("balance", draft.Balance);
        to.List("atBank", draft.AtBank, static (item, line) => item.Whole("line", line));
        to.OptionalText("name", draft.Name);
    }

    private static ReconciliationDraft Read(IFieldReader from) => new(
        from.Date("_id"),
        from.OptionalAmount("balance"),
        [.. from.List("atBank", static item => item.Whole("line"))])
    {
        Name = from.OptionalText("name"),
    };
}
