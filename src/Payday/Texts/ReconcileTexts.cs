using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Households;
using Payday.Core.Reconciling;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a reconciliation: why it can't be, where to look for a difference, and what came of it.</summary>
internal static class ReconcileTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(ReconcileFault fault) => fault switch
    {
        ReconcileFault.NoBalance => "The bank's balance is missing; give it first.",
        ReconcileFault.NoSuchLine no => $"There is no line {no.Number} that the bank has yet to show.",
        ReconcileFault.BeforeStart before => $"{DateText.Day(before.Date)} is before the household's first day, {DateText.Day(before.Start)}.",
        ReconcileFault.BeforeLast before => $"The account was held against the bank on {DateText.Day(before.Last)} already; give that day or a later one.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>One sentence: where to look.</summary>
    public static string Of(Culprit culprit, Household household)
    {
        NumberStyle style = household.Settings.Numbers;
        string Line(AccountLine line) => $"{AccountLineText.Of(household, line)}, {line.Amount.ToString(style)} on {DateText.Short(line.Date)}";
        return CleanText.OneLine(culprit switch
        {
            Culprit.NotTicked not => $"{Line(not.Line)}, is the difference: does the bank show it?",
            Culprit.NotThere not => $"{Line(not.Line)}, is the difference: does the bank really show it?",
            Culprit.Twice twice => $"{Line(twice.Line)}, is there twice, the other on {DateText.Short(twice.Twin.Date)}: was it entered twice?",
            Culprit.WrongSign wrong => $"{Line(wrong.Line)}, is half of the difference: did it go the other way?",
            Culprit.Swapped swapped => $"{Line(swapped.Line)}: the bank may have {swapped.Amount.ToString(style)}, two digits swapped.",
            Culprit.Together together => $"Together they are the difference: {together.Lines.Select(Line).Humanize()}.",
            Culprit.NotEntered { Amount.IsNegative: true } => "Nothing here explains it: look at the bank for a fee or a payment that isn't entered here.",
            Culprit.NotEntered => "Nothing here explains it: look at the bank for interest, a refund or an income that isn't entered here.",
            _ => throw new ArgumentOutOfRangeException(nameof(culprit), culprit, "There is no text for it."),
        });
    }

    /// <summary>What came of the last reconciliation, e.g. <c>Agreed with the bank on Wed 4 Mar.</c></summary>
    public static string Of(BankAgreement bank, NumberStyle style) => bank.Difference switch
    {
        { IsZero: true } => $"Agreed with the bank on {DateText.Weekday(bank.Date)}",
        { IsNegative: true } less => $"The bank had {(-less).ToString(style)} less than it should on {DateText.Weekday(bank.Date)}",
        var more => $"The bank had {more.ToString(style)} more than it should on {DateText.Weekday(bank.Date)}",
    };
}
