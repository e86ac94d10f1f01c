using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Files;
using Payday.Reports;
using Payday.Statements.Answers;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Text;

namespace Payday.Commands;

/// <summary>What is said of statements that were read, whatever book they might be taken into.</summary>
internal static class StatementAnswers
{
    /// <summary><c>payday statement --read</c>: what is in the files, and nothing else.</summary>
    public static Answer Read(StatementInput input)
    {
        if (Refusals(input) is [_, ..] refusals)
        {
            return new Answer.Refused([.. refusals, "Nothing was stored."]);
        }

        var lines = new List<string>();
        foreach ((string path, StatementFile file) in input.Files)
        {
            lines.AddRange([.. file.Statements.SelectMany(statement => Lines(path, statement)), .. file.Faults.SelectMany(fault => Report.Prose($"{path}: {FaultTexts.Of(fault)}")), ""]);
        }

        Statement[] statements = [.. input.Statements];
        string[] gaps = [.. StatementChain.Of(statements).Where(step => step.Link == ChainLink.Missing).Select(step => Texts.StatementTexts.Gap(step, NumberStyle.CommaPoint))];
        return new Answer.Done(
            [.. lines, .. gaps.SelectMany(Report.Prose), "Nothing was stored."],
            SummaryJson.Of(StatementSummary.Of(statements)));
    }

    /// <summary>Why files can't be read, or what they ask first; none where they were read.</summary>
    public static string[] Refusals(StatementInput input) =>
    [
        .. input.Refused.Select(fault => Texts.FaultTexts.Of(fault)),
        .. input.Files.SelectMany(file => file.File.Questions.SelectMany(question => Asked(file.Path, question))),
        .. input.Broken.Select(broken => $"{broken.Path}: {FaultTexts.Of(broken.Fault)}"),
    ];

    /// <summary>A statement with its period, its sums, and whether it adds up.</summary>
    public static IEnumerable<string> Lines(string path, Statement statement)
    {
        NumberStyle style = NumberStyle.CommaPoint;
        string from = statement.From is { } first ? DateText.Long(first) : "an unknown day";
        string to = statement.To is { } last ? DateText.Long(last) : "an unknown day";
        yield return $"{path}: {statement.Currency}, {from} to {to}, {"booked line".ToQuantity(statement.Lines.Length)}"
            + (statement.Pending.IsEmpty ? "" : $", {statement.Pending.Length} still to be booked");
        ImmutableArray<ImmutableArray<string>> rows =
        [
            .. statement.Opening is { } opening ? [["Opening balance", opening.Amount.ToString(style)]] : ImmutableArray<ImmutableArray<string>>.Empty,
            ["Came in", Money.Sum(statement.Lines.Where(line => line.Amount.IsPositive).Select(line => line.Amount), statement.Currency).ToString(style)],
            ["Went out", Money.Sum(statement.Lines.Where(line => line.Amount.IsNegative).Select(line => line.Amount), statement.Currency).ToString(style)],
            .. statement.Closing is { } closing ? [["Closing balance", closing.Amount.ToString(style)]] : ImmutableArray<ImmutableArray<string>>.Empty,
        ];
        foreach (string line in Report.Table(style, [new("What"), Report.Amounts("amount")], rows, []))
        {
            yield return "  " + line;
        }

        yield return "  " + Texts.StatementTexts.AddsUp(statement, style);
    }

    private static IEnumerable<string> Asked(string path, CsvQuestion question)
    {
        if (question.Kind == CsvQuestionKind.Currency)
        {
            yield return $"{path}: the file doesn't say its currency; name it with --currency CODE.";
            yield break;
        }

        yield return Texts.StatementTexts.Asked(path, question);
        for (int i = 0; i < question.Choices.Length; i++)
        {
            yield return $"  --choose {i + 1}: {CleanText.OneLine(question.Choices[i].Reads)}";
        }
    }
}
