using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Households;
using Payday.Core.Reconciling;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Where to look for a difference with the bank.</summary>
internal static class CulpritText
{
    /// <summary>One sentence: where to look.</summary>
    /// <param name="culprit">What it may be.</param>
    /// <param name="household">Whose account it is.</param>
    /// <param name="hasMore">Whether lines are there that aren't ticked yet: what they explain comes first.</param>
    public static string Of(Culprit culprit, Household household, bool hasMore = false)
    {
        NumberStyle style = household.Settings.Numbers;
        string Line(AccountLine line) => $"{AccountLineText.Of(household, line)}, {line.Amount.ToString(style)} on {DateText.Short(line.Date)}";
        return CleanText.OneLine(culprit switch
        {
            Culprit.NotTicked not => $"{Line(not.Line)}, is the difference: does the bank show it?",
            Culprit.NotThere not => $"{Line(not.Line)}, is the difference: does the bank really show it?",
            Culprit.Twice twice => $"{Line(twice.Line)}, is there twice, the other on {DateText.Short(twice.Twin.Date)}: was it entered twice?",
            Culprit.WrongSign wrong => $"{Line(wrong.Line)}, is half of the difference: did it go the other way?",
            Culprit.Swapped swapped => $"{Line(swapped.Line)}: the bank may have {swapped.Amount.ToString(style)}, two digits swapped; else something isn't entered here.",
            Culprit.Together together => $"Together they are the difference: {together.Lines.Select(Line).InWords()}.",
            Culprit.NoneTicked => "No line is ticked yet: tick those that the bank shows, and see what is left.",
            Culprit.NotEntered missing => (hasMore ? "Tick with Space what else the bank shows. If nothing is left to tick, look" : "Nothing here explains it: look")
                + $" at the bank for {(missing.Amount.IsNegative ? "a fee or a payment" : "interest, a refund or an income")} that isn't entered here.",
            _ => throw new ArgumentOutOfRangeException(nameof(culprit), culprit, "There is no text for it."),
        });
    }
}
