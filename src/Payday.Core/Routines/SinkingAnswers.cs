using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What the person says becomes of a sinking pot: each gives the household with it, or one sentence on why it can't be.</summary>
/// <remarks>Each is a setting of the pot, so it can be changed back like any other.</remarks>
public static class SinkingAnswers
{
    private const int MonthsOfAYear = 12;

    /// <summary>It has done what it was for.</summary>
    public static Result<Household> Finish(Book book, PotId potId) => With(book, potId, (_, kind) => Result.Of(kind with { Finished = true }));

    /// <summary>The target is needed again.</summary>
    /// <param name="book">The book.</param>
    /// <param name="potId">The pot.</param>
    /// <param name="repeats">When; null for every year on the day it has now.</param>
    public static Result<Household> Repeat(Book book, PotId potId, Schedule? repeats = null) => With(book, potId, (_, kind) =>
        Result.Of(kind with { Repeats = repeats ?? new Schedule.EveryMonths(MonthsOfAYear, kind.By), Finished = false }));

    /// <summary>What was spent so far was not all: it is saved for as before.</summary>
    public static Result<Household> GoOn(Book book, PotId potId) => With(book, potId, (_, kind) =>
        Result.Of(kind with { SettledTo = PotRecord.LastSpending(book, potId) ?? kind.SettledTo, Finished = false }));

    /// <summary>The target must be there by another date; what was spent so far is settled.</summary>
    /// <param name="book">The book.</param>
    /// <param name="potId">The pot.</param>
    /// <param name="date">The date, on the payday or after it.</param>
    /// <param name="payday">The payday worked on, the first that can still put something in.</param>
    public static Result<Household> By(Book book, PotId potId, LocalDate date, LocalDate payday) => With(book, potId, (_, kind) =>
        date < payday ? Result.Refused<PotKind.Sinking>($"No payday comes by {PlainDates.DayMonthYear(date)} any more; name {PlainDates.DayMonthYear(payday)}, the next one, or a later day.")
        : date > book.Household.Start.PlusYears(Household.MostYears) ? Result.Refused<PotKind.Sinking>($"{PlainDates.DayMonthYear(date)} is more than {Household.MostYears} years off; look for a mistyped year.")
        : Result.Of(kind with { By = date, SettledTo = PotRecord.LastSpending(book, potId) ?? kind.SettledTo, Finished = false }));

    /// <summary>
    /// The household with what was spent from pots settled where their date was put off: a later date is the beginning of
    /// another saving, not the question about the last one.
    /// </summary>
    internal static Household Settled(Book book, Household next)
    {
        ImmutableArray<Pot> pots = [.. next.Pots.Select(pot =>
        {
            bool isPutOff = pot.Kind is PotKind.Sinking kind
                && book.Household.Pots.FirstOrDefault(old => old.Id == pot.Id)?.Kind is PotKind.Sinking old
                && kind.By > old.By && kind.SettledTo == old.SettledTo;
            return isPutOff && PotRecord.LastSpending(book, pot.Id) is { } last ? pot with { Kind = (PotKind.Sinking)pot.Kind with { SettledTo = last, Finished = false } } : pot;
        })];
        return pots.SequenceEqual(next.Pots) ? next : next with { Pots = pots };
    }

    private static Result<Household> With(Book book, PotId potId, Func<Pot, PotKind.Sinking, Result<PotKind.Sinking>> answer)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Household.Pots.FirstOrDefault(pot => pot.Id == potId) is not { } pot)
        {
            return Result.Refused<Household>($"There is no pot '{potId}'.");
        }

        if (pot.Kind is not PotKind.Sinking kind)
        {
            return Result.Refused<Household>($"{pot.Name} has no target by a date, so there is nothing to say of it.");
        }

        Result<PotKind.Sinking> answered = answer(pot, kind);
        return answered.Ok
            ? Result.Of(book.Household with { Pots = book.Household.Pots.Replace(pot, pot with { Kind = answered.Value }) })
            : Result.Refused<Household>(answered.Fault);
    }
}
