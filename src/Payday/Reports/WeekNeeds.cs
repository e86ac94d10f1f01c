using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Fills;
using Payday.Core.Status;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>What waits between paydays, with what leads to it.</summary>
internal static class WeekNeeds
{
    /// <summary>A sentence each; none where nothing waits.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">The date.</param>
    /// <param name="ways">What leads to each.</param>
    public static IEnumerable<string> Of(Book book, LocalDate today, NeedWays ways)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        BookStatus status = BookStatus.Of(book, today);
        if (status.CountOpenSince is { } week)
        {
            int pots = CountWeeks.Open(book, today)[0].PotIds.Length;
            yield return $"{"spending pot".ToQuantity(pots)} to count for the week of {DateText.Weekday(week)}{ways.Count}.";
        }

        if (status.FillsWaiting > 0)
        {
            ImmutableArray<FillPart> waiting = WalletFills.Waiting(book, today);
            string fetch = ToFetch.Of(book) is { } notes ? $"Fetch {notes.ToString(style)} from the bank with the slip{ways.Slip}, then fill the wallet" : "Fill the wallet";
            yield return $"{fetch}{ways.Fill}: {"pot".ToQuantity(waiting.Length)}, {FillText.Together(waiting, book.Household.Currency, style)}.";
        }

        if (status.OwedBack.IsPositive)
        {
            yield return $"{status.OwedBack.ToString(style)} in cash to pay back to the account{ways.Return}.";
        }

        foreach (PaymentToMake payment in PaymentToMake.Of(book))
        {
            yield return $"Pay {payment.Amount.ToString(style)} to {CleanText.OneLine(EndText.Debt(book.Household, payment.DebtId))} yourself{ways.Extra}.";
        }

        if (status.Bank is { IsExplained: false } bank)
        {
            yield return $"{ReconcileTexts.Of(bank, style)}{ways.Bank}.";
        }

        foreach (WeekCount missing in Differences.Open(book).Where(open => open.Difference.IsPositive))
        {
            yield return Difference(book, missing, ways);
        }
    }

    /// <summary>What counts found and nobody cleared up: it may be, but nothing is wrong with it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="ways">What leads to each.</param>
    public static IEnumerable<string> Found(Book book, NeedWays ways) =>
        Differences.Open(book).Where(open => open.Difference.IsNegative).Select(open => Difference(book, open, ways));

    private static string Difference(Book book, WeekCount open, NeedWays ways) => $"{WeekText.Difference(book, open).TrimEnd('.')}{ways.Difference}.";
}
