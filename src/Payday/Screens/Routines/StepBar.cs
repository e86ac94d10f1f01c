using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Routines;
using Payday.Screens.Frames;

namespace Payday.Screens.Routines;

/// <summary>The seven steps in a line, with the one worked on and those done.</summary>
internal static class StepBar
{
    private static readonly ImmutableArray<string> Names =
        ["Income", "Bills", "Debt minimums", "Pots", "Surplus", "Withdrawal", "Slip"];

    private const int Roomy = 72;

    /// <summary>What a step is called.</summary>
    public static string Name(RoutineStep step) => Names[(int)step - 1];

    /// <summary>The line: a check mark for done, <c>&gt;</c> here, <c>!</c> needs doing.</summary>
    /// <remarks>Where there is little room, signs and names stand closer together.</remarks>
    public static FrameLine Of(RoutineStep here, RoutinePlan plan, int width) => new(
    [
        .. Enumerable.Range(1, Names.Length).Select(number =>
        {
            var step = (RoutineStep)number;
            bool alert = (step == RoutineStep.Surplus && plan.LeftToPlace.IsNegative) || (step == RoutineStep.Income && plan.Income.Buffer.IsAsked);
            string sign = step == here ? ">" : alert ? "!" : step < here ? RowSigns.Done.ToString() : " ";
            return new Span(width < Roomy ? $" {sign}{Short(step)}" : $" {sign} {Name(step)}", step == here ? Ink.Strong : alert ? Ink.Alert : step < here ? Ink.Done : Ink.Quiet);
        }),
    ]);

    private static string Short(RoutineStep step) => step == RoutineStep.DebtMinimums ? "Debts" : Name(step);
}
