using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A rule for lines of statements, as it is stored.</summary>
internal static class StatementRuleDocument
{
    public static readonly RecordForm<StatementRule> Form =
        new(CollectionNames.StatementRules, rule => rule.Words, (left, right) => string.CompareOrdinal(left.Words, right.Words), Write, Read);

    private static void Write(IFieldWriter to, StatementRule rule)
    {
        to.Text("_id", rule.Words);
        to.Choice("use", StoredChoices.LineUses, rule.Target.Use);
        to.OptionalText("end", rule.Target.End?.Key);
        to.OptionalText("other", rule.Target.Other?.Key);
    }

    private static StatementRule Read(IFieldReader from) => new(
        from.Text("_id"),
        new LineTarget(from.Choice("use", StoredChoices.LineUses), End(from.OptionalText("end"))) { Other = End(from.OptionalText("other")) });

    private static LedgerEnd? End(string? key) => key is null ? null : LedgerEnd.FromKey(key);
}
