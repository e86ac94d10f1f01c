using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Receiving;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What becomes of a filling once other notes were given than the slip asked for.</summary>
internal static class ReceivedReport
{
    /// <summary>What becomes of the filling, a sentence each: the difference, what is the pots' still, and which wishes gave way.</summary>
    public static ImmutableArray<string> Of(Household household, ReceivingPlan plan)
    {
        NumberStyle style = household.Settings.Numbers;
        var lines = ImmutableArray.CreateBuilder<string>();
        Currency currency = household.Currency;
        lines.Add($"Asked for {plan.Closed.Withdraw.Worth(currency).ToString(style)}, given {plan.Got.Worth(currency).ToString(style)}: {Difference(plan.More, style)}.");
        foreach (Core.Pots.Pot pot in household.Pots.Where(pot => plan.BackInAccount.ContainsKey(pot.Id)))
        {
            lines.Add($"{pot.Name} gets {plan.BackInAccount[pot.Id].ToString(style)} less; the account keeps it for its next fill.");
        }

        if (plan.FromBuffer.IsPositive)
        {
            lines.Add($"{plan.FromBuffer.ToString(style)} more than asked for comes out of the buffer in the account and lies loose at home. If the account paid less, reconciling it will say so.");
        }

        if (!plan.Loose.IsEmpty)
        {
            lines.Add(Loose(household, plan.Loose, plan.LooseOf));
        }

        // Of a pot that gets less in all that is said once, and not of its weeks again.
        lines.AddRange(plan.Gone.Where(gone => gone.Kind != WishKind.Week || !(plan.BackInAccount.ContainsKey(gone.PotId) || plan.LooseOf.ContainsKey(gone.PotId))).Select(gone => Of(gone, style)));
        return lines.ToImmutable();
    }

    /// <summary>Notes that no pot can take, and whose they are.</summary>
    public static string Loose(Household household, Notes loose, IReadOnlyDictionary<Core.Ids.PotId, Money> of)
    {
        NumberStyle style = household.Settings.Numbers;
        string owners = of.Count == 0
            ? "in the buffer"
            : "for the next fill of " + string.Join(", ", of.Select(own => $"{EndText.Pot(household, own.Key)} ({own.Value.ToString(style)})"));
        return $"No pot takes {NoteText.Listed(loose, household.Currency, style)}: it stays loose at home, {owners}.";
    }

    private static string Difference(Money more, NumberStyle style) => more switch
    {
        { IsPositive: true } => $"{more.ToString(style)} more",
        { IsNegative: true } => $"{(-more).ToString(style)} less",
        _ => "the same money",
    };

    private static string Of(WishGone gone, NumberStyle style)
    {
        string where = gone.Week is { } week ? $"{gone.Pot}, week of {DateText.Weekday(week)}:" : $"{gone.Pot}:";
        return gone.Kind switch
        {
            WishKind.TopNote => $"{where} a note of {gone.Is.ToString(style)}, above its top note of {gone.Was.ToString(style)}.",
            WishKind.SmallMoney => $"{where} {gone.Is.ToString(style)} in small notes, not the {gone.Was.ToString(style)} it wants.",
            _ => $"{where} {gone.Is.ToString(style)} in the place of {gone.Was.ToString(style)}.",
        };
    }
}
