using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Ids;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What happens between paydays, in words.</summary>
internal static class WeekText
{
    /// <summary>A pot's name; its id where the household has it no more.</summary>
    public static string PotName(Book book, PotId? potId) =>
        potId is null ? "Buffer" : book.Household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId.Value.Text;

    /// <summary>An open difference in a sentence.</summary>
    public static string Difference(Book book, WeekCount count)
    {
        bool missing = count.Difference.IsPositive;
        Money amount = missing ? count.Difference : -count.Difference;
        return $"{amount.ToString(book.Household.Settings.Numbers)} {(missing ? "missing from" : "found in")} {PotName(book, count.PotId)} "
            + $"since the count of {DateText.Weekday(count.Date)}: {CleanText.OneLine(count.DifferenceName)}.";
    }

    /// <summary>What is said of a purchase that its pot had no money for yet on its day; null where it had.</summary>
    public static string? Early(Book book, CardPurchase purchase) => EarlyPurchase.PaidOn(book, purchase) is { } day
        ? CleanText.OneLine($"{PotName(book, purchase.PotId)} hadn't that much by {DateText.Day(purchase.Date)}; what it got by {DateText.Day(day)} pays for it")
        : null;
}
