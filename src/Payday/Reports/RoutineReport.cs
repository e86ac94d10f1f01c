using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>The whole routine as text: the first six steps and the day's arithmetic.</summary>
internal static class RoutineReport
{
    /// <summary>All of it, at most 80 columns wide.</summary>
    public static IEnumerable<string> Lines(RoutinePlan plan)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        string extra = plan.Payday.IsExtra ? " (extra payday)" : "";
        return
        [
            .. Report.Heading($"Payday of {DateText.Long(plan.Period.First)}{extra}", Covers(plan)),
            .. OddPeriods.Of(plan).SelectMany(odd => Report.Prose("! " + OddPeriodTexts.Of(odd))),
            "",
            .. IncomeLines(plan.Income, style),
            "",
            .. BillsReport.Step(plan, style),
            "",
            .. DebtsReport.Step(plan, style),
            "",
            .. PotsReport.Step(plan, style),
            "",
            .. SurplusReport.Step(plan, style),
            .. Idle(plan, style),
            "",
            .. WithdrawalReport.Step(plan, style),
            "",
            .. SumLine(plan, style),
        ];
    }

    /// <summary>The day's arithmetic as it would stand on paper.</summary>
    public static IEnumerable<string> SumLine(RoutinePlan plan, NumberStyle style)
    {
        string carried = plan.Income.CarriedOver.IsZero ? "" : $" + {plan.Income.CarriedOver.ToString(style)} carried over";
        string buffer = plan.Income.Buffer.Amount.IsZero ? "" : $" + {plan.Income.Buffer.Amount.ToString(style)} from the buffer";
        string overdraft = plan.Income.Overdraft.Amount.IsZero ? "" : $" - {plan.Income.Overdraft.Amount.ToString(style)} to the overdraft";
        string sum = $"{plan.Income.CameIn.ToString(style)} in{carried}{buffer}{overdraft} - {plan.Bills.Total.ToString(style)} bills"
            + $" - {plan.Debts.Total.ToString(style)} debts - {plan.Pots.Total.ToString(style)} pots"
            + $" - {plan.Surplus.Placed.ToString(style)} placed";
        string left = $"= {plan.LeftToPlace.ToString(style)} left to place" + (plan.LeftToPlace.IsZero ? ": all placed" : "");
        return [new string('-', Report.Width), .. Report.Prose(sum), TextColumns.PadLeft(left, Report.Width)];
    }

    private static IEnumerable<string> Idle(RoutinePlan plan, NumberStyle style) => IdleBuffer.Of(plan) is { IsPositive: true } idle
        ? Report.Prose($"The buffer has {idle.ToString(style)} more than it keeps and {IdleBuffer.Days} days need; --buffer {(plan.Income.Buffer.Amount + idle).ToPlain()} has it placed.")
        : [];

    private static string Covers(RoutinePlan plan)
    {
        (LocalDate first, LocalDate last) = (plan.Period.First, plan.Period.Last);
        int fillDays = plan.Period.FillDays(plan.Book.Household.Settings.FillDay).Length;
        return "covers " + (first == last ? "this day" : $"{DateText.Short(first)} to {DateText.Short(last)}")
            + (fillDays == 0 ? ", no fill day" : $", {"fill day".ToQuantity(fillDays)}");
    }

    private static IEnumerable<string> IncomeLines(IncomeStep income, NumberStyle style) =>
    [
        .. Report.Heading("1 Income"),
        .. Report.Table(
            style,
            IncomeTable.Columns,
            income.Lines.Select(line => IncomeTable.Cells(line, style)),
            ["Came in", "", income.CameIn.ToString(style)],
            ["Carried over", "", income.CarriedOver.ToString(style)]),
        .. Overdraft(income.Overdraft, style),
        .. Buffer(income.Buffer, style),
    ];

    private static IEnumerable<string> Overdraft(OverdraftPayoff overdraft, NumberStyle style) => overdraft.Owed.IsZero
        ? []
        : Report.Prose($"{(overdraft.Amount.IsZero ? $"Nothing of the overdraft of {overdraft.Owed.ToString(style)} is paid off" : $"{overdraft.Amount.ToString(style)} pays off the overdraft of {overdraft.Owed.ToString(style)} first{(overdraft.Rest.IsZero ? "" : $", and {overdraft.Rest.ToString(style)} of it is left")}")}. {Cautions.Overdraft}");

    private static IEnumerable<string> Buffer(BufferHelp buffer, NumberStyle style) => (buffer.Amount.IsPositive, buffer.IsAsked) switch
    {
        (true, _) => Report.Prose($"From the buffer {buffer.Amount.ToString(style)}: it has {buffer.Has.ToString(style)} and keeps {(buffer.Has - buffer.Amount).ToString(style)}."),
        (_, true) => Report.Prose($"! {buffer.Short.ToString(style)} is missing before anything is cut, and the buffer has {buffer.Has.ToString(style)}. Say what it gives."),
        _ => [],
    };
}
