using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Receiving;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of notes that the bank gave in the place of those on the slip.</summary>
internal static class ReceivingTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(ReceivingFault fault, NumberStyle style) => fault switch
    {
        ReceivingFault.NoSlip => "No payday is closed yet, so no slip was taken to the bank; close one first.",
        ReceivingFault.NothingAsked none => $"The slip of {DateText.Day(none.Payday)} asks for nothing, so there are no notes to enter.",
        ReceivingFault.BeforePayday before =>
            $"The slip is of {DateText.Day(before.Payday)}, so its notes can't have been fetched on {DateText.Day(before.Date)}; give that day or a later one.",
        ReceivingFault.NoSuchPiece piece =>
            $"No note or coin of {piece.Value.ToString(style)} is in use; write one that is, or add it in the household's settings.",
        ReceivingFault.AsAsked asked => $"That is what the slip of {DateText.Day(asked.Payday)} asks for, so nothing has to be entered.",
        ReceivingFault.TooMuch much =>
            $"The bank gave {much.More.ToString(style)} more than the slip asks for, and the buffer in the account and what it keeps back for cash pots lack {much.Lacking.ToString(style)} of that. "
            + "Count again; if it is right, move money to the buffer first, then enter it.",
        ReceivingFault.NothingEntered => "No other notes were entered for the last closed payday, so there is nothing to take back.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

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
