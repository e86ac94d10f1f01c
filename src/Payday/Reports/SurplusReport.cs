using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>Where the rest goes and what it does; or what can't be paid.</summary>
internal static class SurplusReport
{
    /// <summary>Step 5 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style) =>
    [
        .. Report.Heading("5 Surplus"),
        .. plan.Surplus.Before.IsNegative ? Shortfall(plan, style) : Placed(plan, style),
    ];

    private static IEnumerable<string> Placed(RoutinePlan plan, NumberStyle style)
    {
        SurplusStep surplus = plan.Surplus;
        yield return $"{surplus.Before.ToString(style)} is left once bills, minimums and pots have theirs.";
        foreach (Placement placement in surplus.Placements)
        {
            yield return $"  {placement.Amount.ToString(style)} {Target(plan, placement)}";
        }

        foreach (string line in Effects(surplus, style).SelectMany(line => Report.Prose("  " + line)))
        {
            yield return line;
        }
    }

    private static string Target(RoutinePlan plan, Placement placement) => placement.Target switch
    {
        MoveTarget.ToDebt to => $"extra on {plan.Book.Household.Debts.Single(debt => debt.Id == to.Id).Name}",
        MoveTarget.ToPot to => $"more in {plan.Book.Household.Pots.Single(pot => pot.Id == to.Id).Name}",
        _ => "to the buffer",
    };

    /// <summary>What the placements do to the debts, a sentence each.</summary>
    public static IEnumerable<string> Effects(SurplusStep surplus, NumberStyle style)
    {
        foreach ((ProjectedDebt before, ProjectedDebt after) in surplus.Without.Debts.Zip(surplus.With.Debts))
        {
            if (before.PaidOff is { } then && after.PaidOff is { } now && (now < then || after.AtOnce && !before.AtOnce))
            {
                yield return after.AtOnce
                    ? $"{before.Name} is paid off today instead of in {Month(then)}."
                    : $"{before.Name} is paid off in {Month(now)} instead of {Month(then)}.";
            }
        }

        Money saved = surplus.Without.Interest - surplus.With.Interest;
        if (saved.IsPositive && surplus.Without.Never.Length == surplus.With.Never.Length)
        {
            yield return $"It saves {saved.ToString(style)} of interest while the minimums are paid.";
        }
    }

    /// <summary>When a debt is paid off: with the placements, and without where that differs.</summary>
    public static string Course(SurplusStep surplus, DebtId debtId)
    {
        YearMonth? then = surplus.Without.Debts.Single(debt => debt.Id == debtId).PaidOff;
        ProjectedDebt placed = surplus.With.Debts.Single(debt => debt.Id == debtId);
        string with = placed.AtOnce ? "paid off today" : placed.PaidOff is { } month ? $"paid off {Month(month)}" : "never ends at its minimum";
        return placed.PaidOff == then && !placed.AtOnce ? with : $"{with}, not {(then is { } before ? Month(before) : "never")}";
    }

    /// <summary>When a pot is full: with the placements, and without where that differs.</summary>
    public static string Course(PotCourse course, LocalDate today)
    {
        string with = course.With is not { } date ? "not full for years" : date == today ? "full today" : $"full on {Day(date)}";
        return course.With == course.Without ? with : $"{with}, not {(course.Without is { } before ? Day(before) : "for years")}";
    }

    private static string Day(LocalDate date) => $"{DateText.Short(date)} {date.Year}";

    private static IEnumerable<string> Shortfall(RoutinePlan plan, NumberStyle style) =>
    [
        .. Report.Prose($"! {(-plan.Surplus.Before).ToString(style)} is missing, with every pot that was not set by hand cut to the least it needs."),
        .. plan.Unpayable.SelectMany(unpaid => Report.Prose(
            $"  {ClosingTexts.Name(unpaid.Obligation)}, {DateText.Long(unpaid.Obligation.Due)}: {unpaid.Short.ToString(style)} short of {unpaid.Obligation.Amount.ToString(style)}")),
        .. Cautions.CannotPay,
    ];

    private static string Month(YearMonth month) => month.ToString("MMM uuuu", CultureInfo.InvariantCulture);
}
