using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Pots;

namespace Payday.Core.ItemLines;

/// <summary>Reads what a pot is for: <c>a week</c>, <c>by Dec</c>, <c>in 12 steps</c>, <c>1..20</c>, <c>with 50 a payday</c>.</summary>
internal static class PotWords
{
    /// <summary>Takes what a pot is for and how it is filled; as it was where the words say neither.</summary>
    /// <param name="pot">The pot so far.</param>
    /// <param name="amount">The amount behind its name.</param>
    /// <param name="words">What stands behind that.</param>
    /// <param name="facts">The household.</param>
    public static PotDraft Take(PotDraft pot, decimal amount, LineWords words, LineFacts facts)
    {
        if (Per(words) is { } per)
        {
            return pot with { Kind = PotUse.Spending, Amount = amount, Per = per };
        }

        if (words.Front.StartsWith(SplitLine.Steps, StringComparison.Ordinal))
        {
            return Stairs(pot, amount, words, facts);
        }

        bool isEven = words.TakeAny("x", "times");
        if ((isEven || (words.Begins("in") && !words.Begins("in", "cash") && !words.Begins("in", "the") && !words.Begins("in", "account") && words.Take("in"))) && words.Count() is { } steps)
        {
            words.TakeAny("steps", "step");
            LadderOrder order = words.TakeAny("falling") ? LadderOrder.Falling
                : words.TakeAny("even") ? LadderOrder.Even
                : words.TakeAny("rising") || !isEven ? LadderOrder.Rising
                : LadderOrder.Even;
            return pot with { Kind = PotUse.Ladder, Unit = amount, Steps = steps, Order = order };
        }

        if (words.TakeAny("with", "at") && words.Amount() is { } perPayday)
        {
            words.TakeAny("a payday", "per payday", "each payday", "every payday", "p");
            return pot with { Kind = PotUse.Reserve, Level = amount, PerPayday = perPayday };
        }

        bool isNamed = words.Take("by");
        return words.ByDate() is { } by ? Sinking(pot with { Kind = PotUse.Sinking, Target = amount, By = by }, words, facts)
            : isNamed ? pot with { Kind = PotUse.Sinking, Target = amount }
            : pot;
    }

    private static FillPer? Per(LineWords words)
    {
        if (words.TakeAny("a week", "per week", "each week", "every week", "weekly", "w"))
        {
            return FillPer.Week;
        }

        if (words.TakeAny("a month", "per month", "each month", "every month", "monthly", "m"))
        {
            return words.TakeAny("spread") ? FillPer.MonthSpread : FillPer.Month;
        }

        return words.TakeAny("a payday", "per payday", "each payday", "every payday", "p") ? FillPer.Payday : null;
    }

    // 1..20 are twenty steps of 1, 20..1 the same from the highest down, 5..100 twenty steps of 5.
    private static PotDraft Stairs(PotDraft pot, decimal first, LineWords words, LineFacts facts)
    {
        Result<Money> last = LineFigures.AmountOf(words.Front[SplitLine.Steps.Length..], facts);
        decimal to = last.Ok ? last.Value.ToDecimal() : 0;
        decimal unit = Math.Min(first, to);
        decimal most = Math.Max(first, to);
        if (unit <= 0 || unit == most || most % unit != 0 || most / unit > HouseholdLimits.MostSteps)
        {
            return pot;
        }

        words.Drop(1);
        words.TakeAny("ladder", "steps");
        return pot with { Kind = PotUse.Ladder, Unit = unit, Steps = (int)(most / unit), Order = first < to ? LadderOrder.Rising : LadderOrder.Falling };
    }

    private static PotDraft Sinking(PotDraft pot, LineWords words, LineFacts facts)
    {
        if (words.Take("again"))
        {
            return pot with { Repeats = ScheduleWords.Take(words, facts.From) };
        }

        int? months = words.TakeAny("every year", "yearly", "each year", "y") ? 12
            : words.TakeAny("twice a year", "half-yearly", "half yearly") ? 6
            : words.TakeAny("quarterly", "every quarter", "q") ? 3
            : null;
        ScheduleKind kind = months == 12 ? ScheduleKind.Yearly : ScheduleKind.EveryMonths;
        if (months is null && words.Rhythm() is (var count, true))
        {
            (months, kind) = (count, count == 12 ? ScheduleKind.Yearly : ScheduleKind.EveryMonths);
        }

        return months is { } known ? pot with { Repeats = new() { Kind = kind, Months = kind == ScheduleKind.Yearly ? null : known, Anchor = pot.By } } : pot;
    }
}
