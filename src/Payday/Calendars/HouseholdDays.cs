using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Receiving;
using Payday.Core.Status;
using Payday.Text;

namespace Payday.Calendars;

/// <summary>The days of a household as events: paydays, fill days, bills and minimums.</summary>
internal static class HouseholdDays
{
    /// <summary>All of a span of dates, both ends included, by date.</summary>
    /// <remarks>
    /// A payday and a fill day are known by their date; a bill or minimum by whose it is and the date of its schedule, so it
    /// stays the same one where its amount changes, it is paid, or a weekend moves it.
    /// </remarks>
    public static ImmutableArray<DayEvent> Between(Book book, LocalDate from, LocalDate to) =>
    [
        .. book.Household.Paydays.Between(from, to).Select(payday => Payday(book.Household, payday))
            .Concat(new PayPeriod(from, to).FillDays(book.Household.Settings.FillDay).Select(day => FillDay(book, day)))
            .Concat(ComingDues.Between(book, from, to).GroupBy(due => due.Key).SelectMany(parts => parts.OrderBy(due => due.Paid).Select((due, part) => Due(book, due, part))))
            .OrderBy(one => one.Date),
    ];

    private static DayEvent Payday(Household household, ScheduledPayday payday)
    {
        IncomeSource[] sources = [.. household.Sources.Where(source => payday.Sources.Contains(source.Id))];
        return new DayEvent(
            "payday " + LocalDatePattern.Iso.Format(payday.Date),
            payday.Date,
            (payday.IsExtra ? "Extra payday: " : "Payday: ") + string.Join("; ", sources.Select(source => source.Name)),
            string.Join('\n', sources.Select(source => payday.Expected(source) is { IsPositive: true } expected
                ? $"{CleanText.OneLine(source.Name)}: {Said(household, expected)} expected"
                : $"{CleanText.OneLine(source.Name)}: amount not known yet")));
    }

    // What goes into the pots is known once the payday before is closed.
    private static DayEvent FillDay(Book book, LocalDate day)
    {
        Dictionary<PotId, string> names = book.Household.Pots.ToDictionary(pot => pot.Id, pot => pot.Name);
        IEnumerable<string> fills = book.Closed
            .Where(closed => closed.Parts.Any(part => part.Week == day))
            .SelectMany(closed => ReceivedNotes.Of(book, closed).Payday.Parts)
            .Where(part => part.Week == day && names.ContainsKey(part.PotId))
            .Select(part => $"{CleanText.OneLine(names[part.PotId])}: {Said(book.Household, part.Notes.Worth(book.Household.Currency))}");
        return new DayEvent("fill day " + LocalDatePattern.Iso.Format(day), day, "Fill the wallet", string.Join('\n', fills));
    }

    // One paid in part is two with the same key: the rest, which goes on as the event that it was, and what is paid.
    private static DayEvent Due(Book book, ComingDue due, int part)
    {
        string key = due.Key.Bill is { } bill ? "bill " + bill.Text : "minimum " + due.Key.Debt!.Value.Text;
        string what = due.Paid ? "paid" : due.Kind == DueKind.Minimum ? "minimum due" : "due";
        return new DayEvent(
            $"{key} {LocalDatePattern.Iso.Format(due.Key.Scheduled)}" + (part == 0 ? "" : $" {part}"),
            due.Date,
            $"{due.Name}: {what}",
            Said(book.Household, due.Amount));
    }

    private static string Said(Household household, Money amount) => $"{amount.ToString(household.Settings.Numbers)} {amount.Currency.Code}";
}
