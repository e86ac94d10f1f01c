using Payday.Core.Amounts;
using Payday.Statements.Answers;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Statements.Sums;

namespace Payday.Statements.Tests.Samples;

/// <summary>
/// Published samples and what an independent script computed of them (opening + lines = closing). Repositories: viafintech/camt_parser,
/// genkgo/camt, moov-io/iso20022, asgrim/ofxparser, jseutter/ofxparse, annacruz/ofx, railslove/cmxl, svenstaro/mt940-rs,
/// sandermarechal/jejik-mt940, a-fas/mt940js.
/// </summary>
public sealed class SampleTests
{
    [Theory]
    [InlineData("camt053/valid_example.xml", 0, 4, "-10.00", "33.06", "23.06", true)]
    [InlineData("camt053/camt053.v2.multi.statement.xml", 0, 1, "8.85", "18.15", "27.00", true)]
    [InlineData("camt053/camt053.v2.multi.statement.xml", 1, 1, "-7.00", "27.00", "20.00", true)]
    [InlineData("camt053/FI_camt_053_sample.xml.xml", 0, 10, "13644.83", "10000.00", "23644.83", true)]
    [InlineData("camt053/valid_example_with_datetime.xml", 0, 1, "195.86", null, "606.80", null)]
    [InlineData("camt053/valid_example_with_batch.xml", 0, 3, "2934.26", "7329.80", "23038.20", false)]
    [InlineData("camt053/camt053.v8.xml", 0, 1, "8.85", "18.15", "-27.00", false)]
    [InlineData("camt053/camt053.v2.all-balance-types.xml", 0, 1, "8.85", "1.01", "4.04", false)]
    [InlineData("camt053/camt053.v2.five.decimals.xml", 0, 1, "8.85", "18.15", "27.05", false)]
    [InlineData("ofx/ofxdata.ofx", 0, 3, "250.00", null, "5250.00", null)]
    [InlineData("ofx/ofxdata-xml.ofx", 0, 3, "250.00", null, "5250.00", null)]
    [InlineData("ofx/ofxdata-oneline.ofx", 0, 8, "-1977.10", null, "100.00", null)]
    [InlineData("ofx/ofx-multiple-accounts-xml.ofx", 0, 0, "0.00", null, "43.01", null)]
    [InlineData("ofx/ofx-multiple-accounts-xml.ofx", 1, 2, "496.02", null, "3000.25", null)]
    [InlineData("ofx/ofx-multiple-accounts-xml.ofx", 2, 1, "18.70", null, "11728.56", null)]
    [InlineData("ofx/ofxdata-credit-card.ofx", 0, 1, "-100.00", null, "-500.00", null)]
    [InlineData("ofx/suncorp.ofx", 0, 1, "-16.85", null, "1234.12", null)]
    [InlineData("ofx/ofx-v102-empty-tags.ofx", 0, 1, "12.34", null, null, null)]
    [InlineData("ofx/empty_balance.ofx", 0, 1, "120.00", null, null, null)]
    [InlineData("ofx/dtsof_balance_issue.ofx", 0, 1, "-836.30", null, null, null)]
    [InlineData("ofx/date_missing.ofx", 0, 3, "320.00", null, "0.00", null)]
    [InlineData("ofx/decimal_error.ofx", 0, 1, "120.00", null, "0.00", null)]
    [InlineData("ofx/cef_malformed_decimal.ofx", 0, 0, "0.00", null, "0.00", null)]
    [InlineData("mt940/mt940-iso8859-1.txt", 0, 2, "2200.00", "2187.95", "4387.95", true)]
    [InlineData("mt940/mt940-windows-line-breaks.txt", 0, 2, "2200.00", "2187.95", "4387.95", true)]
    [InlineData("mt940/MT940_FI_Example.sta", 0, 6, "-1357.10", "54484.04", "53126.94", true)]
    [InlineData("mt940/february_30.sta", 0, 1, "-6.00", "1200.00", "1194.00", true)]
    [InlineData("mt940/rabobank-iban.txt", 0, 2, "-35.00", "1000.00", "965.00", true)]
    [InlineData("mt940/rabobank-iban.txt", 1, 2, "-35.00", "965.00", "930.00", true)]
    [InlineData("mt940/test1.mt940", 0, 1, "500.00", "0.00", "500.00", true)]
    [InlineData("mt940/test1.mt940", 1, 2, "-2260.00", "3058.98", "798.98", true)]
    public void Read_PublishedSample_HasItsCheckedValues(string file, int index, int lines, string sum, string? opening, string? closing, bool? addsUp)
    {
        StatementFile read = Read(file);

        StatementSummary summary = StatementSummary.Of(read.Statements)[index];

        Assert.Equal(
            (lines, sum, opening, closing, addsUp),
            (summary.Lines, summary.Sum.ToPlain(), summary.Opening?.ToPlain(), summary.Closing?.ToPlain(), summary.AddsUp));
    }

    [Fact]
    public void Read_NorwegianExample_ThirteenStatementsFollow()
    {
        StatementFile read = Read("mt940/MT940_NO_Example.sta");

        Assert.Empty(read.Faults);
        Assert.Equal(13, read.Statements.Length);
        Assert.Equal(24, read.Statements.Sum(statement => statement.Lines.Length));
        Assert.Equal("94372951.20", read.Statements[0].Opening!.Amount.ToPlain());
        Assert.Equal("96755600.22", read.Statements[^1].Closing!.Amount.ToPlain());
        Assert.All(read.Statements, statement => Assert.True(AddingUp.Of(statement).AddsUp));
        Assert.All(StatementChain.Of(read.Statements), step => Assert.Equal(ChainLink.Follows, step.Link));
    }

    [Theory]
    [InlineData("camt053/valid_example_with_batch.xml", FaultKind.CountDiffers, "3", "35")]
    [InlineData("camt053/camt053.v8.xml", FaultKind.OtherCurrency, "SEK", "EUR")]
    [InlineData("ofx/date_missing.ofx", FaultKind.IdTwice, "2000957249", "")]
    [InlineData("ofx/date_missing.ofx", FaultKind.NoSuchDay, "20120231", "2012-02-29")]
    [InlineData("ofx/date_missing.ofx", FaultKind.DateReplaced, "", "2011-06-14")]
    [InlineData("ofx/decimal_error.ofx", FaultKind.DateReplaced, "201120000000", "2011-06-14")]
    [InlineData("ofx/cef_malformed_decimal.ofx", FaultKind.NotAnAmount, ".", "BRL")]
    [InlineData("ofx/dtsof_balance_issue.ofx", FaultKind.BalanceUnusable, "0,00 00000000", "")]
    [InlineData("mt940/february_30.sta", FaultKind.NoSuchDay, "1602300301", "2016-03-01")]
    [InlineData("mt940/mt940-iso8859-1.txt", FaultKind.NoSuchDay, "021131", "2002-11-30")]
    public void Read_OddSample_SaysWhatIsOdd(string file, FaultKind kind, string found, string wanted)
    {
        StatementFile read = Read(file);

        Assert.Contains(read.Faults, fault => fault.Kind == kind && fault.Found == found && fault.Wanted == wanted && fault.Line > 0);
    }

    [Fact]
    public void Read_FinnishSample_KeepsBatchesAndPartsThatAddUp()
    {
        Statement statement = Read("camt053/FI_camt_053_sample.xml.xml").Statements[0];

        Assert.Equal([4, 3, 3, 2, 2, 2, 1, 1, 1, 2], statement.Lines.Select(line => line.Count));
        Assert.Equal(2, statement.Lines[9].Parts.Length);
        Assert.All(statement.Lines.Where(line => line.Parts.Length > 0), line =>
            Assert.Equal(line.Amount, Money.Sum(line.Parts.Select(part => part.Amount), line.Amount.Currency)));
        Assert.Equal(LineKind.Fee, statement.Lines[9].Kind);
        Assert.Equal("DEBTOR NAME", statement.Lines[6].Party);
    }

    [Fact]
    public void Read_Latin1Sample_HasUmlauts()
    {
        Statement statement = Read("mt940/mt940-iso8859-1.txt").Statements[0];

        Assert.Equal("MUELLER", statement.Lines[0].Party);
        Assert.Contains("Miete November", statement.Lines[0].Text, StringComparison.Ordinal);
        Assert.Contains("\u00DCBERWEISUNG", statement.Lines[1].Text, StringComparison.Ordinal);
        Assert.Equal(LineKind.StandingOrder, statement.Lines[0].Kind);
    }

    [Theory]
    [InlineData("ofx/ofxdata-credit-card.ofx", true)]
    [InlineData("ofx/ofxdata.ofx", false)]
    public void Read_OfxSample_KnowsCards(string file, bool isCard) => Assert.Equal(isCard, Read(file).Statements[0].IsCard);

    private static StatementFile Read(string file) =>
        StatementReader.Read(SampleFolder.Read(file), new ReadingOptions { Currency = Currency.FromCode("EUR") });
}
