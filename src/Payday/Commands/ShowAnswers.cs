using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Histories;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Status;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>The parts that <c>payday show</c> can show.</summary>
internal static class ShowAnswers
{
    public static Answer Pots(Book book, LocalDate today)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Balances balances = book.Ledger.Balances;
        Dictionary<PotId, PotPlan> plans = PotPlan.Of(book).ToDictionary(plan => plan.Pot.Id);
        PotResult[] pots = [.. book.Household.Pots.Select(pot => new PotResult(
            pot.Name,
            Kind(pot.Kind),
            PotsReport.Place(pot),
            PotMoney.InItsPlace(balances, pot.Id).ToPlain(),
            balances[LedgerEnd.InAccount(Purpose.KeptBack(pot.Id))].ToPlain(),
            PotsReport.Target(book, pot, today)?.ToPlain(),
            plans.TryGetValue(pot.Id, out PotPlan? plan) ? new PotPlanResult(plan.Planned.ToPlain(), plan.Ahead.ToPlain(), plan.Lacks.ToPlain(), plan.Done is { } done ? LocalDatePattern.Iso.Format(done) : null) : null))];
        return new Answer.Done(
            [.. Report.Table(
                style,
                [Report.Names("Pot"), new("kind"), new("where"), Report.Amounts("has"), Report.Amounts("not in notes"), Report.Amounts("target"), new("full")],
                book.Household.Pots.Zip(pots, (pot, result) => ImmutableArray.Create(
                    result.Name, result.Kind, result.Held, Shown(book, result.Balance), Shown(book, result.KeptBack), result.Target is { } target ? Shown(book, target) : "",
                    plans.TryGetValue(pot.Id, out PotPlan? plan) ? PotPlanText.Done(plan) : ""))),
                .. PotPlanText.Notes(plans.Values, style).SelectMany(Report.Prose)],
            JsonSerializer.Serialize(new PotsResult(pots), ResultJson.Readable.PotsResult));
    }

    public static Answer Bills(Book book, LocalDate today)
    {
        ImmutableArray<OpenDue> dues = OpenDues.OfBills(
            book, book.Household.Holidays, today.PlusMonths(BillDues.MonthsAhead));
        BillResult[] bills = [.. book.Household.Bills.Select(bill =>
        {
            OpenDue? next = dues.FirstOrDefault(due => due.BillId == bill.Id);
            return new BillResult(
                bill.Name,
                book.Ledger.Balances[LedgerEnd.InAccount(Purpose.SetAside(bill.Id))].ToPlain(),
                next is null ? null : LocalDatePattern.Iso.Format(next.Date),
                bill.AmountOn(next?.Key.Scheduled ?? today).ToPlain());
        })];
        return new Answer.Done(
            [.. Report.Table(
                book.Household.Settings.Numbers,
                [Report.Names("Bill"), Report.Amounts("amount"), new("next due"), Report.Amounts("set aside")],
                bills.Select(bill => ImmutableArray.Create(bill.Name, Shown(book, bill.Amount), bill.NextDue is { } date ? DateText.Long(LocalDatePattern.Iso.Parse(date).Value) : "none", Shown(book, bill.Held))))],
            JsonSerializer.Serialize(new BillsResult(bills), ResultJson.Readable.BillsResult));
    }

    public static Answer Debts(Book book, LocalDate today)
    {
        DebtOutlook outlook = DebtOutlook.Of(book, today);
        NumberStyle style = book.Household.Settings.Numbers;
        Answer answer = DebtsCommand.Project(book.Household.Currency, style, outlook.From, outlook.Debts, "0", "0", book.Household.Settings.SurplusOrder);
        if (book.Household.Debts.IsEmpty || answer is not Answer.Done done)
        {
            return answer;
        }

        // For programs the projection is all; people see the way out beside it. What never ends is said above, and who decides below.
        DebtsAhead ahead = DebtsAhead.Of(book, today);
        return done with
        {
            Lines =
            [
                .. done.Lines.SkipLast(1),
                "",
                .. DebtsAheadReport.Table(ahead, style, Report.Width),
                "",
                .. DebtsAheadReport.HasWay(ahead) ? [.. DebtsAheadReport.Curves(ahead, today, style, Report.Width), ""] : Array.Empty<string>(),
                .. DebtsAheadReport.Notes(ahead, style).SelectMany(Report.Prose),
                .. DebtsAheadReport.EachPayday(ahead, Core.Outlooks.Outlook.Of(book, Core.Outlooks.Outlook.UsualPaydays), " (payday ahead)") is { Length: > 0 } each ? Report.Prose(each) : [],
                DebtsAheadReport.Caution,
            ],
        };
    }

    public static Answer Year(Book book, LocalDate today)
    {
        int year = today.Year;
        ImmutableArray<MonthSummary> months = MonthSummary.OfYear(book.Ledger, year, book.Household.Start, today, Roundings.Of(book));
        return new Answer.Done(
            [.. Pictured(book, today.ToYearMonth(), today), .. YearReport.Lines(months, year, book, Report.Width)],
            JsonSerializer.Serialize(
                new YearResult(year, [.. months.Select(month => new MonthResult(
                    month.Month.ToString("uuuu-MM", CultureInfo.InvariantCulture),
                    month.CameIn.ToPlain(),
                    month.Bills.ToPlain(),
                    month.DebtPayments.ToPlain(),
                    month.Interest.ToPlain(),
                    month.Fills.ToPlain(),
                    month.Spent.ToPlain(),
                    month.Owed.ToPlain(),
                    month.Rounding.ToPlain(),
                    month.Missing.ToPlain()))]),
                ResultJson.Readable.YearResult));
    }

    /// <summary>The months up to one, and their years: for people as the screen has them, for programs each month with where its money went.</summary>
    /// <param name="book">The book.</param>
    /// <param name="month">The last month that is shown.</param>
    /// <param name="today">The date.</param>
    public static Answer Months(Book book, YearMonth month, LocalDate today)
    {
        var flows = MonthFlows.Of(book);
        if (month < flows.First)
        {
            return Answer.Because($"The household begins in {flows.First.ToString("MMMM uuuu", CultureInfo.InvariantCulture)}.");
        }

        ImmutableArray<MonthFlow> all = flows.Between(flows.First, month.OnDayOfMonth(1));
        MonthWholeResult[] months = [.. all.Select(one => new MonthWholeResult(
            Iso(one.Month),
            one.Flow.CameIn.ToPlain(),
            one.Flow.WentOut.ToPlain(),
            one.Saved.ToPlain(),
            one.Owed.ToPlain(),
            flows.UsualOf(flow => flow.CameIn, one.Month)?.Amount.ToPlain(),
            flows.UsualOf(flow => flow.WentOut, one.Month)?.Amount.ToPlain(),
            [.. WhereItWent.Went(book, one.Flow).Select(to => new WentResult(to.Name, to.Amount.ToPlain(), flows.UsualTo(to.End, one.Month)?.Amount.ToPlain()))]))];
        YearWholeResult[] years = [.. all.Select(one => one.Month).GroupBy(one => one.Year, (year, its) => (Year: year, To: its.Max())).Select(year =>
        {
            Flow flow = flows.YearTo(year.To);
            return new YearWholeResult(year.Year, Iso(year.To), flow.CameIn.ToPlain(), flow.WentOut.ToPlain(), [.. WhereItWent.Went(book, flow).Select(to => new WentResult(to.Name, to.Amount.ToPlain(), null))]);
        })];
        return new Answer.Done([.. Pictured(book, month, today)], JsonSerializer.Serialize(new MonthsResult(months, years), ResultJson.Readable.MonthsResult));
    }

    private static string Iso(YearMonth month) => month.ToString("uuuu-MM", CultureInfo.InvariantCulture);

    private static IEnumerable<string> Pictured(Book book, YearMonth month, LocalDate today)
    {
        return
        [
            .. Report.Heading($"Where the money went in {MonthsReport.Title(month, today)}"), .. MonthsReport.Month(book, month, Report.Width), "",
            .. Report.Heading($"Where it went in {month.Year.ToString(CultureInfo.InvariantCulture)}"), .. MonthsReport.Year(book, month, Report.Width), "",
            .. Report.Heading("Income against outgoings"), .. MonthsReport.InAndOut(book, month, Report.Width), "",
            .. MonthsReport.Curves(book, month, Report.Width).SelectMany(curve => (IEnumerable<string>)[.. Report.Heading(curve.Heading), .. curve.Lines, ""]),
        ];
    }

    /// <summary>The ledger by what was done; each line of it where the whole or only a part is wanted.</summary>
    public static Answer Ledger(Book book, bool whole, string? about, string? dates)
    {
        Household household = book.Household;
        Result<MovementFilter> filter = Filter(household, about, dates);
        if (!filter.Ok)
        {
            return Answer.Wrong(filter.Fault, household.Settings.Numbers);
        }

        ImmutableArray<Movement> shown = [.. book.Ledger.Movements.Where(filter.Value.Takes)];
        MovementResult[] movements = [.. shown.Select(movement => new MovementResult(
            movement.Number,
            LocalDatePattern.Iso.Format(movement.Date),
            EndText.Of(household, movement.From),
            EndText.Of(household, movement.To),
            movement.Amount.ToPlain(),
            movement.Reason,
            movement.Payday is { } payday ? LocalDatePattern.Iso.Format(payday) : null,
            movement.Reverses))];
        return new Answer.Done(
            [.. !whole && filter.Value == new MovementFilter() ? LedgerReport.Groups(book) : shown.IsEmpty ? ["No ledger line is like that."] : LedgerReport.Lines(household, shown)],
            JsonSerializer.Serialize(new LedgerResult(movements), ResultJson.Readable.LedgerResult));
    }

    private static Result<MovementFilter> Filter(Household household, string? about, string? dates)
    {
        Result<LedgerSubject?> subject = about is null ? Result.Of<LedgerSubject?>(null)
            : NamedInput.Alone("--about", about).Among(SubjectText.All(household).Select(one => ((LedgerSubject?)one, SubjectText.Of(household, one), "")), "pot, bill, debt or income source");
        Result<DateSpan?> span = dates is null ? Result.Of<DateSpan?>(null) : DateSpan.Parse(dates, household.Settings.DateOrder).Map(days => (DateSpan?)days);
        return !span.Ok ? Result.Refused<MovementFilter>(new ArgumentFault.Of($"--dates {dates}", span.Fault!)) : subject.Map(one => new MovementFilter(one, span.Value));
    }

    private static string Kind(PotKind purpose) => purpose switch
    {
        PotKind.Spending => "spending",
        PotKind.Sinking => "sinking",
        PotKind.Ladder => "ladder",
        _ => "reserve",
    };

    private static string Shown(Book book, string plain) =>
        Money.ParsePlain(plain, book.Household.Currency).Value.ToString(book.Household.Settings.Numbers);
}
