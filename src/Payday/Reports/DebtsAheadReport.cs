using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using NodaTime;
using Payday.Charts;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Outlooks;
using Payday.Core.Status;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>How far the debts have come, and the way out of them.</summary>
internal static class DebtsAheadReport
{
    /// <summary>Who decides.</summary>
    public const string Caution = "The lender's statement decides.";

    private const int ChartHeight = 6;
    private const int LeastBeside = 72;
    private const int Gap = 2;

    // A debt without an end is followed for ten years, or as long as the others take.
    private const int MonthsOfEndless = 120;
    private const int BarWidth = 8;

    /// <summary>A line for each debt: what is paid of what was owed, with a bar; interest so far and to come; the end.</summary>
    public static ImmutableArray<string> Table(DebtsAhead ahead, NumberStyle style, int width) =>
    [
        .. new TextTable(
            [Report.Names("Debt"), new("") { Drops = 4 }, Report.Amounts("owed") with { Drops = 3 }, Report.Amounts("paid"), Report.Amounts("of"), Report.Amounts("interest") with { Drops = 2 }, Report.Amounts("to come"), new("paid off")],
            [.. ahead.Debts.Select(debt => Cells(debt, style))],
            decimalMark: style.DecimalMark).Lay(width).All,
    ];

    /// <summary>What is owed on all of them together, month by month: at minimums alone beside the proposal, to the same scale.</summary>
    public static ImmutableArray<string> Curves(DebtsAhead ahead, LocalDate today, NumberStyle style, int width)
    {
        ImmutableArray<Money> minimums = ahead.AtMinimums.Owed;
        ImmutableArray<Money> proposed = ahead.AsProposed.Owed;
        int months = Math.Max(Shown(ahead.AtMinimums), Shown(ahead.AsProposed));
        Money owedNow = Money.Sum(ahead.Debts.Select(debt => debt.Glance.Balance), minimums[0].Currency);
        Money[] left = Over(owedNow, minimums, months);
        Money[] right = Over(owedNow, proposed, months);
        Money most = Money.Max(left.Max(), right.Max());
        string over = $"over {"month".ToQuantity(months)}";
        (YearMonth, YearMonth) time = (today.ToYearMonth(), today.ToYearMonth().PlusMonths(months));
        int each = width < LeastBeside ? width : (width - Gap) / 2;
        string[] first = [$"Owed at minimums alone, {over}", .. LineChart.Lines(left, each, ChartHeight, style, most, time)];
        string[] second = ["Owed with what is proposed", .. LineChart.Lines(right, each, ChartHeight, style, most, time)];
        return width < LeastBeside
            ? [.. first, .. second]
            : [.. first.Zip(second, (one, two) => TextColumns.PadRight(one, each + Gap) + two)];
    }

    /// <summary>Whether anything is owed, so that there is a way out of it to show.</summary>
    public static bool HasWay(DebtsAhead ahead) => ahead.Debts.Any(debt => debt.Glance.Balance.IsPositive);

    /// <summary>What the proposal does, and the other order would, a sentence each.</summary>
    public static IEnumerable<string> Notes(DebtsAhead ahead, NumberStyle style)
    {
        if (!HasWay(ahead))
        {
            yield return "Nothing is owed any more.";
            yield break;
        }

        yield return $"At minimums alone{End(ahead, ahead.AtMinimums, style)}";
        if (ahead.Extra.IsPositive)
        {
            string saved = ahead.Saved is { IsPositive: true } amount ? $" It saves {amount.ToString(style)}." : "";
            yield return $"With {ahead.Extra.ToString(style)} more at the next payday, as proposed{End(ahead, ahead.AsProposed, style)}{saved}";
        }

        if (ahead.Debts.Count(debt => debt.Glance.Balance.IsPositive) > 1)
        {
            yield return Other(ahead, style);
        }
    }

    /// <summary>The debts that this way never ends, a sentence each.</summary>
    public static IEnumerable<string> Endless(DebtsAhead ahead)
    {
        foreach (DebtAhead debt in ahead.Debts.Where(debt => debt.Course.PaidOff is null && HasWay(ahead)))
        {
            yield return $"{debt.Glance.Debt.Name} is never paid off this way. Pay more on it, or talk to the lender.";
        }
    }

    /// <summary>When debts end if not only the next payday but each one to come places its surplus as proposed, in a sentence; empty where none is owed.</summary>
    /// <param name="ahead">The debts.</param>
    /// <param name="outlook">The paydays to come; where it can't be had nothing is said.</param>
    /// <param name="way">What leads to the outlook, with a blank before it.</param>
    public static string EachPayday(DebtsAhead ahead, Result<Outlook> outlook, string way)
    {
        if (!HasWay(ahead) || !outlook.Ok || outlook.Value!.Paydays.IsEmpty)
        {
            return "";
        }

        ImmutableArray<DebtPaidOff> ends = outlook.Value.PaidOff;
        string others = ends.Length < ahead.Debts.Count(debt => debt.Glance.Balance.IsPositive) ? $"{(ends.IsEmpty ? "none ends by" : "the others end after")} {DateText.Day(outlook.Value.Paydays[^1].Date)}" : "";
        return $"Where each payday to come places its surplus as proposed{way}: {string.Join(", ", ends.Select(end => $"{end.Name} ends {DateText.Day(end.On)}").Concat(others.Length == 0 ? [] : [others]))}.";
    }

    private static string Other(DebtsAhead ahead, NumberStyle style)
    {
        string name = ahead.Other == DebtOrder.HighestRate ? "The highest rate first" : "The smallest balance first";
        int months = ahead.OtherOrder.Months - ahead.AsProposed.Months;
        string time = months == 0 ? "takes as long" : $"takes {"month".ToQuantity(Math.Abs(months))} {(months > 0 ? "more" : "less")}";
        return ahead.OtherCosts switch
        {
            null => $"{name} leaves other debts without an end.",
            { IsZero: true } when months == 0 => $"{name} makes no difference here.",
            { IsZero: true } => $"{name} costs the same interest and {time}.",
            { IsPositive: true } more => $"{name} costs {more.ToString(style)} more interest and {time}.",
            { } less => $"{name} saves {(-less).ToString(style)} of interest and {time}.",
        };
    }

    private static string End(DebtsAhead ahead, DebtProjection course, NumberStyle style) => course.Never.Length == course.Debts.Length
        ? " no debt ends."
        : $": {"month".ToQuantity(course.Months)}, {ahead.InterestToCome(course).ToString(style)} interest{(course.Never.IsEmpty ? "" : " on those that end")}.";

    private static ImmutableArray<string> Cells(DebtAhead debt, NumberStyle style) =>
    [
        debt.Glance.Debt.Name,
        Bars.Of(debt.Glance.Paid, debt.Glance.AtStart, BarWidth),
        debt.Glance.Balance.ToString(style),
        debt.Glance.Paid.ToString(style),
        debt.Glance.AtStart.ToString(style),
        debt.InterestSoFar.ToString(style),
        debt.InterestToCome?.ToString(style) ?? "",
        !debt.Glance.Balance.IsPositive ? "already" : debt.Course.AtOnce ? "next payday" : debt.Course.PaidOff is { } month ? Month(month) : "never",
    ];

    private static int Shown(DebtProjection course) => course.Never.IsEmpty ? course.Months : Math.Max(course.Months, MonthsOfEndless);

    // Today first, as the table has it: a course begins once the next payday has covered its minimums. One that has ended
    // stays where it ended.
    private static Money[] Over(Money today, ImmutableArray<Money> owed, int months) =>
        [.. (today == owed[0] ? Array.Empty<Money>() : [today]), .. Enumerable.Range(0, months + 1).Select(month => owed[Math.Min(month, owed.Length - 1)])];

    private static string Month(YearMonth month) => month.ToString("MMM uuuu", CultureInfo.InvariantCulture);
}
