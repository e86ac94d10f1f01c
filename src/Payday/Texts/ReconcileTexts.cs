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
        ReconcileFault.BeforeLast before => $"The account was compared with the bank on {DateText.Day(before.Last)} already; give that day or a later one.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What came of the last reconciliation, e.g. <c>Agreed with the bank on Wed 4 Mar</c>; a difference with its name.</summary>
    public static string Of(BankAgreement bank, NumberStyle style) => bank.Difference switch
    {
        { IsZero: true } => $"Agreed with the bank on {DateText.Weekday(bank.Date)}",
        { IsNegative: true } less => $"The bank had {(-less).ToString(style)} less than it should on {DateText.Weekday(bank.Date)}{Named(bank)}",
        var more => $"The bank had {more.ToString(style)} more than it should on {DateText.Weekday(bank.Date)}{Named(bank)}",
    };

    /// <summary>The same as a sentence of its own, which also says whether a difference is explained; or that the account was never held against the bank.</summary>
    public static string Whole(BankAgreement? bank, NumberStyle style) => bank switch
    {
        null => "The account was not compared with the bank yet.",
        { Difference.IsZero: false, IsExplained: true } => $"{Of(bank, style)}; what was entered since explains it.",
        _ => $"{Of(bank, style)}.",
    };

    /// <summary>The same in a few words, as a part of a line.</summary>
    public static string Short(BankAgreement? bank, NumberStyle style) => bank switch
    {
        null => "bank not looked at yet",
        { Difference.IsZero: true } => $"agreed with the bank on {DateText.Weekday(bank.Date)}",
        { Difference: { IsNegative: var isLess } difference } =>
            $"bank {(isLess ? -difference : difference).ToString(style)} {(isLess ? "less" : "more")} on {DateText.Weekday(bank.Date)}{Named(bank)}{(bank.IsExplained ? ", explained" : "")}",
    };

    /// <summary>What is on its way, e.g. <c>412.31 out and 25.00 in</c>.</summary>
    public static string Moving(OnTheWay way, NumberStyle style) => (way.Out.IsPositive, way.In.IsPositive) switch
    {
        (true, true) => $"{way.Out.ToString(style)} out and {way.In.ToString(style)} in",
        (true, false) => $"{way.Out.ToString(style)} out",
        _ => $"{way.In.ToString(style)} in",
    };

    /// <summary>What is on its way, with what the bank should show, e.g. <c>412.31 out and 25.00 in on the way; the bank should show 4,777.98</c>.</summary>
    public static string Of(OnTheWay way, NumberStyle style)
    {
        string less = way.Difference switch
        {
            { IsZero: true } => "",
            { IsNegative: true } => $" with the {(-way.Difference).ToString(style)} less it had",
            _ => $" with the {way.Difference.ToString(style)} more it had",
        };
        return $"{Moving(way, style)} on the way; the bank should show {way.Bank.ToString(style)}{less}";
    }

    private static string Named(BankAgreement bank) => bank.Name.Length == 0 ? "" : $" (\"{CleanText.OneLine(bank.Name)}\")";
}
