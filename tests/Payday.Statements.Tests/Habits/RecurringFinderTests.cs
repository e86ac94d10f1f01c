using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Statements.Habits;
using Payday.Statements.Lines;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Habits;

public sealed class RecurringFinderTests
{
    // The rules were looked at on seeds 1 to 200; these weren't seen then.
    private const int FirstSeed = 10_001;
    private const int Households = 200;
    private const int HarderHouseholds = 60;

    // Made data: it says how the rules do on what was thought of, not on the world. Found is right where its lines are one series' and its rhythm is that series'.
    [Fact]
    public void Find_MadeHistories_HasPrecisionAndRecall()
    {
        var byLength = new SortedDictionary<string, (int Truth, int Found, int Right)>(StringComparer.Ordinal);
        var wrong = new StringBuilder();
        for (int seed = FirstSeed; seed < FirstSeed + Households; seed++)
        {
            var history = new MadeHistory(seed);
            int months = Period.DaysBetween(new LocalDate(2024, 1, 1), history.To) / 30;
            string length = months <= 6 ? "a 4-6 months" : months <= 12 ? "b 7-12 months" : "c 13-24 months";
            ImmutableArray<Recurring> found = RecurringFinder.Find(history.Lines, history.To);
            List<MadeSeries> truth = history.Series.FindAll(series => series.Lines.Count >= 3);
            var right = new HashSet<MadeSeries>();
            int good = 0;
            foreach (Recurring one in found)
            {
                MadeSeries? its = history.Series.Find(series => IsOf(one, series));
                good += its is not null ? 1 : 0;
                _ = its is not null && right.Add(its);
                if (its is null)
                {
                    wrong.AppendLine(CultureInfo.InvariantCulture, $"{seed}: {one.Name} {one.Rhythm.Unit} {one.Rhythm.Every} {one.Lines.Length} of {one.Expected} {one.Usual}");
                }
            }

            foreach (MadeSeries lost in truth.Where(series => !right.Contains(series)))
            {
                wrong.AppendLine(CultureInfo.InvariantCulture, $"{seed}: not found {lost.Name} {lost.Unit} {lost.Every}: {string.Join(' ', lost.Lines.Select(line => $"{line.Date:MM-dd}"))}");
            }

            (int t, int f, int r) = byLength.GetValueOrDefault(length);
            byLength[length] = (t + truth.Count, f + found.Length, r + good);
            (int truthAll, int foundAll, int rightAll) = byLength.GetValueOrDefault("d all");
            byLength["d all"] = (truthAll + truth.Count, foundAll + found.Length, rightAll + good);
        }

        foreach ((string length, (int truth, int found, int right)) in byLength)
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"{length}: {truth} series, {found} found, {right} right: precision {1000 * right / found}, recall {1000 * right / truth}");
        }

        TestContext.Current.TestOutputHelper?.WriteLine(wrong.ToString());
        (int series, int all, int ok) = byLength["d all"];
        Assert.True(ok * 1000L >= all * 970L, $"precision {ok} of {all}");
        Assert.True(ok * 1000L >= series * 900L, $"recall {ok} of {series}");
    }

    // What is found of harder data: each row makes one thing worse. Nothing is asked of the hardest but that it stays quiet rather than wrong.
    [Theory]
    [InlineData("late 40 in 100", 40, 4, 1, 970, 900)]
    [InlineData("missing 12 in 100", 15, 12, 1, 970, 800)]
    [InlineData("three times the habits", 15, 4, 3, 970, 900)]
    [InlineData("all of it", 40, 12, 3, 950, 750)]
    public void Find_HarderHistories_StaysPrecise(string what, int late, int gaps, int habits, int leastPrecision, int leastRecall)
    {
        int truth = 0;
        int all = 0;
        int right = 0;
        for (int seed = FirstSeed; seed < FirstSeed + HarderHouseholds; seed++)
        {
            var history = new MadeHistory(seed, late, gaps, habits);
            ImmutableArray<Recurring> found = RecurringFinder.Find(history.Lines, history.To);
            truth += history.Series.Count(series => series.Lines.Count >= 3);
            all += found.Length;
            right += found.Count(one => history.Series.Exists(series => IsOf(one, series)));
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{what}: {truth} series, {all} found, {right} right: precision {1000 * right / all}, recall {1000 * right / truth}");
        Assert.True(right * 1000L >= all * (long)leastPrecision, $"precision {right} of {all}");
        Assert.True(right * 1000L >= truth * (long)leastRecall, $"recall {right} of {truth}");
    }

    [Fact]
    public void Find_MonthlyBill_HasScheduleUsualAndHits()
    {
        StatementLine[] lines = [Line("2026-01-05", -3000), Line("2026-02-05", -3000), Line("2026-03-05", -3000), Line("2026-05-05", -3000), Line("2026-06-05", -3000)];

        Recurring found = Assert.Single(RecurringFinder.Find(lines, new LocalDate(2026, 6, 10)));

        Assert.Equal(("Farnet", "-30.00", "-30.00", 5, 6), (found.Name, found.Usual.ToPlain(), found.Hold.ToPlain(), found.Lines.Length, found.Expected));
        Assert.Equal(new Schedule.Monthly(new MonthDay.Numbered(5)), found.Rhythm.ToSchedule());
        Assert.Empty(found.Changes);
    }

    [Fact]
    public void Find_AmountRises_IsNoticedWithItsDay()
    {
        StatementLine[] lines = [Line("2026-01-05", -3000), Line("2026-02-05", -3000), Line("2026-03-05", -3000), Line("2026-04-07", -3000), Line("2026-05-05", -3400), Line("2026-06-05", -3400)];

        Recurring found = Assert.Single(RecurringFinder.Find(lines, new LocalDate(2026, 6, 10)));

        Assert.Equal(new RecurringChange(RecurringChangeKind.Amount, new LocalDate(2026, 5, 5), Money.FromMinorUnits(400, MadeStatements.Euro)), Assert.Single(found.Changes));
        Assert.Equal("-34.00", found.Usual.ToPlain());
    }

    [Theory]
    [InlineData("2026-06-04", false)]
    [InlineData("2026-06-09", true)]
    public void Find_NoLineForARound_HasStopped(string to, bool hasStopped)
    {
        StatementLine[] lines = [Line("2026-02-05", -3000), Line("2026-03-05", -3000), Line("2026-04-05", -3000), Line("2026-05-05", -3000)];

        Recurring found = Assert.Single(RecurringFinder.Find(lines, NodaTime.Text.LocalDatePattern.Iso.Parse(to).Value));

        Assert.Equal(hasStopped, found.Changes.Contains(new RecurringChange(RecurringChangeKind.Stopped, new LocalDate(2026, 5, 5), Money.Zero(MadeStatements.Euro))));
    }

    [Fact]
    public void Find_AmountThatVaries_UsualOccurredAndHoldIsAbove()
    {
        long[] amounts = [-5000, -5200, -4800, -6000, -5100, -5050, -4900, -5900];
        StatementLine[] lines = [.. amounts.Select((amount, i) => Line($"2026-{i + 1:00}-12", amount) with { Mandate = "M-1" })];

        Recurring found = Assert.Single(RecurringFinder.Find(lines, new LocalDate(2026, 8, 31)));

        Assert.Equal(("-50.50", "-59.00"), (found.Usual.ToPlain(), found.Hold.ToPlain()));
    }

    [Fact]
    public void Find_TwoOfOneCompany_AreTwo()
    {
        StatementLine[] lines =
        [
            .. Enumerable.Range(1, 5).Select(month => Line($"2026-{month:00}-04", -1000)),
            .. Enumerable.Range(1, 5).Select(month => Line($"2026-{month:00}-19", -2900)),
        ];

        Assert.Equal(["-29.00", "-10.00"], RecurringFinder.Find(lines, new LocalDate(2026, 5, 31)).Select(found => found.Usual.ToPlain()));
    }

    [Fact]
    public void Find_FifteenthAndLast_IsTwiceMonthly()
    {
        string[] days = ["2026-01-15", "2026-01-30", "2026-02-13", "2026-02-27", "2026-03-13", "2026-03-31", "2026-04-15", "2026-04-30"];

        Recurring found = Assert.Single(RecurringFinder.Find(days.Select(day => Line(day, 130_000)), new LocalDate(2026, 5, 1)));

        Assert.Equal(new Schedule.TwiceMonthly(new MonthDay.Numbered(15), new MonthDay.Last()), found.Rhythm.ToSchedule());
        Assert.Equal(8, found.Expected);
    }

    [Theory]
    [InlineData(LineKind.Cash)]
    [InlineData(LineKind.Card)]
    public void Find_SameAmountOnUnevenDays_IsAHabit(LineKind kind)
    {
        StatementLine[] lines = [Line("2026-01-03", -2000), Line("2026-01-11", -2000), Line("2026-01-19", -2000), Line("2026-01-24", -2000), Line("2026-02-02", -2000), Line("2026-02-09", -2000)];

        Assert.Empty(RecurringFinder.Find(lines.Select(line => line with { Kind = kind }), new LocalDate(2026, 2, 28)));
    }

    [Theory]
    [InlineData(LineKind.Cash, 0)]
    [InlineData(LineKind.StandingOrder, 1)]
    public void Find_EveryFriday_IsABillUnlessItIsCash(LineKind kind, int count)
    {
        StatementLine[] lines = [.. Enumerable.Range(0, 10).Select(week => Line("2026-01-02", -2000) with { Date = new LocalDate(2026, 1, 2).PlusWeeks(week), Kind = kind })];

        Assert.Equal(count, RecurringFinder.Find(lines, new LocalDate(2026, 3, 10)).Length);
    }

    private static bool IsOf(Recurring found, MadeSeries series)
    {
        int common = found.Lines.Count(line => series.Lines.Exists(one => ReferenceEquals(one, line)));
        return common * 10 >= found.Lines.Length * 9 && common * 10 >= series.Lines.Count * 7
            && found.Rhythm.SecondDay > 0 == series.IsTwice && found.Rhythm.Unit == series.Unit && found.Rhythm.Every == series.Every;
    }

    private static StatementLine Line(string date, long amount) =>
        new(NodaTime.Text.LocalDatePattern.Iso.Parse(date).Value, Money.FromMinorUnits(amount, MadeStatements.Euro)) { Party = "Farnet" };
}
