using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A form begun, as it is stored: only what was typed.</summary>
internal static class FormDocument
{
    public static readonly RecordForm<FormDraft> Form =
        new(CollectionNames.Forms, draft => draft.Form, (left, right) => string.CompareOrdinal(left.Form, right.Form), Write, Read);

    private static void Write(IFieldWriter to, FormDraft draft)
    {
        to.Text("_id", draft.Form);
        to.List("texts", draft.Texts, static (item, pair) =>
        {
            item.Text("field", pair.Key);
            item.Text("text", pair.Value);
        });
    }

    private static FormDraft Read(IFieldReader from) => new(
        from.Text("_id"),
        from.List("texts", static item => KeyValuePair.Create(item.Text("field"), item.Text("text"))).Sorted(StringComparer.Ordinal));
}
