using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Routines;

/// <summary>The day's arithmetic as it would stand on paper, and what is left to place.</summary>
internal static class SumLine
{
    // From so many columns on the result stands beside a sum of one line, too.
    private const int Roomy = 110;

    /// <summary>A rule, the sum on as many lines as it needs, and the result, at the right end.</summary>
    public static IEnumerable<FrameLine> Of(RoutinePlan plan, int width)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        string carried = plan.Income.CarriedOver.IsZero ? "" : $" + {plan.Income.CarriedOver.ToString(style)} before";
        string buffer = plan.Income.Buffer.Amount.IsZero ? "" : $" + {plan.Income.Buffer.Amount.ToString(style)} buffer";
        string[] terms =
        [
            $"{plan.Income.CameIn.ToString(style)} in{carried}{buffer}",
            .. plan.Income.Overdraft.Amount.IsZero ? Array.Empty<string>() : [$"- {plan.Income.Overdraft.Amount.ToString(style)} overdraft"],
            $"- {plan.Bills.Total.ToString(style)} bills",
            $"- {plan.Debts.Total.ToString(style)} debts",
            $"- {plan.Pots.Total.ToString(style)} pots",
            $"- {plan.Surplus.Placed.ToString(style)} placed",
        ];
        Money left = plan.LeftToPlace;
        string result = left.IsZero ? $"= {left.ToString(style)}, all placed " : left.IsNegative ? $"= {left.ToString(style)}, more is placed than there is: lower something " : $"= {left.ToString(style)} left to place ";
        Ink ink = left.IsZero ? Ink.Done : left.IsNegative ? Ink.Alert : Ink.Strong;
        yield return FrameLine.Rule(width);
        string line = "";
        bool full = false;
        foreach (string term in terms)
        {
            if (TextColumns.Width(line) + TextColumns.Width(term) + 1 > width)
            {
                yield return FrameLine.Of(line);
                line = "";
                full = true;
            }

            line += " " + term;
        }

        // The result gets a line of its own unless the sum needed a second one that has room for it.
        int room = width - TextColumns.Width(line);
        if ((full || width >= Roomy) && TextColumns.Width(result) < room)
        {
            yield return new FrameLine([new Span(line, Ink.Plain), new Span(TextColumns.PadLeft(result, room), ink)]);
            yield break;
        }

        yield return FrameLine.Of(line);
        yield return FrameLine.Of(TextColumns.PadLeft(result, width), ink);
    }
}
