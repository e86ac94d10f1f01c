using System.Globalization;
using System.Text;

namespace Payday;

/// <summary>
/// What a bank that is made up exports of the months of a household that is made up: a file a month, as CSV with a running balance.
/// A wage, rent, power, internet that went up, a loan, a locker that was given up, food and the market each week, cash twice a month.
/// </summary>
internal static class HalfYearExport
{
    private const int Months = 7;

    /// <summary>The files of the six whole months before a day and of the days of its own month before it, the earliest first.</summary>
    public static IEnumerable<(string Name, string Text)> Before(DateOnly today)
    {
        var first = new DateOnly(today.Year, today.Month, 1);
        decimal balance = 1500m;
        for (DateOnly month = first.AddMonths(1 - Months); month <= first; month = month.AddMonths(1))
        {
            var text = new StringBuilder("Date;Name;Text;Amount;Currency;Balance\n");
            foreach ((DateOnly day, decimal amount, string name, string what) in Lines(month, first).Where(line => line.Day < today).OrderBy(line => line.Day))
            {
                balance += amount;
                text.Append(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd};{name};{what};{Written(amount)};EUR;{Written(balance)}\n");
            }

            yield return (month.ToString("yyyy-MM", CultureInfo.InvariantCulture) + ".csv", text.ToString());
        }
    }

    private static IEnumerable<(DateOnly Day, decimal Amount, string Name, string What)> Lines(DateOnly month, DateOnly last)
    {
        int before = (12 * (last.Year - month.Year)) + last.Month - month.Month;
        yield return (On(month, 25), 1840.50m, "Tidewater Works", "Pay");
        yield return (On(month, 1), -640m, "NORTHLANE RENT 0042", "Flat 3");
        yield return (On(month, 8), -58m - (before % 3), "Brightwire Power", $"Meter {before}17");
        yield return (On(month, 12), before >= 3 ? -30m : -34m, "Farnet Internet", "Contract 7781");
        yield return (On(month, 15), -120m, "Harbour Loan Office", "Loan 12");
        yield return (new DateOnly(month.Year, month.Month, 6), -100m, "Cash machine pier", "Cash withdrawal");
        yield return (new DateOnly(month.Year, month.Month, 20), -100m, "Cash machine pier", "Cash withdrawal");
        if (before >= 4)
        {
            yield return (On(month, 3), -42m, "Storage Locker", "Box 9");
        }

        for (DateOnly day = month; day < month.AddMonths(1); day = day.AddDays(1))
        {
            if (day.DayOfWeek == DayOfWeek.Saturday)
            {
                yield return (day, -38.35m - (day.DayNumber / 7 * 5 % 13), $"Corner Grocer {100 + day.Day}", "Card");
            }
            else if (day.DayOfWeek == DayOfWeek.Wednesday)
            {
                yield return (day, -19.80m - (day.DayNumber / 7 * 4 % 11), "Millers Market", "Card");
            }
        }
    }

    // A bank books on working days.
    private static DateOnly On(DateOnly month, int day)
    {
        var date = new DateOnly(month.Year, month.Month, day);
        return date.AddDays(date.DayOfWeek switch { DayOfWeek.Saturday => 2, DayOfWeek.Sunday => 1, _ => 0 });
    }

    private static string Written(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture).Replace('.', ',');
}
