using System.Collections.Immutable;
using System.CommandLine;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Reports;
using Payday.Statements.Answers;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Statements.Sums;
using Payday.Text;

namespace Payday.Commands;

/// <summary><c>payday statement --read</c>: what is in a bank's files. It opens no household and stores nothing.</summary>
internal static class StatementCommand
{
    private const int MostBytes = 16 * 1024 * 1024;
    private const int MostChoices = 20;

    public static Command Build(CommandShell shell)
    {
        var files = new Argument<string[]>("FILE") { Description = "Files from the bank: CSV, OFX, camt.053, camt.052 or MT940.", Arity = ArgumentArity.OneOrMore };
        var read = new Option<bool>("--read") { Description = "Say what is in the files, and nothing else." };
        var currency = new Option<string>("--currency") { Description = "The account's currency, where a file names none.", HelpName = "CODE" };
        Option<int?> choose = OptionValues.Count("--choose", "The reading to take where a file leaves more than one: its number.", 1, MostChoices);
        var command = new PaydayCommand(
            "statement",
            "Read bank statements and say what is in them: period, balances, lines, and whether they add up. Taking them into the book isn't there yet.",
            "payday statement march.csv --read") { files, read, currency, choose };
        return Invocation.Does(command, shell, call => call.Parsed.GetValue(read)
            ? Read(call, call.Parsed.GetRequiredValue(files), call.Parsed.GetValue(currency), call.Parsed.GetValue(choose))
            : new Answer.WrongUse("Statements can't be taken into the book yet; with --read payday says what is in them."));
    }

    private static Answer Read(Invocation call, string[] paths, string? code, int? choice)
    {
        Currency? currency = null;
        if (code is not null)
        {
            if (!Currency.KnownCodes.Contains(code) || !Currency.TryFromCode(code, out Currency known))
            {
                return new Answer.WrongUse($"--currency {code}: that is no currency known here; write one of {string.Join(", ", Currency.KnownCodes)}.");
            }

            currency = known;
        }

        var options = new ReadingOptions { Currency = currency, Today = call.Shell.Today() };
        var statements = new List<Statement>();
        var refusals = new List<string>();
        var lines = new List<string>();
        foreach (string path in paths)
        {
            Result<byte[]> bytes = CommandInput.Bytes(call.Shell, path, MostBytes);
            if (!bytes.Ok)
            {
                refusals.Add(bytes.Fault!);
                continue;
            }

            string shown = CleanText.OneLine(path);
            StatementFile file = Chosen(bytes.Value, options, choice);
            refusals.AddRange(file.Questions.SelectMany(question => Asked(shown, question)));
            IEnumerable<string> noticed = file.Faults.Select(fault => $"{shown}: {FaultTexts.Of(fault)}");
            if (file.Statements.IsEmpty)
            {
                refusals.AddRange(noticed);
                continue;
            }

            statements.AddRange(file.Statements);
            lines.AddRange([.. file.Statements.SelectMany(statement => Lines(shown, statement)), .. noticed.SelectMany(Report.Prose), ""]);
        }

        if (refusals.Count > 0)
        {
            return new Answer.Refused([.. refusals, "Nothing was stored."]);
        }

        string[] gaps = [.. StatementChain.Of(statements).Where(step => step.Link == ChainLink.Missing).Select(Gap)];
        return new Answer.Done(
            [.. lines, .. gaps.SelectMany(Report.Prose), "Nothing was stored."],
            SummaryJson.Of(StatementSummary.Of(statements)));
    }

    // One number answers the file's first question; what is asked after it is asked again.
    private static StatementFile Chosen(byte[] bytes, ReadingOptions options, int? choice)
    {
        StatementFile file = StatementReader.Read(bytes, options);
        return choice is { } number && file.Questions is [var first, ..] && number <= first.Choices.Length
            ? StatementReader.Read(bytes, options with { Profiles = [first.Choices[number - 1].Profile] })
            : file;
    }

    private static IEnumerable<string> Lines(string path, Statement statement)
    {
        AddingUp sum = AddingUp.Of(statement);
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

        yield return "  " + Sentence(statement, sum, style);
    }

    private static string Sentence(Statement statement, AddingUp sum, NumberStyle style) => sum switch
    {
        { AddsUp: true } => "It adds up.",
        { AddsUp: null } => "Whether it adds up can't be known: a balance is missing.",
        { Breaks: { } broken } => $"It doesn't add up: before line {broken.Place} of the file {broken.Missing.ToString(style)} is missing.",
        _ => $"It doesn't add up: the lines lead to {sum.Expected!.Value.ToString(style)}, and it closes with {statement.Closing!.Amount.ToString(style)}.",
    };

    private static string Gap(StatementStep step)
    {
        string count = step.MissingCount is { } number ? "statement".ToQuantity(number) : "A statement";
        string from = step.MissingFrom is { } day ? $" from {DateText.Long(day)} on" : "";
        string worth = step.Missing is { } missing ? $", with {missing.ToString(NumberStyle.CommaPoint)} in all" : "";
        return $"{count} in between may be missing{from}{worth}.";
    }

    private static IEnumerable<string> Asked(string path, CsvQuestion question)
    {
        if (question.Kind == CsvQuestionKind.Currency)
        {
            yield return $"{path}: the file doesn't say its currency; name it with --currency CODE.";
            yield break;
        }

        string what = question.Kind switch
        {
            CsvQuestionKind.DateOrder => "which figure is the day",
            CsvQuestionKind.DecimalMark => "which mark stands before the decimals",
            CsvQuestionKind.Direction => "which way the money went",
            _ => "which column is the amount",
        };
        yield return $"{path}: line {question.Line} doesn't say {what}: {CleanText.OneLine(question.Written)}";
        for (int i = 0; i < question.Choices.Length; i++)
        {
            yield return $"  --choose {i + 1}: {CleanText.OneLine(question.Choices[i].Reads)}";
        }
    }
}
