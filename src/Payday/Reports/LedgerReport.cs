using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Text;

namespace Payday.Reports;

/// <summary>The movements of the ledger, each whole: no end of one is ever cut.</summary>
internal static class LedgerReport
{
    private const int Gap = 2;

    /// <summary>What was done, a line each under its date in the order of days, without the single movements.</summary>
    public static IEnumerable<string> Groups(Book book)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        LocalDate? day = null;
        foreach (LedgerGroup group in DayOrder.Of(LedgerGroups.Of(book), group => group.Date))
        {
            if (group.Date != day)
            {
                if (day is not null)
                {
                    yield return "";
                }

                day = group.Date;
                yield return DateText.Long(group.Date);
            }

            string amount = LedgerGroupText.Amount(book, group)?.ToString(style) ?? "";
            string[] lines = [.. TextWrap.Lines(LedgerGroupText.Of(book, group), Report.Width - Gap - (amount.Length == 0 ? 0 : TextColumns.Width(amount) + Gap))];
            for (int i = 0; i < lines.Length; i++)
            {
                yield return (i == 0 ? TextColumns.Ends(new string(' ', Gap) + lines[i], amount, Report.Width) : new string(' ', 2 * Gap) + lines[i]).TrimEnd();
            }
        }
    }

    /// <summary>Movements under their dates, in the order of days; those of a day by number.</summary>
    public static IEnumerable<string> Lines(Household household, ImmutableArray<Movement> movements)
    {
        NumberStyle style = household.Settings.Numbers;
        int numbers = movements.Select(movement => Number(movement).Length).DefaultIfEmpty().Max();
        int amounts = movements.Select(movement => movement.Amount.ToString(style).Length).DefaultIfEmpty().Max();
        LocalDate? day = null;
        foreach (Movement movement in DayOrder.Of(movements, movement => movement.Date))
        {
            if (movement.Date != day)
            {
                if (day is not null)
                {
                    yield return "";
                }

                day = movement.Date;
                yield return DateText.Long(movement.Date);
            }

            string start = TextColumns.PadLeft(Number(movement), numbers + Gap)
                + TextColumns.PadLeft(movement.Amount.ToString(style), amounts + Gap) + "  ";
            foreach (string line in Ends(household, movement, Report.Width - start.Length))
            {
                yield return start + line;
                start = new string(' ', start.Length);
            }
        }
    }

    private static string Number(Movement movement) => movement.Number.ToString(CultureInfo.InvariantCulture);

    // On one line where that fits, else the second end under the first.
    private static IEnumerable<string> Ends(Household household, Movement movement, int width)
    {
        string from = CleanText.OneLine(EndText.Of(household, movement.From));
        string to = "-> " + CleanText.OneLine(EndText.Of(household, movement.To));
        return TextColumns.Width(from) + 1 + TextColumns.Width(to) <= width
            ? [$"{from} {to}"]
            : [.. TextWrap.Lines(from, width), .. TextWrap.Lines(to, width)];
    }
}
