using Payday.Charts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Outlooks;
using Payday.Reports;
using Payday.Screens.Frames;

namespace Payday.Screens.Home;

/// <summary>The account over the coming paydays as a line, where there is room for it.</summary>
internal sealed class HomeOutlook
{
    private const int Paydays = 13;
    private const int LeastHeight = 4;
    private const int AxisHeight = 1;
    private const int MostHeight = 10;

    // The same book is drawn at every key.
    private (Book Book, Result<Outlook> Outlook)? known;

    /// <summary>The lines; none where there is too little room, or nothing to look ahead to.</summary>
    /// <param name="book">The book.</param>
    /// <param name="width">The width of the screen, in columns.</param>
    /// <param name="room">How many lines are left.</param>
    public IEnumerable<FrameLine> Lines(Book book, int width, int room)
    {
        if (room <= LeastHeight || !(Remembered(book) is { Ok: true, Value: { Paydays.Length: > 1 } outlook }))
        {
            return [];
        }

        return
        [
            FrameLine.Headed(width, $"The account over the next {outlook.Paydays.Length} paydays", "before each pay"),
            .. LineChart.Lines([.. outlook.Paydays.Select(payday => payday.AccountAfter)], width - 2, Math.Min(room - 1 - AxisHeight, MostHeight), book.Household.Settings.Numbers, time: OutlookReport.Time(outlook)).Select(line => FrameLine.Of(" " + line)),
        ];
    }

    private Result<Outlook> Remembered(Book book)
    {
        if (known is not { } last || !ReferenceEquals(last.Book, book))
        {
            known = last = (book, Outlook.Of(book, Paydays));
        }

        return last.Outlook;
    }
}
