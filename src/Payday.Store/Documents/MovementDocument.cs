using NodaTime;
using Payday.Core.Ledgers;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A movement as it is stored.</summary>
internal static class MovementDocument
{
    public static readonly RecordForm<Movement> Form =
        new(CollectionNames.Movements, movement => movement.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read);

    /// <summary>Reads packed movements as columns.</summary>
    /// <exception cref="Exception">Anything: they are no movements, or one is missing.</exception>
    public static MovementColumns ReadColumns(PackedReader from)
    {
        int count = from.Count();
        var columns = new MovementColumns(from.Currency, count, from.AllTexts);
        var ends = new Dictionary<int, int>();
        for (int number = 1; number <= count; number++)
        {
            if (from.Whole("_id") != number)
            {
                throw new FormatException($"Movement {number} is missing.");
            }

            LocalDate date = from.Date("date");
            (int, int) between = (End("from"), End("to"));
            columns.Add(date, between, from.Whole("amount"), from.TextIndex("reason"), from.OptionalDate("payday"), from.OptionalWhole("reverses"));
        }

        return columns;

        int End(string name)
        {
            int text = from.TextIndex(name);
            if (!ends.TryGetValue(text, out int end))
            {
                ends[text] = end = columns.NumberOf(LedgerEnd.FromKey(from.AllTexts[text]));
            }

            return end;
        }
    }

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
