using Payday.Core.Ledgers;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A movement as it is stored.</summary>
internal static class MovementDocument
{
    public static readonly RecordForm<Movement> Form =
        new(CollectionNames.Movements, movement => movement.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read);

    private static void Write(IFieldWriter to, Movement movement)
    {
        to.Whole("_id", movement.Number);
        to.Date("date", movement.Date);
        to.Text("from", movement.From.Key);
        to.Text("to", movement.To.Key);
        to.Amount("amount", movement.Amount);
        to.Text("reason", movement.Reason);
        to.OptionalDate("payday", movement.Payday);
        to.OptionalWhole("reverses", movement.Reverses);
    }

    private static Movement Read(IFieldReader from) => new(
        from.Whole("_id"),
        from.Date("date"),
        from.End("from"),
        from.End("to"),
        from.Amount("amount"),
        from.Text("reason"),
        from.OptionalDate("payday"),
        from.OptionalWhole("reverses"));
}
