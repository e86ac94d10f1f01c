using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>Statements taken, as they are stored with their lines.</summary>
internal static class TakingDocument
{
    public static readonly RecordForm<TakingOfStatements> Form =
        new(CollectionNames.Takings, one => one.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read) { IsNumbered = true };

    private static void Write(IFieldWriter to, TakingOfStatements one)
    {
        to.Whole("_id", one.Number);
        to.List("statements", one.Statements, WriteStatement);
        to.List("lines", one.Lines, WriteLine);
        to.Whole("reconciliation", one.Reconciliation);
        to.OptionalFlag("undone", one.Undone ? true : null);
    }

    private static TakingOfStatements Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.List("statements", ReadStatement),
        from.List("lines", ReadLine),
        from.Whole("reconciliation"))
    {
        Undone = from.OptionalFlag("undone") ?? false,
    };

    private static void WriteStatement(IFieldWriter to, TakenStatement statement)
    {
        to.OptionalText("account", NoneIfEmpty(statement.Account));
        to.Date("from", statement.From);
        to.Date("to", statement.To);
        to.OptionalAmount("opening", statement.Opening);
        to.OptionalAmount("closing", statement.Closing);
        to.OptionalWhole("sequence", statement.Sequence);
    }

    private static TakenStatement ReadStatement(IFieldReader from) => new(from.OptionalText("account") ?? "", from.Date("from"), from.Date("to"))
    {
        Opening = from.OptionalAmount("opening"),
        Closing = from.OptionalAmount("closing"),
        Sequence = from.OptionalWhole("sequence"),
    };

    private static void WriteLine(IFieldWriter to, TakenLine line)
    {
        to.Date("date", line.Date);
        to.Amount("amount", line.Amount);
        to.OptionalText("party", NoneIfEmpty(line.Party));
        to.OptionalText("text", NoneIfEmpty(line.Text));
        to.OptionalText("bankId", NoneIfEmpty(line.BankId));
        to.OptionalText("mandate", NoneIfEmpty(line.Mandate));
        to.List("lines", line.Lines, static (item, number) => item.Whole("line", number));
        to.OptionalPart("wrote", line.Wrote, static (item, record) =>
        {
            item.Choice("kind", StoredChoices.WrittenKinds, record.Kind);
            item.Whole("number", record.Number);
        });
        to.OptionalFlag("wasLeft", line.WasLeft ? true : null);
    }

    private static TakenLine ReadLine(IFieldReader from) => new(from.Date("date"), from.Amount("amount"), from.OptionalText("party") ?? "", from.OptionalText("text") ?? "")
    {
        BankId = from.OptionalText("bankId") ?? "",
        Mandate = from.OptionalText("mandate") ?? "",
        Lines = from.List("lines", static item => item.Whole("line")),
        Wrote = from.OptionalPart("wrote", static item => new WrittenRecord(item.Choice("kind", StoredChoices.WrittenKinds), item.Whole("number"))),
        WasLeft = from.OptionalFlag("wasLeft") ?? false,
    };

    private static string? NoneIfEmpty(string text) => text.Length == 0 ? null : text;
}
