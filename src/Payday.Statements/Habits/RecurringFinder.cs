using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Habits;

/// <summary>Finds bills and incomes that come round in the lines of an account.</summary>
/// <remarks>
/// Lines of one other side and one direction are held against the rhythms of the calendar, all together first, then by equal
/// amounts, then by like amounts, so that two subscriptions of one company are two. What is proposed is said with its hits and how
/// many times it should have come.
/// </remarks>
public static class RecurringFinder
{
    private const int FewestLines = 2;

    // Amounts of one bill that varies lie closer together than this; two bills of one company further apart.
    private const int SameBillPercent = 12;

    // A series has stopped once this many of its days went by without a line.
    private const int MissedWeeks = 2;
    private const int MissedMonths = 1;

    /// <summary>The series, the largest first.</summary>
    /// <param name="lines">The booked lines of one account, in any order.</param>
    /// <param name="to">The last day the lines are complete for.</param>
    public static ImmutableArray<Recurring> Find(IEnumerable<StatementLine> lines, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var found = new List<Recurring>();
        foreach (IGrouping<(string, bool, Currency), StatementLine> party in lines
            .Where(line => !line.Amount.IsZero)
            .OrderBy(line => line.Date)
            .GroupBy(line => (PartyKey.Of(line), line.Amount.IsPositive, line.Amount.Currency)))
        {
            found.AddRange(InParty([.. party], isKnown: party.Key.Item1.Length > 0, to));
        }

        return [.. found.OrderByDescending(series => Math.Abs(series.Usual.MinorUnits)).ThenBy(series => series.First)];
    }

    private static List<Recurring> InParty(List<StatementLine> lines, bool isKnown, LocalDate to)
    {
        var found = new List<Recurring>();
        if (isKnown && Series(lines, to) is { } whole)
        {
            return [whole];
        }

        foreach (List<StatementLine> part in EqualAmounts(lines))
        {
            if (Series(part, to) is { } series)
            {
                found.Add(series);
                lines.RemoveAll(part.Contains);
            }
        }

        if (isKnown)
        {
            found.AddRange(LikeAmounts(lines).Select(part => Series(part, to)).OfType<Recurring>());
        }

        return found;
    }

    private static IEnumerable<List<StatementLine>> EqualAmounts(List<StatementLine> lines) =>
        [.. lines.GroupBy(line => line.Amount).Where(group => group.Count() > FewestLines).Select(group => group.ToList())];

    private static IEnumerable<List<StatementLine>> LikeAmounts(List<StatementLine> lines)
    {
        var part = new List<StatementLine>();
        foreach (StatementLine line in lines.OrderBy(line => Math.Abs(line.Amount.MinorUnits)))
        {
            if (part.Count > 0 && Math.Abs(line.Amount.MinorUnits) * 100 > Math.Abs(part[^1].Amount.MinorUnits) * (100 + SameBillPercent))
            {
                yield return [.. part.OrderBy(one => one.Date)];
                part.Clear();
            }

            part.Add(line);
        }

        if (part.Count > 0)
        {
            yield return [.. part.OrderBy(one => one.Date)];
        }
    }

    private static Recurring? Series(List<StatementLine> lines, LocalDate to)
    {
        if (lines.Count < FewestLines || RhythmFit.Best([.. lines.Select(line => line.Date)]) is not { } fit)
        {
            return null;
        }

        ImmutableArray<StatementLine> hits = [.. fit.Hits.Select(at => lines[at])];
        var amounts = new SeriesAmounts(hits.Select(line => Math.Abs(line.Amount.MinorUnits)));
        if (!SeriesTrust.Accepts(fit, amounts, hits))
        {
            return null;
        }

        Currency currency = lines[0].Amount.Currency;
        int sign = lines[0].Amount.IsPositive ? 1 : -1;
        Money Signed(long size) => Money.FromMinorUnits(sign * size, currency);
        return new Recurring(
            PartyKey.NameOf(hits), fit.Rhythm, Signed(amounts.Usual), Signed(sign > 0 ? amounts.CountOn : amounts.Hold), hits, fit.Expected)
        {
            Changes = [.. Changes(fit.Rhythm, hits, amounts, currency, to)],
        };
    }

    private static IEnumerable<RecurringChange> Changes(
        Rhythm rhythm, ImmutableArray<StatementLine> hits, SeriesAmounts amounts, Currency currency, LocalDate to)
    {
        if (amounts.Step is { } step)
        {
            yield return new RecurringChange(RecurringChangeKind.Amount, hits[step.At].Date, Money.FromMinorUnits(step.Difference, currency));
        }

        LocalDate last = hits[^1].Date;
        int missed = 0;
        for (int round = 0; rhythm.At(round).PlusDays(rhythm.Tolerance) <= to; round++)
        {
            missed += rhythm.At(round).PlusDays(-rhythm.Tolerance) > last ? 1 : 0;
        }

        if (missed >= (rhythm.Unit == RhythmUnit.Weeks ? MissedWeeks : MissedMonths))
        {
            yield return new RecurringChange(RecurringChangeKind.Stopped, last, Money.Zero(currency));
        }
    }
}
