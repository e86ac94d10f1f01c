using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Lines;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Habits;

/// <summary>
/// A made account of some months: bills and incomes with late days, weekends, gaps, steps and amounts that vary, and habits that look
/// alike: the same shop on the same weekday, the same coffee, cash for the week, the hairdresser every five weeks or so. All from a
/// seed; all names are invented.
/// </summary>
internal sealed class MadeHistory
{
    private readonly Random random;
    private readonly LocalDate first = new(2024, 1, 1);
    private readonly int late;
    private readonly int gaps;

    /// <summary>Makes one.</summary>
    /// <param name="seed">Of all that chance decides.</param>
    /// <param name="late">How many lines in a hundred come up to two days late, beside those that move off a weekend.</param>
    /// <param name="gaps">How many in a hundred don't come at all.</param>
    /// <param name="habits">How often each habit is there, under names of their own.</param>
    public MadeHistory(int seed, int late = 15, int gaps = 4, int habits = 1)
    {
        (this.late, this.gaps) = (late, gaps);
        random = new Random(seed);
        To = first.PlusMonths(random.Next(4, 25)).PlusDays(random.Next(28) - 1);
        Bills();
        Incomes();
        for (int copy = 1; copy <= habits; copy++)
        {
            Habits(copy == 1 ? "" : " " + new string((char)('A' + copy), 3));
        }

        Lines = [.. Lines.OrderBy(line => line.Date)];
    }

    public LocalDate To { get; }

    public List<StatementLine> Lines { get; } = [];

    public List<MadeSeries> Series { get; } = [];

    private void Bills()
    {
        Put("Northlane Rent", RhythmUnit.Months, 1, 1, -Around(70_000), vary: 0, LineKind.StandingOrder, "");
        Put("Brightwire Power", RhythmUnit.Months, 1, Day(), -Around(6_000), vary: 25, LineKind.DirectDebit, "MW-" + random.Next(9999));
        Put("Farnet Internet", RhythmUnit.Months, 1, Day(), -Around(3_500), vary: 0, LineKind.DirectDebit, "", hasStep: true);
        Put("Hillside Water", RhythmUnit.Months, Chance(50) ? 2 : 3, Day(), -Around(9_000), vary: 15, LineKind.DirectDebit, "MH-" + random.Next(9999));
        Put("Storage Locker", RhythmUnit.Months, 1, Day(), -Around(4_000), vary: 0, Chance(50) ? LineKind.Other : LineKind.Transfer, "", stops: Chance(60));
        Put("Reelhouse Films", RhythmUnit.Months, 1, Day(), -1_299, vary: 0, LineKind.Card, "", jitter: 0);
        Put("Tunebox", RhythmUnit.Months, 1, Day(), -999, vary: 0, LineKind.Card, "", jitter: 0, hasStep: Chance(30));
        Put("Iron Hall Gym", RhythmUnit.Weeks, Chance(50) ? 2 : 4, 0, -Around(2_500), vary: 0, LineKind.DirectDebit, "");
        Put("Oakleaf Insurance", RhythmUnit.Months, Chance(50) ? 3 : 6, Day(), -Around(15_000), vary: 0, LineKind.DirectDebit, "MO-" + random.Next(9999));
        Put("Music School", RhythmUnit.Weeks, 1, 0, -1_800, vary: 0, LineKind.StandingOrder, "");

        // Two of one company, on other days and of other amounts.
        Put("Mobilo", RhythmUnit.Months, 1, 4, -1_000, vary: 0, LineKind.DirectDebit, "");
        Put("Mobilo", RhythmUnit.Months, 1, 19, -2_900, vary: 0, LineKind.DirectDebit, "");
    }

    private void Incomes()
    {
        if (Chance(30))
        {
            PutTwice("Tidewater Works", Around(130_000));
        }
        else if (Chance(50))
        {
            Put("Tidewater Works", RhythmUnit.Weeks, 2, 0, Around(150_000), vary: 6, Chance(50) ? LineKind.Pay : LineKind.Transfer, "");
        }
        else
        {
            Put("Tidewater Works", RhythmUnit.Months, 1, 31, Around(260_000), vary: 3, Chance(50) ? LineKind.Pay : LineKind.Other, "");
        }

        Put("Family Office", RhythmUnit.Months, 1, 10, 25_000, vary: 0, LineKind.Transfer, "");
    }

    private void Habits(string behind)
    {
        Habit("Corner Grocer" + behind, 5, 9, () => -random.Next(3_000, 12_000), LineKind.Card);
        Habit("Millers Market" + behind, 6, 8, () => -random.Next(1_000, 6_000), Chance(50) ? LineKind.Card : LineKind.Other);
        Habit("Lumiere Cafe" + behind, 1, 6, () => -320, LineKind.Card);
        Habit("Harbour Fuel" + behind, 8, 18, () => -random.Next(4_000, 7_000), LineKind.Card);
        Habit("Cash machine" + behind, 6, 9, () => -10_000, LineKind.Cash);
        Habit("Dot Hair" + behind, 27, 44, () => -3_500, LineKind.Card);
        Habit("City Tickets" + behind, 4, 22, () => -2_000, Chance(50) ? LineKind.Card : LineKind.Other);
        Habit("Webshop" + behind, 2, 40, () => -random.Next(500, 20_000), Chance(50) ? LineKind.Card : LineKind.Other);
        Habit("Pharmacy Dale" + behind, 10, 60, () => -random.Next(300, 4_000), LineKind.Other);
        Habit("Canteen" + behind, 1, 3, () => -450 - (50 * random.Next(3)), LineKind.Card);
        Habit("Gift of Anna" + behind, 20, 90, () => random.Next(10, 60) * 100, LineKind.Transfer);
        Habit("Deposit" + behind, 20, 45, () => random.Next(5, 30) * 1000, LineKind.Cash);
    }

    private void Put(
        string name, RhythmUnit unit, int every, int day, long amount, int vary, LineKind kind, string mandate, int jitter = 2, bool hasStep = false, bool stops = false)
    {
        var lines = new List<StatementLine>();
        LocalDate start = unit == RhythmUnit.Weeks ? first.PlusDays(random.Next(7 * every)) : first.PlusMonths(random.Next(every));
        int rounds = unit == RhythmUnit.Weeks ? Period.DaysBetween(start, To) / (7 * every) : (12 * (To.Year - start.Year)) + To.Month - start.Month;
        int stopRound = stops ? rounds / 2 : int.MaxValue;
        int stepRound = hasStep && rounds > 6 ? random.Next(3, rounds - 2) : int.MaxValue;
        LocalDate? stepAt = null;
        for (int round = 0; ; round++)
        {
            LocalDate date = unit == RhythmUnit.Weeks ? start.PlusWeeks(every * round) : OnDay(start.PlusMonths(every * round), day);
            bool isLate = Chance(late);
            date = OffWeekend(date.PlusDays(isLate && unit == RhythmUnit.Months ? random.Next(jitter + 1) : 0));
            if (date > To || round > stopRound)
            {
                break;
            }

            if (Chance(gaps))
            {
                continue;
            }

            long its = amount + (round >= stepRound ? amount / 8 : 0) + (vary == 0 ? 0 : amount * random.Next(-vary, vary + 1) / 100);
            stepAt ??= round >= stepRound ? date : null;
            lines.Add(Line(date, its, name, kind) with { Mandate = mandate });
        }

        Lines.AddRange(lines);
        Series.Add(new MadeSeries(name, unit, every, lines, stepAt, stops && lines.Count > 0 ? lines[^1].Date : null));
    }

    // The 15th and the last day, each on the working day before.
    private void PutTwice(string name, long amount)
    {
        var lines = new List<StatementLine>();
        for (LocalDate month = first; month <= To; month = month.PlusMonths(1))
        {
            foreach (int day in new[] { 15, 31 })
            {
                LocalDate date = OnDay(month, day);
                date = date.DayOfWeek > IsoDayOfWeek.Friday ? date.PlusDays(IsoDayOfWeek.Friday - date.DayOfWeek) : date;
                if (date <= To && !Chance(gaps))
                {
                    lines.Add(Line(date, amount + (amount * random.Next(-3, 4) / 100), name, LineKind.Transfer));
                }
            }
        }

        Lines.AddRange(lines);
        Series.Add(new MadeSeries(name, RhythmUnit.Months, 1, lines, null, null, IsTwice: true));
    }

    private void Habit(string name, int leastDays, int mostDays, Func<long> amount, LineKind kind)
    {
        for (LocalDate date = first.PlusDays(random.Next(mostDays)); date <= To; date = date.PlusDays(random.Next(leastDays, mostDays + 1)))
        {
            Lines.Add(Line(date, amount(), name, kind));
        }
    }

    private StatementLine Line(LocalDate date, long amount, string name, LineKind kind) => new(date, Money.FromMinorUnits(amount, MadeStatements.Euro))
    {
        Kind = kind,
        Party = Chance(70) ? name : $"{name.ToUpperInvariant()} {random.Next(100, 999)}",
        Text = $"Ref {random.Next()}",
    };

    private static LocalDate OnDay(LocalDate month, int day) => month.ToYearMonth().OnDayOfMonth(Math.Min(day, month.ToYearMonth().ToDateInterval().End.Day));

    private static LocalDate OffWeekend(LocalDate date) => date.DayOfWeek switch
    {
        IsoDayOfWeek.Saturday => date.PlusDays(2),
        IsoDayOfWeek.Sunday => date.PlusDays(1),
        _ => date,
    };

    private int Day() => random.Next(1, 29);

    private long Around(long amount) => amount + (random.Next(-20, 21) * (amount / 100));

    private bool Chance(int percent) => random.Next(100) < percent;
}
