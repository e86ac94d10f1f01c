using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
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

    /// <summary>Where what is rounded of a purchase goes, e.g. <c>, 1.60 of it rounding for the buffer</c>; empty where nothing is.</summary>
    /// <param name="parts">The purchase with all its parts, or some of them.</param>
    /// <param name="style">How numbers are written.</param>
    public static string Rounding(IEnumerable<CardPurchase> parts, NumberStyle style)
    {
        Money[] rounded = [.. parts.Where(part => part.OwedBack > part.Amount && part.Amount.IsPositive).Select(part => part.OwedBack - part.Amount)];
        return rounded.Length == 0 ? "" : $", {Money.Sum(rounded, rounded[0].Currency).ToString(style)} of it rounding for the buffer";
    }

    /// <summary>What is said once cash is at the bank.</summary>
    /// <param name="before">The book before.</param>
    /// <param name="after">The book with the cash return.</param>
    /// <param name="total">What went to the bank.</param>
    public static string Returned(Book before, Book after, Money total)
    {
        NumberStyle style = after.Household.Settings.Numbers;
        Money rounding = Roundings.Between(before, after);
        return $"{total.ToString(style)} is back in the account{(rounding.IsZero ? "" : $", {rounding.ToString(style)} of it rounding, in the buffer now")}.";
    }

    /// <summary>What is said of a purchase that its pot had no money for yet on its day; null where it had.</summary>
    public static string? Early(Book book, CardPurchase purchase) => EarlyPurchase.PaidOn(book, purchase) is { } day
        ? CleanText.OneLine($"{PotName(book, purchase.PotId)} hadn't that much by {DateText.Day(purchase.Date)}; what it got by {DateText.Day(day)} pays for it")
        : null;
}
