using System.Globalization;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>Where the rest goes and what it does; or what can't be paid.</summary>
internal static class SurplusReport
{
    // A day without its year can't be the one a year later.
    private const int MonthsByDay = 11;

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

        foreach (string line in Effects(surplus, style).Concat(Filled(plan)).Append(Other(surplus, style)).Where(line => line.Length > 0).SelectMany(line => Report.Prose("  " + line)))
        {
            yield return line;
        }
    }

    private static string Target(RoutinePlan plan, Placement placement) => placement.Target switch
    {
        MoveTarget.ToDebt to => $"extra on {plan.Book.Household.Debts.Single(debt => debt.Id == to.Id).Name}",
        MoveTarget.ToPot to => $"more in {plan.Book.Household.Pots.Single(pot => pot.Id == to.Id).Name}",
        MoveTarget.ToBill to => $"set aside for {plan.Book.Household.Bills.Single(bill => bill.Id == to.Id).Name}",
        _ => "to the buffer",
    };

    /// <summary>What the placements do to the debts, a sentence each.</summary>
    public static IEnumerable<string> Effects(SurplusStep surplus, NumberStyle style)
    {
        foreach (DebtChange change in surplus.Debts)
        {
            bool isPlacedOn = surplus.Placements.Any(placement => placement.Target == MoveTarget.Debt(change.After.Id));
            if (change is { Before.PaidOff: { } then, After.PaidOff: { } now, MonthsSooner: not 0 })
            {
                yield return change.After.AtOnce
                    ? $"{change.After.Name} is paid off today instead of in {Month(then)}."
                    : $"{change.After.Name} is paid off in {Month(now)} instead of {Month(then)}{(isPlacedOn ? "" : Because(surplus, change))}.";
            }
        }

        if (Saved(surplus) is { } saved)
        {
            yield return $"It saves {saved.ToString(style)} of interest while the minimums are paid.";
        }
    }

    /// <summary>What the placements save as they are, in a sentence that can't be read as being about another one; none for nothing.</summary>
    public static IEnumerable<string> Now(SurplusStep surplus, NumberStyle style)
    {
        if (Saved(surplus) is { } saved)
        {
            yield return $"As placed now: saves {saved.ToString(style)} of interest while the minimums are paid.";
        }
    }

    private static Money? Saved(SurplusStep surplus) =>
        surplus.Without.Interest - surplus.With.Interest is { IsPositive: true } saved && surplus.Without.Never.Length == surplus.With.Never.Length ? saved : null;

    /// <summary>What the other order would do, or the proposal where another one was made by hand; empty where neither makes a difference.</summary>
    public static string Other(SurplusStep surplus, NumberStyle style)
    {
        if (surplus.Changed)
        {
            return OtherWay.ProposalCosts(surplus) is { } costs ? Costs("The proposal", costs, style) : "";
        }

        OtherWay other = OtherWay.Of(surplus);
        return other.Costs is { } more ? Costs(other.Order == DebtOrder.HighestRate ? "The highest rate first" : "The smallest balance first", more, style) : "";
    }

    private static string Costs(string what, Money costs, NumberStyle style) => costs switch
    {
        { IsPositive: true } => $"{what} would cost {costs.ToString(style)} more interest.",
        { IsNegative: true } => $"{what} would save {(-costs).ToString(style)} of interest more.",
        _ => "",
    };

    // Of pots and bills that something was placed on.
    private static IEnumerable<string> Filled(RoutinePlan plan)
    {
        LocalDate today = plan.Period.First;
        foreach (PotCourse course in plan.Surplus.Placements.Any(placement => placement.Target is MoveTarget.ToPot) ? PotCourse.Of(plan) : [])
        {
            if (!Placing.On(plan, MoveTarget.Pot(course.PotId)).IsZero)
            {
                yield return $"{plan.Book.Household.Pots.Single(pot => pot.Id == course.PotId).Name} is {Full(course.With, today)}{Instead(course.With, course.Without)}.";
            }
        }

        foreach (BillCourse course in plan.Surplus.Placements.Any(placement => placement.Target is MoveTarget.ToBill) ? BillCourse.Of(plan) : [])
        {
            if (!Placing.On(plan, MoveTarget.Bill(course.BillId)).IsZero)
            {
                yield return $"{plan.Book.Household.Bills.Single(bill => bill.Id == course.BillId).Name} is {Whole(course.With, today)}{Instead(course.With, course.Without)}.";
            }
        }
    }

    private static string Instead(LocalDate? with, LocalDate? without) =>
        with == without ? "" : without is { } date ? $" instead of {Day(date)}" : " instead of not in time";

    /// <summary>When a debt ends, e.g. <c>today</c>, <c>Jan 2027</c>.</summary>
    public static string End(ProjectedDebt debt) => debt.AtOnce ? "today" : debt.PaidOff is { } month ? Month(month) : "never";

    /// <summary>When a pot or a bill has it all, e.g. <c>today</c>, <c>6 Mar</c>, <c>Mar 2027</c>; empty where it isn't in sight.</summary>
    public static string End(LocalDate? date, LocalDate today) => date is { } day
        ? day == today ? "today" : day < today.PlusMonths(MonthsByDay) ? DateText.Short(day) : Month(day.ToYearMonth())
        : "";

    /// <summary>E.g. <c>6 Mar 2026</c>.</summary>
    public static string Day(LocalDate date) => $"{DateText.Short(date)} {date.Year}";

    /// <summary>What a course does to a debt, against another one, e.g. <c>3 months sooner, saves 45.20</c>; empty for nothing.</summary>
    public static string Change(DebtChange change, NumberStyle style) =>
        string.Join(", ", new[] { Time(change), Interest(change, style) }.Where(part => part.Length > 0));

    /// <summary>The same where there is little room: what it saves or costs, which says more than by how many months; those where that is nothing.</summary>
    public static string ShortChange(DebtChange change, NumberStyle style) => change is { EndsNow: false, EndsNoMore: false } && Interest(change, style) is { Length: > 0 } interest ? interest : Change(change, style);

    private static string Interest(DebtChange change, NumberStyle style) => change.Saved switch
    {
        { IsPositive: true } saved => $"saves {saved.ToString(style)}",
        { IsNegative: true } saved => $"costs {(-saved).ToString(style)} more",
        _ => "",
    };

    private static string Time(DebtChange change) => change switch
    {
        { EndsNow: true } => "would never end",
        { EndsNoMore: true } => "never ends now",
        { MonthsSooner: > 0 and { } months } => $"{"month".ToQuantity(months)} sooner",
        { MonthsSooner: < 0 and { } months } => $"{"month".ToQuantity(-months)} later",
        _ => "",
    };


    /// <summary>Which debts end in another month with a change, and why, a sentence each: without the one that it is made on.</summary>
    public static IEnumerable<string> Elsewhere(SurplusStep surplus, IEnumerable<DebtChange> changes, MoveTarget target) => changes
        .Where(change => MoveTarget.Debt(change.After.Id) != target)
        .Select(change => change switch
        {
            { EndsNoMore: true } => $"{change.After.Name} never ends then{Because(surplus, change)}.",
            { EndsNow: true } => $"{change.After.Name} ends in {Month(change.After.PaidOff!.Value)} then{Because(surplus, change)}.",
            { MonthsSooner: not (null or 0) and { } months } =>
                $"{change.After.Name} ends {Moved(months)}{Because(surplus, change)}.",
            _ => "",
        })
        .Where(sentence => sentence.Length > 0);

    /// <summary>Why a debt ends later or costs more as placed now, where nothing is placed on it; empty where it does neither.</summary>
    public static string Worse(SurplusStep surplus, DebtChange change, NumberStyle style)
    {
        string does = change switch
        {
            { EndsNoMore: true } => "never ends",
            { MonthsSooner: < 0 and { } months } => $"ends {Moved(months)}",
            { Saved: { IsNegative: true } saved } => $"costs {(-saved).ToString(style)} more",
            _ => "",
        };
        string because = Because(surplus, change);
        return does.Length == 0 ? "" : $"As placed now it {does}{(because.Length == 0 ? ": other money comes to it later" : because)}.";
    }

    // E.g. a month sooner, 3 months later.
    private static string Moved(int months)
    {
        string way = months > 0 ? "sooner" : "later";
        return $"{(Math.Abs(months) == 1 ? "a month" : "month".ToQuantity(Math.Abs(months)))} {way}";
    }

    /// <summary>Why, e.g. <c>: the money of Dental plan comes to it later</c>; empty where nothing else makes the difference.</summary>
    private static string Because(SurplusStep surplus, DebtChange change)
    {
        if (change.Because is not { } because)
        {
            return "";
        }

        string money = $"money of {surplus.With.Debts.Single(debt => debt.Id == because.From).Name}";
        return because.Comes switch
        {
            RollOnComes.Later => $": the {money} comes to it later",
            RollOnComes.Sooner => $": the {money} comes to it sooner",
            RollOnComes.NoMore => $": no {money} comes to it any more",
            RollOnComes.AsWell => $": the {money} comes to it then",
            RollOnComes.Less => $": less {money} comes to it",
            _ => $": more {money} comes to it",
        };
    }

    private static string Full(LocalDate? date, LocalDate today) => date is not { } day ? "not full in time" : day == today ? "full today" : $"full on {Day(day)}";

    private static string Whole(LocalDate? date, LocalDate today) => date is not { } day ? "not whole in time" : day == today ? "whole today" : $"whole on {Day(day)}";

    private static IEnumerable<string> Shortfall(RoutinePlan plan, NumberStyle style) =>
    [
        .. Report.Prose($"! {(-plan.Surplus.Before).ToString(style)} is missing, with every pot that was not set by hand cut to the least it needs."),
        .. plan.Unpayable.SelectMany(unpaid => Report.Prose(
            $"  {ClosingTexts.Name(unpaid.Obligation)}, {DateText.Long(unpaid.Obligation.Due)}: {unpaid.Short.ToString(style)} short of {unpaid.Obligation.Amount.ToString(style)}")),
        .. Cautions.CannotPay,
    ];

    private static string Month(YearMonth month) => month.ToString("MMM uuuu", CultureInfo.InvariantCulture);
}
