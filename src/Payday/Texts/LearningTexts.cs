using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Learning;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What statements teach, in sentences.</summary>
internal static class LearningTexts
{
    /// <summary>What changed in a series.</summary>
    public static string Of(Recurring series, RecurringChange change, NumberStyle style)
    {
        string name = CleanText.OneLine(series.Name);
        return change.Kind switch
        {
            RecurringChangeKind.Stopped => $"{name}: no line since {DateText.Long(change.Since)}.",
            _ when change.Difference.IsNegative => $"{name}: {(-change.Difference).ToString(style)} less since {DateText.Long(change.Since)}, now {series.UsualSize.ToString(style)}.",
            _ => $"{name}: {change.Difference.ToString(style)} more since {DateText.Long(change.Since)}, now {series.UsualSize.ToString(style)}.",
        };
    }

    /// <summary>Where statements and the household differ.</summary>
    public static string Of(HouseholdFinding finding, NumberStyle style) => finding switch
    {
        HouseholdFinding.NotThere { Series: { IsIncome: true } series } => $"{Named(finding)} pays {series.Usual.ToString(style)} and is no income source here.",
        HouseholdFinding.NotThere { Series: var series } => $"{Named(finding)} takes {series.UsualSize.ToString(style)} and is no bill here.",
        HouseholdFinding.OtherAmount { Since: { } since } other =>
            $"{Named(finding)} is {other.Here.ToString(style)} here and {other.Found.ToString(style)} at the bank since {DateText.Long(since)}.",
        HouseholdFinding.OtherAmount other => $"{Named(finding)} is {other.Here.ToString(style)} here and {other.Found.ToString(style)} at the bank{(Varies(other.Series) ? ", to be sure" : "")}.",
        HouseholdFinding.NoLine { Last: { } last } => $"{Named(finding)}: no line since {DateText.Long(last)}.",
        HouseholdFinding.NoLine => $"{Named(finding)}: no line at all.",
        _ => throw new ArgumentOutOfRangeException(nameof(finding)),
    };

    /// <summary>What the statements cover, and what was left out of it.</summary>
    public static IEnumerable<string> Left(Lessons lessons)
    {
        if (lessons.LeavesOut)
        {
            yield return $"Only the last {Lessons.MostMonths} months are looked at.";
        }

        if (lessons.Transfers > 0)
        {
            yield return $"{lessons.Transfers} lines that only move money between these accounts count neither as income nor as spending.";
        }

        if (!lessons.OtherCurrencies.IsEmpty)
        {
            yield return $"Accounts in {string.Join(", ", lessons.OtherCurrencies)} are left out: all here is in {lessons.Currency}.";
        }
    }

    /// <summary>Why nothing is said of habits.</summary>
    public static string TooShort(Lessons lessons) =>
        $"These statements cover {lessons.Span.Length} days, {DateText.Long(lessons.Span.Start)} to {DateText.Long(lessons.Span.End)}. Habits show from three months on: add earlier ones.";

    private static string Named(HouseholdFinding finding) => CleanText.OneLine(finding.Name);

    private static bool Varies(Recurring series) => series.Usual != series.Hold;
}
