using System.Text;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Statements.Sums;

namespace Payday.Statements.Tests.Reading.Csv;

public sealed class CsvReaderTests
{
    [Theory]
    [InlineData("Date,Description,Amount\n2026-03-02,Mill,-12.50\n2026-03-05,Dale,-7.00\n2026-03-09,Pay,900.00\n")]
    [InlineData("sep=;\nDate;Description;Amount\n2026-03-02;Mill;-12,50\n2026-03-05;Dale;-7,00\n2026-03-09;Pay;900,00\n")]
    [InlineData("Buchungstag;Verwendungszweck;Betrag\n02.03.26;\"Mill; \"\"old\"\"\";-12,50 \u20AC\n05.03.26;Dale;-7,00 \u20AC\n19.03.26;Pay;900,00 \u20AC\n")]
    [InlineData("2026-03-02\tMill\t12.50-\n2026-03-05\tDale\t7.00-\n2026-03-09\tPay\t900.00\n")]
    [InlineData("Date|Payee|Debit|Credit\n2026-03-02|Mill|12.50|\n2026-03-05|Dale|7.00|0.00\n2026-03-09|Pay||900.00\n")]
    [InlineData("Date;Payee;Out;In\n2026-03-02;Mill;-12.50;\n2026-03-05;Dale;-7.00;\n2026-03-09;Pay;;900.00\n")]
    [InlineData("Date;Payee;Amount;D/C\n2026-03-02;Mill;12.50;D\n2026-03-05;Dale;7.00;D\n2026-03-09;Pay;900.00;C\n")]
    [InlineData("Datum;Naam;Bedrag (EUR);Af Bij\n20260302;Mill;12,50;Af\n20260305;Dale;7,00;Af\n20260309;Pay;900,00;Bij\n")]
    [InlineData("Date;Payee;Amount;Balance\n2026-03-02;Mill;12.50;87.50\n2026-03-05;Dale;7.00;80.50\n2026-03-09;Pay;-900.00;980.50\n")]
    [InlineData("Date;Payee;Amount;Balance\n2026-03-09;Pay;900.00;980.50\n2026-03-05;Dale;-7.00;80.50\n2026-03-02;Mill;-12.50;87.50\n")]
    [InlineData("Account;FI21 1234 5600 0007 85\nPeriod;March\n\nDate;Payee;Amount\n2026-03-02;Mill;-12.50\n2026-03-05;Dale;-7.00\n2026-03-09;Pay;900.00\nTotal;;880.50\n")]
    [InlineData("Date,Description,Amount\n2026-03-02,\"Mill\nand more\",-12.50\n2026-03-05,Dale,-7.00\n2026-03-09,Pay,900.00\n")]
    public void Read_AnyDialect_GivesTheLines(string text)
    {
        StatementFile read = Reads.Text(text);

        Assert.Empty(read.Questions);
        Assert.Empty(read.Faults);
        Statement statement = Assert.Single(read.Statements);
        Assert.Equal(["-12.50", "-7.00", "900.00"], statement.Amounts());
        Assert.Equal([2, 5], statement.Lines.Take(2).Select(line => line.Date.Day));
        Assert.StartsWith("Mill", statement.Lines[0].Party + statement.Lines[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_BalanceColumn_ProvesOpeningAndClosing()
    {
        Statement statement = Reads.One("Date;Payee;Amount;Balance\n2026-03-02;Mill;-12.50;87.50\n2026-03-05;Dale;-7.00;80.50\n2026-03-05;Kite;-0.50;80.00\n");

        AddingUp sum = AddingUp.Of(statement);
        Assert.Equal(("100.00", "80.00", true), (statement.Opening!.Amount.ToPlain(), statement.Closing!.Amount.ToPlain(), sum.AddsUp));
    }

    [Fact]
    public void Read_RowMissing_IsNamedWhereTheBalanceBreaks()
    {
        Statement statement = Reads.One(
            "Date;Payee;Amount;Balance\n2026-03-02;Mill;-10.00;90.00\n2026-03-03;Dale;-10.00;80.00\n2026-03-04;Kite;-10.00;70.00\n2026-03-06;Pier;-10.00;55.00\n2026-03-07;Box;-10.00;45.00\n2026-03-08;Cafe;-10.00;35.00\n");

        AddingUp sum = AddingUp.Of(statement);
        Assert.False(sum.AddsUp);
        Assert.Equal((3, 5, "-5.00"), (sum.Breaks!.Index, sum.Breaks.Place, sum.Breaks.Missing.ToPlain()));
    }

    [Fact]
    public void Read_BalancesAroundTheTable_AreTheStatements()
    {
        Statement statement = Reads.One("Opening balance;100.00\n\nDate;Payee;Amount\n2026-03-02;Mill;12.50\n2026-03-05;Dale;7.00\n\nClosing balance;80.50\n");

        Assert.Equal(["-12.50", "-7.00"], statement.Amounts());
        Assert.True(AddingUp.Of(statement).AddsUp);
    }

    [Fact]
    public void Read_PendingByStatusOrEmptyDate_IsKeptApart()
    {
        Statement statement = Reads.One(
            "Date;Value date;Payee;Amount;Status\n2026-03-02;2026-03-02;Mill;-12.50;Booked\n2026-03-05;2026-03-05;Dale;-7.00;Pending\n;2026-03-06;Kite;-1.00;Booked\n2026-03-04;2026-03-04;Pier;-2.00;Booked\n");

        Assert.Equal(["-12.50", "-2.00"], statement.Amounts());
        Assert.Equal(["-7.00", "-1.00"], statement.Pending.Select(line => line.Amount.ToPlain()));
    }

    [Fact]
    public void Read_SeveralAccounts_AreStatementsOfTheirOwn()
    {
        StatementFile read = Reads.Text(
            "Account number;Date;Payee;Amount;Balance\nA1;2026-03-02;Mill;-1.00;9.00\nB2;2026-03-02;Mill;-5.00;95.00\nA1;2026-03-03;Dale;-2.00;7.00\nB2;2026-03-04;Dale;-5.00;90.00\nA1;2026-03-04;Kite;-1.00;6.00\n");

        Assert.Equal(["A1", "B2"], read.Statements.Select(statement => statement.Account));
        Assert.Equal(["10.00", "100.00"], read.Statements.Select(statement => statement.Opening!.Amount.ToPlain()));
        Assert.All(read.Statements, statement => Assert.True(AddingUp.Of(statement).AddsUp));
    }

    [Fact]
    public void Read_OneDamagedRow_IsNamedAndTheOthersStand()
    {
        string rows = string.Concat(Enumerable.Range(1, 27).Select(day => $"2026-03-{day:00};Mill;-{day}.00\n"));

        StatementFile read = Reads.Text("Date;Payee;Amount\n" + rows.Replace("-13.00", "-13.0x", StringComparison.Ordinal).Replace("2026-03-20", "soon", StringComparison.Ordinal));

        Assert.Equal(25, read.Statements[0].Lines.Length);
        Assert.Equal(2, read.Statements[0].LinesLeftOut);
        Assert.Equal([(FaultKind.BrokenLine, 21), (FaultKind.NotAnAmount, 14)], read.Faults.Select(fault => (fault.Kind, fault.Line)));
    }

    [Fact]
    public void Read_RowInAnotherCurrency_IsLeftOutAndNamed()
    {
        StatementFile read = Reads.Text("Date;Payee;Amount;Currency\n2026-03-02;Mill;-1.00;EUR\n2026-03-03;Dale;-2.00;SEK\n2026-03-04;Kite;-3.00;EUR\n");

        Assert.Equal(["-1.00", "-3.00"], read.Statements[0].Amounts());
        Assert.Equal((FaultKind.OtherCurrency, 3), (Assert.Single(read.Faults).Kind, read.Faults[0].Line));
    }

    [Fact]
    public void Read_Columns_PutTextsWhereTheyBelong()
    {
        StatementLine line = Reads.One(
            "Date;Value date;Name;Counterparty account;Description;Transaction ID;Type;Mandate;Amount\n2026-03-02;2026-03-03;Mill;FI2112345600000785;May rent;T-1;Direct debit;M-7;-1.00\n2026-03-04;2026-03-04;Dale;;x;T-2;Card;;-2.00\n").Lines[0];

        Assert.Equal(("Mill", "FI2112345600000785", "May rent", "T-1", LineKind.DirectDebit, "M-7"), (line.Party, line.PartyAccount, line.Text, line.BankId, line.Kind, line.Mandate));
        Assert.Equal(new LocalDate(2026, 3, 3), line.ValueDate);
    }

    [Theory]
    [InlineData("Date;Payee;Amount (CHF)\n2026-03-02;Mill;-1.00\n", "CHF")]
    [InlineData("Date;Payee;Amount;Currency\n2026-03-02;Mill;-1.00;GBP\n", "GBP")]
    [InlineData("Date;Payee;Amount\n2026-03-02;Mill;\u00A3-1.00\n", "GBP")]
    [InlineData("Currency: SEK\nDate;Payee;Amount\n2026-03-02;Mill;-1.00\n", "SEK")]
    [InlineData("Date;Payee;Amount\n2026-03-02;Mill;-1.00\n", "EUR")]
    public void Read_Currency_IsTheFilesElseTheHouseholds(string text, string code) => Assert.Equal(code, Reads.One(text).Currency.Code);

    [Theory]
    [InlineData("utf-8")]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("latin1")]
    public void Read_AnyEncodingWithoutAMark_HasTheLetters(string encoding)
    {
        byte[] bytes = Encoding.GetEncoding(encoding).GetBytes("Date;Payee;Amount\n2026-03-02;Caf\u00E9 \u00D8st;-1.00\n2026-03-14;Mill;-2.00\n");

        Assert.Equal("Caf\u00E9 \u00D8st", StatementReader.Read(bytes, new ReadingOptions { Currency = Reads.Euro }).Statements[0].Lines[0].Party);
    }

    [Fact]
    public void Read_MoreDecimalsThanTheCurrency_IsRefusedByRow()
    {
        string rows = string.Concat(Enumerable.Range(1, 25).Select(day => $"2026-03-{day:00};Mill;-{day}.50\n"));

        StatementFile read = Reads.Text("Date;Payee;Amount\n" + rows + "2026-03-26;Dale;-18.155\n2026-03-27;Dale;-18.150\n");

        Assert.Equal(FaultKind.TooManyDecimals, Assert.Single(read.Faults).Kind);
        Assert.Equal("-18.15", read.Statements[0].Amounts()[^1]);
    }

    [Fact]
    public void Read_YenHasNoDecimals_GroupsAreGroups()
    {
        Statement statement = Reads.One("Date;Payee;Amount;Currency\n2026-03-02;Mill;-1,234;JPY\n2026-03-03;Dale;-250;JPY\n2026-03-20;Pay;90,000;JPY\n", new ReadingOptions
        {
            Profiles = [new CsvProfile("Date|Payee|Amount|Currency") { DecimalMark = '.' }],
        });

        Assert.Equal(["-1234", "-250", "90000"], statement.Amounts());
    }
}
