using NodaTime;
using Payday.Statements.Files;
using Payday.Statements.Lines;

namespace Payday.Statements.Tests.Reading.Csv;

/// <summary>What the data doesn't say is asked once, and the answer reads the file.</summary>
public sealed class CsvQuestionTests
{
    [Fact]
    public void Read_DaysAllUpToTwelve_AsksWhichIsTheDay()
    {
        const string text = "Date;Payee;Amount\n03/04/2026;Mill;-1.00\n03/04/2026;Dale;-2.00\n";

        CsvQuestion question = Assert.Single(Reads.Text(text).Questions);

        Assert.Equal((CsvQuestionKind.DateOrder, 2), (question.Kind, question.Line));
        Assert.Equal(["2026-04-03", "2026-03-04"], question.Choices.Select(choice => choice.Reads));
        Assert.Equal(["2026-03-04", "2026-03-04"], Answer(text, question, 1).Days());
    }

    [Fact]
    public void Read_OneOrderIsAfterToday_TakesTheOther()
    {
        Statement statement = Reads.One("Date;Payee;Amount\n03/04/2026;Mill;-1.00\n03/04/2026;Dale;-2.00\n", new ReadingOptions { Currency = Reads.Euro, Today = new LocalDate(2026, 3, 10) });

        Assert.Equal(["2026-03-04", "2026-03-04"], statement.Days());
    }

    [Fact]
    public void Read_OneOrderRunsOneWay_TakesIt() =>
        Assert.Equal(["2026-03-04", "2026-04-02", "2026-05-03"], Reads.One("Date;Payee;Amount\n03/04/2026;Mill;-1.00\n04/02/2026;Dale;-2.00\n05/03/2026;Kite;-2.00\n").Days());

    [Fact]
    public void Read_AllAboveZero_AsksWhichWay()
    {
        const string text = "Date;Payee;Amount\n2026-03-02;Mill;12.50\n2026-03-05;Dale;7.00\n";

        CsvQuestion question = Assert.Single(Reads.Text(text).Questions);

        Assert.Equal(CsvQuestionKind.Direction, question.Kind);
        Assert.Equal(["-12.50", "12.50"], question.Choices.Select(choice => choice.Reads));
        Assert.Equal(["-12.50", "-7.00"], Answer(text, question, 0).Amounts());
    }

    // A card's export: purchases above zero, one payment below.
    [Fact]
    public void Read_MostlyAboveZero_AsksWhichWay()
    {
        const string text = "Date;Payee;Amount\n2026-03-02;Mill;12.50\n2026-03-05;Dale;7.00\n2026-03-06;Kite;3.00\n2026-03-07;Pier;4.00\n2026-03-09;Paid;-26.50\n";

        CsvQuestion question = Assert.Single(Reads.Text(text).Questions);

        Assert.Equal(["-12.50", "-7.00", "-3.00", "-4.00", "26.50"], Answer(text, question, 0).Amounts());
    }

    [Theory]
    [InlineData("1.230", "4.560", "-1230.00", "-1.23")]
    [InlineData("1,230", "4,560", "-1.23", "-1230.00")]
    public void Read_MarkCanBeEither_AsksForIt(string one, string other, string withComma, string withPoint)
    {
        string text = $"Date;Payee;Amount\n2026-03-02;Mill;-{one}\n2026-03-05;Dale;-{other}\n";

        CsvQuestion question = Assert.Single(Reads.Text(text).Questions);

        Assert.Equal(CsvQuestionKind.DecimalMark, question.Kind);
        Assert.Equal([withComma, withPoint], question.Choices.OrderBy(choice => choice.Profile.DecimalMark == '.').Select(choice => choice.Reads));
        Assert.Equal(question.Choices[0].Reads, Answer(text, question, 0).Amounts()[0]);
    }

    // As decimals three figures are too many: one reading is left, and it is confirmed, not taken.
    [Fact]
    public void Read_ThousandsAllThrough_AsksToConfirm()
    {
        const string text = "Date;Payee;Amount\n2026-03-02;Mill;-1.234\n2026-03-05;Dale;-5.678\n";

        CsvQuestion question = Assert.Single(Reads.Text(text).Questions);

        Assert.Equal((CsvQuestionKind.DecimalMark, "-1234.00"), (question.Kind, Assert.Single(question.Choices).Reads));
        Assert.Equal(["-1234.00", "-5678.00"], Answer(text, question, 0).Amounts());
    }

    [Fact]
    public void Read_ThousandsAllThroughWithBalances_IsProvenByThem()
    {
        Statement statement = Reads.One("Date;Payee;Amount;Balance\n2026-03-02;Mill;-1.234;98.766,00\n2026-03-05;Dale;-5.678;93.088,00\n2026-03-05;Kite;-1.000;92.088,00\n");

        Assert.Equal(["-1234.00", "-5678.00", "-1000.00"], statement.Amounts());
    }

    [Fact]
    public void Read_TwoColumnsOfAmountsWithoutNames_AsksWhichOne()
    {
        const string text = "2026-03-02;Mill;-12.50;-14.20\n2026-03-05;Dale;-7.00;-8.10\n";

        CsvQuestion question = Assert.Single(Reads.Text(text).Questions);

        Assert.Equal(CsvQuestionKind.AmountColumn, question.Kind);
        Assert.Equal(["-12.50", "-14.20"], question.Choices.Select(choice => choice.Reads));
        Assert.Equal(["-14.20", "-8.10"], Answer(text, question, 1).Amounts());
    }

    [Fact]
    public void Read_NoCurrencyAnywhere_AsksForIt()
    {
        const string text = "Date;Payee;Amount\n2026-03-02;Mill;-1.00\n";

        CsvQuestion question = Assert.Single(Reads.Text(text, ReadingOptions.None).Questions);

        Assert.Equal(CsvQuestionKind.Currency, question.Kind);
        Assert.Contains("USD", question.Choices.Select(choice => choice.Reads));
    }

    [Fact]
    public void Read_AnotherHeader_AsksAnew()
    {
        const string text = "Date;Payee;Amount\n2026-03-02;Mill;12.50\n2026-03-05;Dale;7.00\n";
        CsvProfile answer = Assert.Single(Reads.Text(text).Questions).Choices[0].Profile;

        StatementFile read = Reads.Text(text.Replace("Payee", "Merchant", StringComparison.Ordinal), new ReadingOptions { Currency = Reads.Euro, Profiles = [answer] });

        Assert.NotEmpty(read.Questions);
    }

    [Fact]
    public void Read_ProfileThatFitsNoMore_IsFoundAnew()
    {
        var stale = new CsvProfile("Date|Payee|Amount") { Columns = new CsvColumns(1, 0), DateOrder = CsvDateOrder.MonthFirst };

        Statement statement = Reads.One("Date;Payee;Amount\n2026-03-02;Mill;-12.50\n2026-03-15;Dale;-7.00\n", new ReadingOptions { Currency = Reads.Euro, Profiles = [stale] });

        Assert.Equal(["-12.50", "-7.00"], statement.Amounts());
    }

    private static Statement Answer(string text, CsvQuestion question, int choice) =>
        Reads.One(text, new ReadingOptions { Currency = Reads.Euro, Profiles = [question.Choices[choice].Profile] });
}
