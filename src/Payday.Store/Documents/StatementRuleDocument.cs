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
    }

    private static StatementRule Read(IFieldReader from) => new(
        from.Text("_id"),
        new LineTarget(from.Choice("use", StoredChoices.LineUses), from.OptionalText("end") is { } end ? LedgerEnd.FromKey(end) : null));
}
