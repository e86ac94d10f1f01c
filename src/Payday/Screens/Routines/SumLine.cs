using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Routines;

/// <summary>The day's arithmetic as it would stand on paper, and what is left to place.</summary>
internal static class SumLine
{
    /// <summary>A rule, the sum, and the result.</summary>
    public static IEnumerable<FrameLine> Of(RoutinePlan plan, int width)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        string carried = plan.Income.CarriedOver.IsZero ? "" : $" + {plan.Income.CarriedOver.ToString(style)} before";
        yield return FrameLine.Of(new string('-', width), Ink.Quiet);
        yield return FrameLine.Of(
            $" {plan.Income.CameIn.ToString(style)} in{carried} - {plan.Bills.Total.ToString(style)} bills - {plan.Debts.Total.ToString(style)} debts"
            + $" - {plan.Pots.Total.ToString(style)} pots - {plan.Surplus.Placed.ToString(style)} placed");
        Money left = plan.LeftToPlace;
        yield return FrameLine.Of(
            TextColumns.PadLeft(left.IsZero ? $"= {left.ToString(style)}, all placed " : $"= {left.ToString(style)} left to place ", width),
            left.IsZero ? Ink.Done : left.IsNegative ? Ink.Hand : Ink.Strong);
    }
}
