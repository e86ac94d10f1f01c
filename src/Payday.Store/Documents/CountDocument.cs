using Payday.Core.Books;
using Payday.Core.Pots;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A confirmed count as it is stored.</summary>
internal static class CountDocument
{
    public static readonly RecordForm<WeekCount> Form =
        new(CollectionNames.Counts, count => count.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read)
        {
            IsNumbered = true,
            Mark = count => ((byte)count.Traits, RecordList.MarkOf(count).Pot),
        };

    public static void WriteTarget(IFieldWriter to, MoveTarget target)
    {
        to.Choice("target", StoredChoices.Targets, target.Kind);
        to.Text("id", target.IdText);
    }

    public static MoveTarget ReadTarget(IFieldReader from)
    {
        PlacementTarget target = from.Choice("target", StoredChoices.Targets);
        string id = from.Text("id");
        return target switch
        {
            PlacementTarget.Debt => MoveTarget.Debt(new(id)),
            PlacementTarget.Pot => MoveTarget.Pot(new(id)),
            PlacementTarget.Bill => MoveTarget.Bill(new(id)),
            _ => MoveTarget.Buffer,
        };
    }

    private static void Write(IFieldWriter to, WeekCount count)
    {
        to.Whole("_id", count.Number);
        to.Date("date", count.Date);
        to.Date("week", count.Week);
        to.Text("pot", count.PotId.Text);
        to.OptionalDate("since", count.Since);
        to.Amount("before", count.Before);
        to.Amount("filled", count.Filled);
        to.Amount("owedBack", count.OwedBack);
        to.Amount("moved", count.Moved);
        to.Amount("left", count.Left);
        to.OptionalNotes("notes", count.Notes);
        to.Amount("spent", count.Spent);
        to.Amount("difference", count.Difference);
        to.Text("differenceName", count.DifferenceName);
        to.OptionalPart("movesOnTo", count.MovesOnTo, WriteTarget);
        to.Whole("firstMovement", count.FirstMovement);
        to.Whole("lastMovement", count.LastMovement);
        to.OptionalWhole("move", count.Move);

        // A count of an earlier version has none of these.
        to.OptionalWhole("together", count.Together);
        to.OptionalFlag("undone", count.Undone ? true : null);
        TakenUpDocument.Write(to, count.TakenUp);
    }

    private static WeekCount Read(IFieldReader from)
    {
        long number = from.Whole("_id");
        return new(
            number,
            from.Date("date"),
            from.Date("week"),
            new(from.Text("pot")),
            from.OptionalDate("since"),
            from.Amount("before"),
            from.Amount("filled"),
            from.Amount("owedBack"),
            from.Amount("moved"),
            from.Amount("left"),
            from.OptionalNotes("notes"),
            from.Amount("spent"),
            from.Amount("difference"),
            from.Text("differenceName"),
            from.OptionalPart("movesOnTo", ReadTarget),
            from.Whole("firstMovement"),
            from.Whole("lastMovement"),
            from.OptionalWhole("move"))
        {
            Together = from.OptionalWhole("together") ?? number,
            Undone = from.OptionalFlag("undone") ?? false,
            TakenUp = TakenUpDocument.Read(from),
        };
    }
}
