using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Undo;

/// <summary>The record that a movement was written for.</summary>
/// <param name="Kind">What sort of record.</param>
/// <param name="Name">What a sentence calls it, e.g. <c>card purchase 3</c>.</param>
/// <param name="PotId">The pot of a count or a fill; null for anything else.</param>
public sealed record MovementOwner(ObstacleKind Kind, string Name, PotId? PotId = null)
{
    /// <summary>The record that stands and that a movement belongs to, other than a closed payday; null where there is none.</summary>
    public static MovementOwner? Of(Book book, long movement)
    {
        ArgumentNullException.ThrowIfNull(book);
        WeekRecords weeks = book.Weeks;
        if (weeks.StandingReturns.FirstOrDefault(back => back.FirstMovement <= movement && movement <= back.LastMovement) is { } back)
        {
            return back.Payday is { } payday
                ? new MovementOwner(ObstacleKind.Payday, $"the payday of {PlainDates.DayMonthYear(payday)}")
                : new MovementOwner(ObstacleKind.Return, $"the cash return of {PlainDates.DayMonthYear(back.Date)}");
        }

        if (weeks.Settled.FirstOrDefault(settled => settled.Movement == movement) is { } settled)
        {
            return new MovementOwner(ObstacleKind.Difference, $"the difference of count {settled.Count}");
        }

        if (weeks.StandingCounts.FirstOrDefault(count => count.Move == movement || (count.FirstMovement <= movement && movement <= count.LastMovement)) is { } count)
        {
            return new MovementOwner(ObstacleKind.Count, NameOf(book, count), count.PotId);
        }

        if (weeks.StandingPurchases.FirstOrDefault(purchase => purchase.FirstMovement <= movement && movement <= purchase.LastMovement || purchase.TakenUp.Movements.Contains(movement)) is { } purchase)
        {
            return new MovementOwner(ObstacleKind.Purchase, $"card purchase {purchase.Number}");
        }

        return weeks.Fills.FirstOrDefault(fill => fill.Movement == movement) is { } fill
            ? new MovementOwner(ObstacleKind.Fill, NameOf(book, fill.Key), fill.Key.PotId)
            : null;
    }

    internal static string NameOf(Book book, WeekCount count) => $"the count of {PotName(book, count.PotId)} on {PlainDates.DayMonthYear(count.Date)}";

    internal static string NameOf(Book book, FillKey key) => $"the fill of {PotName(book, key.PotId)} for {PlainDates.DayMonthYear(key.Day)}";

    internal static string PotName(Book book, PotId potId) => book.Household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId.Text;
}
