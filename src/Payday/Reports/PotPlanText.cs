using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Status;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>A pot against its plan, in words.</summary>
internal static class PotPlanText
{
    /// <summary>E.g. <c>20.00 behind, full 1 May 2026</c>, <c>on plan, full 1 May 2026</c>, <c>full</c>.</summary>
    public static string Of(PotPlan plan, NumberStyle style) => plan.Lacks.IsZero
        ? "full"
        : $"{Ahead(plan, style)}, {(plan.Done is { } day ? $"full {Day(day)}" : "not full in time")}";

    /// <summary>E.g. <c>20.00 behind</c>, <c>on plan</c>.</summary>
    public static string Ahead(PotPlan plan, NumberStyle style) => plan.Ahead switch
    {
        { IsPositive: true } more => $"{more.ToString(style)} ahead",
        { IsNegative: true } less => $"{(-less).ToString(style)} behind",
        _ => "on plan",
    };

    /// <summary>E.g. <c>1 May 2026</c>, <c>already</c>, <c>not in time</c>.</summary>
    public static string Done(PotPlan plan) => plan.Lacks.IsZero ? "already" : plan.Done is { } day ? Day(day) : "not in time";

    /// <summary>A sentence: what it would have by now, and what it has more or less.</summary>
    public static string Sentence(PotPlan plan, NumberStyle style) => plan.Lacks.IsZero
        ? $"{plan.Pot.Name} has all that it is for."
        : $"By its plan {plan.Pot.Name} would have {plan.Planned.ToString(style)} by now: {Of(plan, style)}.";

    /// <summary>A line for all that are behind or ahead; nothing where all are on plan.</summary>
    public static IEnumerable<string> Notes(IEnumerable<PotPlan> plans, NumberStyle style)
    {
        PotPlan[] off = [.. plans.Where(plan => !plan.Ahead.IsZero && plan.Lacks.IsPositive)];
        return off.Length == 0 ? [] : ["", $"Against their plans: {string.Join(", ", off.Select(plan => $"{plan.Pot.Name} {Ahead(plan, style)}"))}; the others are on plan."];
    }

    private static string Day(LocalDate day) => $"{DateText.Short(day)} {day.Year.ToString(CultureInfo.InvariantCulture)}";
}
