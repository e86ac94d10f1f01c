using System.Collections.Immutable;
using System.Text.Json;
using Humanizer;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Weeks;
using Payday.Json;
using Payday.Reports;
using Payday.Text;

namespace Payday.Commands;

/// <summary>What is next, whether the money agrees, and what needs a hand - in that order.</summary>
internal static class OverviewAnswer
{
    public static Answer Of(Book book, LocalDate today)
    {
        Household household = book.Household;
        NumberStyle style = household.Settings.Numbers;
        Read<LocalDate> next = Routine.Next(book);
        ImmutableArray<string> hands = [.. OverviewHands.Of(book), .. WeekHands.Of(book, today, HandWays.Commands)];
        Balances balances = book.Ledger.Balances;
        (Place Place, Job Job, Money Amount)[] jobs =
        [
            .. balances.JobsIn(Place.Account).Select(job => (Place.Account, job.Job, job.Amount)),
            .. balances.JobsIn(Place.Cash).Select(job => (Place.Cash, job.Job, job.Amount)),
        ];
        return new Answer.Done(
            [
                .. Report.Heading(household.Name, DateText.Long(today)),
                .. Report.Prose(next.Ok ? NextPayday(next.Value, today, book.Draft is not null) : next.Fault),
                "",
                .. Jobs(household, style, "In the account", jobs.Where(job => job.Place == Place.Account), balances.In(Place.Account)),
                "",
                .. Jobs(household, style, "In cash", jobs.Where(job => job.Place == Place.Cash), balances.In(Place.Cash)),
                "",
                .. hands.IsEmpty ? [BookStatus.Of(book, today).PaydayDue ? "Nothing else needs a hand." : "Nothing needs a hand."] : hands.SelectMany(hand => Report.Prose("! " + hand)),
            ],
            JsonSerializer.Serialize(
                new OverviewResult(
                    household.Name,
                    next.Ok ? LocalDatePattern.Iso.Format(next.Value) : null,
                    balances.In(Place.Account).ToPlain(),
                    balances.In(Place.Cash).ToPlain(),
                    [.. jobs.Select(job => new JobResult(
                        job.Place == Place.Account ? "account" : "cash", EndText.Of(household, job.Job), job.Amount.ToPlain()))],
                    hands),
                ResultJson.Readable.OverviewResult));
    }

    private static IEnumerable<string> Jobs(
        Household household, NumberStyle style, string title, IEnumerable<(Place Place, Job Job, Money Amount)> jobs, Money total) =>
        Report.Table(
            style,
            [Report.Names(title), Report.Amounts("")],
            jobs.Select(job => ImmutableArray.Create(EndText.Of(household, job.Job), job.Amount.ToString(style))),
            [["Together", total.ToString(style)]]);

    private static string NextPayday(LocalDate date, LocalDate today, bool begun)
    {
        int days = Period.DaysBetween(today, date);
        string when = days switch
        {
            0 => "today",
            > 0 => $"in {"day".ToQuantity(days)}",
            _ => $"{"day".ToQuantity(-days)} ago",
        };
        return $"Next payday: {DateText.Long(date)}, {when}. {(begun ? "It is begun; see payday run." : "Do it with payday run.")}";
    }
}
