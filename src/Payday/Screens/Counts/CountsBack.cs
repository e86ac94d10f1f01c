using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Counts;

/// <summary>Which counts can be taken back: those confirmed last, all together, or the last one of a pot.</summary>
internal static class CountsBack
{
    /// <summary>The screen that picks them; null where no count stands.</summary>
    public static PickScreen<ImmutableArray<WeekCount>>? Picks(BookSession session)
    {
        ImmutableArray<WeekCount> last = CountUndo.Last(session.Book);
        if (last.IsEmpty)
        {
            return null;
        }

        IEnumerable<WeekCount> ofPots = session.Book.Household.Pots
            .Select(pot => session.Book.Weeks.LastCountOf(pot.Id))
            .OfType<WeekCount>()
            .Where(count => last.Length > 1 || count != last[0]);
        return new PickScreen<ImmutableArray<WeekCount>>(
            "Take back which count",
            [
                new PickItem<ImmutableArray<WeekCount>>(last, last.Length == 1 ? WeekText.PotName(session.Book, last[0].PotId) : $"The last count, {"pot".ToQuantity(last.Length)}", DateText.Weekday(last[0].Date)),
                .. ofPots.Select(count => new PickItem<ImmutableArray<WeekCount>>([count], WeekText.PotName(session.Book, count.PotId), DateText.Weekday(count.Date))),
            ],
            last,
            counts => new Way.To(Question(session, counts)));
    }

    /// <summary>The question whether to take counts back, one of a pot or those of one day together.</summary>
    public static TakeBackScreen Question(BookSession session, ImmutableArray<WeekCount> counts)
    {
        string pots = counts.Select(count => $"{WeekText.PotName(session.Book, count.PotId)} with {count.Left.ToString(session.Style)} left").InWords();
        return new TakeBackScreen(
            session,
            $"Take back the count of {DateText.Weekday(counts[0].Date)}",
            [
                $"{DateText.Long(counts[0].Date)}: {pots}.",
                "It will be as if it had not been counted: what was spent, missing or went to another is in the pot again, and fills that were taken as done wait again.",
                "What was entered stays for the next count. The lines stay in the ledger beside their reverses.",
            ],
            () => CountUndo.InTheWay(session.Book, counts),
            () => CountUndo.Of(session.Book, counts, session.Today),
            "The count is taken back; w goes on with what was entered.",
            endsAtHome: true);
    }
}
