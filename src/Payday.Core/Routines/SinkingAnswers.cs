using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What the person says becomes of a sinking pot: each gives the household with it, or one sentence on why it can't be.</summary>
/// <remarks>Each is a setting of the pot, so it can be changed back like any other.</remarks>
public static class SinkingAnswers
{
    private const int MonthsOfAYear = 12;

    /// <summary>It has done what it was for.</summary>
    public static Read<Household> Finish(Book book, string potId) => With(book, potId, (_, job) => Read.Of(job with { Finished = true }));

    /// <summary>The target is needed again.</summary>
    /// <param name="book">The book.</param>
    /// <param name="potId">The pot.</param>
    /// <param name="repeats">When; null for every year on the day it has now.</param>
    public static Read<Household> Repeat(Book book, string potId, Schedule? repeats = null) => With(book, potId, (_, job) =>
        Read.Of(job with { Repeats = repeats ?? new Schedule.EveryMonths(MonthsOfAYear, job.By), Finished = false }));

    /// <summary>What was spent so far was not all: it is saved for as before.</summary>
    public static Read<Household> GoOn(Book book, string potId) => With(book, potId, (_, job) =>
        Read.Of(job with { SettledTo = PotRecord.LastSpending(book, potId) ?? job.SettledTo, Finished = false }));

    /// <summary>The target must be there by another date; what was spent so far is settled.</summary>
    /// <param name="book">The book.</param>
    /// <param name="potId">The pot.</param>
    /// <param name="date">The date.</param>
    /// <param name="after">The payday or day after which it has to be.</param>
    public static Read<Household> By(Book book, string potId, LocalDate date, LocalDate after) => With(book, potId, (pot, job) =>
        date <= after ? Read.Refused<PotJob.Sinking>($"{PlainDates.DayMonthYear(date)} is past; name a day after {PlainDates.DayMonthYear(after)} for {pot.Name}.")
        : date > book.Household.Start.PlusYears(Household.MostYears) ? Read.Refused<PotJob.Sinking>($"{PlainDates.DayMonthYear(date)} is more than {Household.MostYears} years off; look for a mistyped year.")
        : Read.Of(job with { By = date, SettledTo = PotRecord.LastSpending(book, potId) ?? job.SettledTo, Finished = false }));

    /// <summary>
    /// The household with what was spent from pots settled where their date was put off: a later date is the beginning of
    /// another saving, not the question about the last one.
    /// </summary>
    internal static Household Settled(Book book, Household next)
    {
        ImmutableArray<Pot> pots = [.. next.Pots.Select(pot =>
        {
            bool isPutOff = pot.Job is PotJob.Sinking job
                && book.Household.Pots.FirstOrDefault(old => old.Id == pot.Id)?.Job is PotJob.Sinking old
                && job.By > old.By && job.SettledTo == old.SettledTo;
            return isPutOff && PotRecord.LastSpending(book, pot.Id) is { } last ? pot with { Job = (PotJob.Sinking)pot.Job with { SettledTo = last, Finished = false } } : pot;
        })];
        return pots.SequenceEqual(next.Pots) ? next : next with { Pots = pots };
    }

    private static Read<Household> With(Book book, string potId, Func<Pot, PotJob.Sinking, Read<PotJob.Sinking>> answer)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Household.Pots.FirstOrDefault(pot => pot.Id == potId) is not { } pot)
        {
            return Read.Refused<Household>($"There is no pot '{potId}'.");
        }

        if (pot.Job is not PotJob.Sinking job)
        {
            return Read.Refused<Household>($"{pot.Name} has no target by a date, so there is nothing to say of it.");
        }

        Read<PotJob.Sinking> answered = answer(pot, job);
        return answered.Ok
            ? Read.Of(book.Household with { Pots = book.Household.Pots.Replace(pot, pot with { Job = answered.Value }) })
            : Read.Refused<Household>(answered.Fault);
    }
}
