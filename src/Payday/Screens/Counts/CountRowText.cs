using Payday.Core.Amounts;
using Payday.Core.Counts;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Counts;

/// <summary>What should be there of a pot that is counted, and what of it is missing, was found, or is still open from earlier counts.</summary>
internal static class CountRowText
{
    public static string Of(BookSession session, CountRow row)
    {
        return $"{row.Pot.Name}: {Shown(row.Expected)} should be there{StillOwed()}, {Since()}.{Difference()}{Open()}";

        string StillOwed() => row.StillOwed.IsPositive ? $" beside the {Shown(row.StillOwed)} to pay back to the account" : "";

        string Since() => row.Since is { } since ? $"since the count of {DateText.Weekday(since)}" : "not counted before";

        string Difference() => row.Difference.IsZero
            ? ""
            : $" {Shown(row.Difference.IsNegative ? -row.Difference : row.Difference)} {(row.Difference.IsNegative ? "found" : "missing")}: {row.Entry!.DifferenceName}.";

        string Open() => string.Concat(Differences.Open(session.Book)
            .Where(count => count.PotId == row.Pot.Id)
            .Select(count => " " + WeekText.Difference(session.Book, count)));

        string Shown(Money amount) => amount.ToString(session.Style);
    }
}
