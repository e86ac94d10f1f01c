using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Core.Status;

namespace Payday.Reports;

/// <summary>A month or year of a household, as it is read, printed and drawn.</summary>
/// <param name="Household">Its name; empty where it has none.</param>
/// <param name="Period">The month or year.</param>
/// <param name="Today">The day on which it is made.</param>
/// <param name="Currency">Of every amount.</param>
/// <param name="Style">How numbers are written.</param>
/// <param name="CameIn">Into the account and cash, and what is held against it.</param>
/// <param name="Went">Where money went.</param>
/// <param name="BesideName">What is held against: <c>usual</c>, or the year before.</param>
/// <param name="Months">Up to twelve months, to the period's end.</param>
/// <param name="Curve">All months since the household began, to the period's end.</param>
/// <param name="SetAside">What is set aside today.</param>
/// <param name="Dues">What is to be paid next, from today on.</param>
/// <param name="DuesTo">Up to when.</param>
internal sealed record PeriodReport(
    string Household,
    ReportPeriod Period,
    LocalDate Today,
    Currency Currency,
    NumberStyle Style,
    WentRow CameIn,
    WhereItWent Went,
    string BesideName,
    ImmutableArray<MonthFlow> Months,
    ImmutableArray<MonthFlow> Curve,
    ImmutableArray<SetAsideGlance> SetAside,
    ImmutableArray<ComingDue> Dues,
    LocalDate DuesTo)
{
    private const int MonthsShown = 12;

    /// <summary>What is saved at its end: in pots with a target, ladders, reserves and the buffer.</summary>
    public Money Saved => Curve[^1].Saved;

    /// <summary>What is owed on all debts at its end.</summary>
    public Money Owed => Curve[^1].Owed;

    /// <summary>By how much more is saved than before it began; null where the household began in it.</summary>
    public Money? SavedMore => Before is { } before ? Saved - before.Saved : null;

    /// <summary>By how much more is owed than before it began; null where the household began in it.</summary>
    public Money? OwedMore => Before is { } before ? Owed - before.Owed : null;

    private MonthFlow? Before => Curve.LastOrDefault(month => month.Month < Period.First);

    /// <summary>Makes it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="period">Neither before the household began nor after today.</param>
    /// <param name="today">The day.</param>
    public static PeriodReport Of(Book book, ReportPeriod period, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        var months = MonthFlows.Of(book);
        LocalDate end = period.Last.OnDayOfMonth(1);
        WhereItWent went = period.IsYear ? WhereItWent.OfYear(book, period.Last) : WhereItWent.Of(book, period.Last);
        Usual? usual = period.IsYear ? null : months.UsualOf(flow => flow.CameIn, period.Last);
        Flow flow = period.IsYear ? months.YearTo(period.Last) : months.At(period.Last).Flow;
        LocalDate until = today.PlusMonths(1);
        return new PeriodReport(
            book.Household.Name,
            period,
            today,
            book.Household.Currency,
            book.Household.Settings.Numbers,
            new WentRow("Came in", flow.CameIn, period.IsYear ? went.Last?.CameIn : usual?.Amount, usual?.Months),
            went,
            period.IsYear ? (period.Last.Year - 1).ToString(CultureInfo.InvariantCulture) : "usual",
            months.Between(period.Last.PlusMonths(1 - MonthsShown), end),
            months.Between(months.First, end),
            SetAsideGlance.Of(book, today),
            ComingDues.Waiting(book, today, until),
            until);
    }
}
