using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Core.Status;
using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Home;

/// <summary>What falls due until the next payday, and what was due and isn't ticked.</summary>
internal static class HomeDues
{
    private const int Fortnight = 13;
    private const int LongestName = 22;
    private const int DayWidth = 11;

    /// <summary>The lines.</summary>
    public static IEnumerable<FrameLine> Lines(Book book, LocalDate today, int width)
    {
        Result<LocalDate> next = Routine.Next(book);
        LocalDate to = next.Ok && next.Value > today ? next.Value.PlusDays(-1) : today.PlusDays(Fortnight);
        ImmutableArray<ComingDue> dues = ComingDues.Waiting(book, today, to);
        string until = to == today ? "today" : $"until {DateText.Weekday(to)}";
        return dues.IsEmpty
            ? [FrameLine.Headed(width, $"Nothing falls due {until}")]
            : [FrameLine.Headed(width, $"Due {until}", right: Money.Sum(dues.Select(due => due.Amount), book.Household.Currency).ToString(book.Household.Settings.Numbers)), .. Grid.Lay(Pieces(dues, book, today, width), width, across: true)];
    }

    private static ImmutableArray<FrameLine> Pieces(ImmutableArray<ComingDue> dues, Book book, LocalDate today, int width)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        int amounts = dues.Max(due => TextColumns.Width(due.Amount.ToString(style)));
        int names = Math.Clamp(dues.Max(due => TextColumns.Width(due.Name)), 1, Math.Clamp(Grid.Room(width).Width - DayWidth - amounts - 3, 1, LongestName));
        return
        [
            .. dues.Select(due =>
            {
                // Past, it waits to be ticked: its sign says so where there is no ink.
                bool isPast = due.Date < today;
                string day = TextColumns.PadRight(DateText.Weekday(due.Date), DayWidth);
                string name = TextColumns.PadRight(TextColumns.Truncate(due.Name, names), names);
                return FrameLine.Of((isPast ? "!" : " ") + day + name + " " + TextColumns.PadLeft(due.Amount.ToString(style), amounts), isPast ? Ink.Alert : Ink.Plain);
            }),
        ];
    }
}
