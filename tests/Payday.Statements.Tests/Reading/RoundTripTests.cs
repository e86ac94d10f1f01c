using System.Text;
using CsCheck;
using NodaTime.Text;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Statements.Sums;
using Payday.Statements.Tests.Made;
using Payday.Statements.Tests.Writers;

namespace Payday.Statements.Tests.Reading;

/// <summary>Whatever statement is written in a format is read back the same.</summary>
public sealed class RoundTripTests
{
    // Amounts turned round are only proven by a balance; without one a minus is taken as going out, see CsvQuestionTests.
    private static readonly Gen<CsvDialect> Dialects =
        from separator in Gen.OneOf(';', ',', '\t', '|')
        from mark in Gen.OneOf('.', ',')
        from grouped in Gen.Int[0, 2]
        from date in Gen.OneOf("uuuu-MM-dd", "dd.MM.uuuu", "MM/dd/uuuu", "d/M/uu", "dd MMM uuuu", "uuuuMMdd")
        from shape in Gen.OneOf(Enum.GetValues<AmountShape>())
        from hasBalance in Gen.Bool
        from newestFirst in Gen.Bool
        from hasHeader in Gen.Bool
        select new CsvDialect(separator, mark, Group(mark, grouped), date, shape, hasBalance || shape == AmountShape.Turned, newestFirst, hasHeader);

    [Fact]
    public void Read_AnyOfx_IsTheSame() => Gen.Select(MadeStatements.Any, Gen.Bool).Sample((statement, asXml) =>
    {
        StatementFile read = Read(OfxWriter.Write(statement, asXml));

        AssertSame(statement, read, StatementFormat.Ofx, hasOpening: false);
    });

    [Fact]
    public void Read_AnyCamt_IsTheSame() => Gen.Select(MadeStatements.Any, Gen.Int[2, 13], Gen.Bool).Sample((statement, version, isReport) =>
    {
        StatementFile read = Read(CamtWriter.Write(statement, version, isReport));

        AssertSame(statement, read, isReport ? StatementFormat.Camt052 : StatementFormat.Camt053, hasOpening: true);
        Assert.Equal(isReport, read.Faults.Any(fault => fault.Kind == FaultKind.NotClosed));
        Assert.True(AddingUp.Of(read.Statements[0]).AddsUp);
    });

    [Fact]
    public void Read_AnyMt940_IsTheSame() => Gen.Select(MadeStatements.Any, Gen.Bool).Sample((statement, hasEnvelope) =>
    {
        StatementFile read = Read(Mt940Writer.Write(statement, hasEnvelope));

        AssertSame(statement, read, StatementFormat.Mt940, hasOpening: true);
        Assert.True(AddingUp.Of(read.Statements[0]).AddsUp);
    });

    [Fact]
    public void Read_AnyCsv_IsTheSameOnceItsQuestionsAreAnswered() => Gen.Select(MadeStatements.OfLines(3, 25), Dialects).Sample((statement, dialect) =>
    {
        string text = CsvWriter.Write(statement, dialect);
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        StatementFile read = StatementReader.Read(bytes, ReadingOptions.None);
        for (int asked = 0; read.Questions.Length > 0; asked++)
        {
            Assert.True(asked < 4, "It asks without end.");
            CsvProfile answer = Answered(read.Questions[0], statement, text);
            read = StatementReader.Read(bytes, new ReadingOptions { Profiles = [answer] });
        }

        Assert.Empty(read.Faults);
        Assert.Equal(Essence(statement, dialect), Essence(read.Statements[0], dialect));
        if (dialect.HasBalance)
        {
            Assert.True(AddingUp.Of(read.Statements[0]).AddsUp);
            Assert.Equal(statement.Opening!.Amount, read.Statements[0].Opening!.Amount);
            Assert.Equal(statement.Closing!.Amount, read.Statements[0].Closing!.Amount);
        }

        // What was found and answered is enough for the next file of the account.
        StatementFile again = StatementReader.Read(bytes, new ReadingOptions { Profiles = [read.Profile!] });
        Assert.Empty(again.Questions);
        Assert.Equal(Essence(statement, dialect), Essence(again.Statements[0], dialect));
    });

    private static string Group(char mark, int grouped) => grouped switch { 0 => "", 1 => mark == '.' ? "," : ".", _ => "\u00A0" };

    // The person knows the truth and takes the choice that says it.
    private static CsvProfile Answered(CsvQuestion question, Statement truth, string text)
    {
        string row = text.Split("\r\n")[question.Line - 1];
        StatementLine Line(string shown) => truth.Lines.First(one => shown.Contains(one.Text, StringComparison.Ordinal));
        StatementLine line = Line(row);
        string directions = string.Join(", ", question.Written.Split(" / ").Select(shown => Line(shown).Amount.ToPlain()));
        CsvChoice? right = question.Choices.FirstOrDefault(choice => question.Kind switch
        {
            CsvQuestionKind.DateOrder => choice.Reads == LocalDatePattern.Iso.Format(line.Date),
            CsvQuestionKind.Currency => choice.Reads == "EUR",
            CsvQuestionKind.AmountColumn => choice.Reads == "Amount" || choice.Reads.TrimStart('-') == line.Amount.ToPlain().TrimStart('-').Replace('.', ','),
            CsvQuestionKind.Direction => choice.Reads == directions,
            _ => choice.Reads.TrimStart('-') == line.Amount.ToPlain().TrimStart('-'),
        });
        Assert.True(right is not null, $"No choice is right: {question.Kind} {question.Written}: {string.Join(" / ", question.Choices.Select(choice => choice.Reads))}");
        return right!.Profile;
    }

    private static void AssertSame(Statement written, StatementFile read, StatementFormat format, bool hasOpening)
    {
        Assert.DoesNotContain(read.Faults, fault => !fault.IsNotice);
        Statement one = Assert.Single(read.Statements);
        Assert.Equal(format, one.Format);
        Assert.Equal(written.Account, one.Account);
        Assert.Equal(Essence(written.Lines, hasText: true), Essence(one.Lines, hasText: true));
        Assert.Equal(hasOpening ? written.Opening!.Amount : null, one.Opening?.Amount);
        Assert.Equal(written.Closing!.Amount, one.Closing!.Amount);
    }

    // Without balances nothing says which way the lines of a single day run.
    private static string Essence(Statement statement, CsvDialect dialect) =>
        Essence(dialect.HasBalance ? statement.Lines : statement.Lines.OrderBy(line => line.Date).ThenBy(line => line.Amount), hasText: false);

    private static string Essence(IEnumerable<StatementLine> lines, bool hasText) => string.Join('\n', lines.Select(line =>
        $"{LocalDatePattern.Iso.Format(line.Date)} {line.Amount} {(hasText ? $"{line.Party} {line.Text.Replace("MADE ", "", StringComparison.Ordinal)}" : "")}"));

    private static StatementFile Read(string text) => StatementReader.Read(Encoding.UTF8.GetBytes(text), ReadingOptions.None);
}
