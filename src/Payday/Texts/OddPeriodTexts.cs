using System.Globalization;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a pay period that is not like others.</summary>
internal static class OddPeriodTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(OddPeriod odd) => odd switch
    {
        OddPeriod.Missed { Count: 1, First: var day } => $"The payday of {DateText.Weekday(day)} was not closed: close it first, or enter its pay here as a one-off.",
        OddPeriod.Missed missed => $"{Number(missed.Count)} paydays since {DateText.Weekday(missed.First)} were not closed: close them first, or enter their pay here as one-offs.",
        OddPeriod.Moved moved =>
            $"{moved.Source} comes on {DateText.Weekday(moved.Period.First)} instead of {DateText.Weekday(moved.Scheduled)}: this payday has to last {Days(moved.Period)}, to {DateText.Weekday(moved.Period.Last)}.",
        OddPeriod.Extra extra =>
            $"Payday {Number(extra.Number)} of {extra.Month.ToString("MMMM uuuu", CultureInfo.InvariantCulture)}, one more than is usual: pots filled by the month get only what they missed, so more is left for the surplus.",
        OddPeriod.FillDays { Count: 0, FillDay: var day } => $"No {day} before the next payday: pots by the week get nothing, and the others are filled on the payday.",
        OddPeriod.FillDays { Count: 1, Usual: var usual } => $"1 fill day instead of {Number(usual)}: pots by the week get one week, and the others are filled as ever.",
        OddPeriod.FillDays { Count: var days, Usual: var usual } =>
            $"{Number(days)} fill days instead of {Number(usual)}: pots by the week get {Number(days)} weeks, and the others are filled once.",
        OddPeriod.FillOnPayday => "The payday is a fill day this time: fetch the notes before the wallet is filled.",
        OddPeriod.Short @short =>
            $"The next payday is {DateText.Weekday(@short.Period.Last.PlusDays(1))} already: this one has to last {Days(@short.Period)}, and what falls due later is left to that one.",
        OddPeriod.YearEnd end =>
            $"The week of {DateText.Weekday(end.Week)} ends in {Number(end.Week.Year + 1)}: its cash is fetched this year, and its count falls in the next.",
        OddPeriod.YearStart start =>
            $"The first payday of {Number(start.Year)}: the days of the year before it have their cash from {DateText.Weekday(start.Before)}.",
        _ => throw new ArgumentOutOfRangeException(nameof(odd), odd, "There is no text for it."),
    };

    private static string Days(PayPeriod period) => Period.DaysBetween(period.First, period.Last) + 1 is var days && days == 1 ? "1 day" : $"{Number(days)} days";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
