using System.Collections.Immutable;
using System.Text.Json;
using Humanizer;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Status;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>What is next, whether the money agrees, and what needs doing - in that order.</summary>
internal static class OverviewAnswer
{
    public static Answer Of(Book book, LocalDate today)
    {
        Household household = book.Household;
        NumberStyle style = household.Settings.Numbers;
        Result<LocalDate> next = Routine.Next(book);
        ImmutableArray<string> needs = [.. OverviewNeeds.Of(book), .. WeekNeeds.Of(book, today, NeedWays.Commands), .. WeekNeeds.Found(book, NeedWays.Commands)];
        Balances balances = book.Ledger.Balances;
        (Place Place, Purpose Purpose, Money Amount)[] purposes =
        [
            .. balances.PurposesIn(Place.Account).Select(purpose => (Place.Account, purpose.Purpose, purpose.Amount)),
            .. balances.PurposesIn(Place.Cash).Select(purpose => (Place.Cash, purpose.Purpose, purpose.Amount)),
        ];
        return new Answer.Done(
            [
                .. Report.Heading(household.Name, DateText.Long(today)),
                .. Report.Prose(next.Ok ? NextPayday(next.Value, today, book.Draft is not null) : FaultTexts.Of(next.Fault, book.Household.Settings.Numbers)),
                "",
                .. Purposes(household, style, "In the account", purposes.Where(purpose => purpose.Place == Place.Account), balances.In(Place.Account)),
                "",
                .. Purposes(household, style, "In cash", purposes.Where(purpose => purpose.Place == Place.Cash), balances.In(Place.Cash)),
                .. BookStatus.Of(book, today).Bank is { IsExplained: true } bank ? Report.Prose(ReconcileTexts.Whole(bank, style)) : [],
                "",
                .. needs.IsEmpty ? [BookStatus.Of(book, today).PaydayDue ? "Nothing else needs doing." : "Nothing needs doing."] : needs.SelectMany(need => Report.Prose("! " + need)),
            ],
            JsonSerializer.Serialize(
                new OverviewResult(
                    household.Name,
                    next.Ok ? LocalDatePattern.Iso.Format(next.Value) : null,
                    balances.In(Place.Account).ToPlain(),
                    balances.In(Place.Cash).ToPlain(),
                    [.. purposes.Select(purpose => new PurposeResult(
                        purpose.Place == Place.Account ? "account" : "cash", EndText.Of(household, purpose.Purpose), purpose.Amount.ToPlain()))],
                    needs),
                ResultJson.Readable.OverviewResult));
    }

    private static IEnumerable<string> Purposes(
        Household household, NumberStyle style, string title, IEnumerable<(Place Place, Purpose Purpose, Money Amount)> purposes, Money total) =>
        Report.Table(
            style,
            [Report.Names(title), Report.Amounts("")],
            purposes.Select(purpose => ImmutableArray.Create(EndText.Of(household, purpose.Purpose), purpose.Amount.ToString(style))),
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
