using Payday.Core.Amounts;
using Payday.Core.Reconciling;
using Payday.Core.Status;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a reconciliation: why it can't be, and what came of it.</summary>
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

    /// <summary>What came of the last reconciliation, e.g. <c>Agreed with the bank on Wed 4 Mar.</c></summary>
    public static string Of(BankAgreement bank, NumberStyle style) => bank.Difference switch
    {
        { IsZero: true } => $"Agreed with the bank on {DateText.Weekday(bank.Date)}",
        { IsNegative: true } less => $"The bank had {(-less).ToString(style)} less than it should on {DateText.Weekday(bank.Date)}",
        var more => $"The bank had {more.ToString(style)} more than it should on {DateText.Weekday(bank.Date)}",
    };
}
