using Humanizer;
using Payday.Core.Amounts;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a bank's files wherever they are read.</summary>
internal static class StatementTexts
{
    /// <summary>Whether a statement adds up, and where not.</summary>
    public static string AddsUp(Statement statement, NumberStyle style) => AddingUp.Of(statement) switch
    {
        { AddsUp: true } => "It adds up.",
        { AddsUp: null } => "Whether it adds up can't be known: a balance is missing.",
        { Breaks: { } broken } => $"It doesn't add up: before line {broken.Place} of the file {broken.Missing.ToString(style)} is missing.",
        { Expected: { } expected } => $"It doesn't add up: the lines lead to {expected.ToString(style)}, and it closes with {statement.Closing!.Amount.ToString(style)}.",
        _ => "It doesn't add up.",
    };

    /// <summary>That statements in between are missing.</summary>
    public static string Gap(StatementStep step, NumberStyle style)
    {
        string count = step.MissingCount is { } number ? "statement".ToQuantity(number) : "A statement";
        string from = step.MissingFrom is { } day ? $" from {DateText.Long(day)} on" : "";
        string worth = step.Missing is { } missing ? $", with {missing.ToString(style)} in all" : "";
        return $"{count} in between may be missing{from}{worth}.";
    }

    /// <summary>What a file asks before it can be read, in a sentence.</summary>
    public static string Asked(string path, CsvQuestion question) =>
        $"{path}: line {question.Line} doesn't say {Asked(question.Kind)}: {CleanText.OneLine(question.Written)}";

    /// <summary>What only the person can say, as the end of <c>it doesn't say …</c>.</summary>
    public static string Asked(CsvQuestionKind kind) => kind switch
    {
        CsvQuestionKind.Currency => "its currency",
        CsvQuestionKind.DateOrder => "which figure is the day",
        CsvQuestionKind.DecimalMark => "which mark stands before the decimals",
        CsvQuestionKind.Direction => "which way the money went",
        _ => "which column is the amount",
    };
}
