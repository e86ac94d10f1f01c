using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Sums;

namespace Payday.Statements.Tests.Reading.Csv;

/// <summary>Whole files as banks of several countries lay them out; names and figures are made.</summary>
public sealed class CsvDialectTests
{
    private const string Summary = """
        Description,,Summary Amt.
        Beginning balance as of 03/01/2026,,"1,000.00"
        Total credits,,"2,000.00"
        Total debits,,"-150.50"
        Ending balance as of 03/31/2026,,"2,849.50"

        Date,Description,Amount,Running Bal.
        03/01/2026,Beginning balance as of 03/01/2026,,"1,000.00"
        03/02/2026,"MILL, OLD",-50.25,949.75
        03/09/2026,TIDEWATER WORKS,"2,000.00","2,949.75"
        03/19/2026,CORNER GROCER,-100.25,"2,849.50"
        """;

    private const string DebitAndCredit = """
        Transaction Date,Transaction Type,Sort Code,Account Number,Transaction Description,Debit Amount,Credit Amount,Balance
        19/03/2026,DEB,'01-02-03,12345678,CORNER GROCER,100.25,,2849.50
        09/03/2026,FPI,'01-02-03,12345678,TIDEWATER WORKS,,2000.00,2949.75
        02/03/2026,DD,'01-02-03,12345678,MILL,50.25,,949.75
        """;

    private const string Preamble = """
        "Kontonummer:";"FI2112345600000785";

        "Von:";"01.03.2026";
        "Bis:";"31.03.2026";
        "Kontostand vom 31.03.2026:";"2.849,50 EUR";

        "Buchungstag";"Wertstellung";"Buchungstext";"Auftraggeber / Beg\u00FCnstigter";"Verwendungszweck";"Kontonummer";"BLZ";"Betrag (EUR)";"Gl\u00E4ubiger-ID";"Kundenreferenz";
        "19.03.2026";"19.03.2026";"Kartenzahlung";"CORNER GROCER";"Einkauf";"1111111111";"10020030";"-100,25";"";"";
        "09.03.2026";"09.03.2026";"Lohn";"TIDEWATER WORKS";"Lohn M\u00E4rz";"2222222222";"10020030";"2.000,00";"";"7";
        "02.03.2026";"03.03.2026";"Lastschrift";"MILL";"Mehl";"3333333333";"10020030";"-50,25";"CRED-1";"8";
        """;

    private const string AfBij = """
        "Datum";"Naam / Omschrijving";"Rekening";"Tegenrekening";"Code";"Af Bij";"Bedrag (EUR)";"Mutatiesoort";"Mededelingen";"Saldo na mutatie"
        "20260319";"CORNER GROCER";"NL00MADE0000000001";"";"BA";"Af";"100,25";"Betaalautomaat";"Pas 1";"2849,50"
        "20260309";"TIDEWATER WORKS";"NL00MADE0000000001";"NL00MADE0000000002";"OV";"Bij";"2000,00";"Overschrijving";"Loon";"2949,75"
        "20260302";"MILL";"NL00MADE0000000001";"NL00MADE0000000003";"IC";"Af";"50,25";"Incasso";"Meel";"949,75"
        """;

    private const string French = "Date;Libell\u00E9;D\u00E9bit euros;Cr\u00E9dit euros;\n19/03/2026;CORNER GROCER;-100,25;\n09/03/2026;TIDEWATER WORKS;;2\u00A0000,00;\n02/03/2026;MILL;-50,25;\n";

    private const string Swiss = "Datum;Text;Betrag CHF;Saldo CHF\n02.03.2026;MILL;-50.25;949.75\n09.03.2026;TIDEWATER WORKS;2'000.00;2'949.75\n19.03.2026;CORNER GROCER;-100.25;2'849.50\n";

    [Theory]
    [InlineData(Summary)]
    [InlineData(DebitAndCredit)]
    [InlineData(Preamble)]
    [InlineData(AfBij)]
    [InlineData(French)]
    [InlineData(Swiss)]
    public void Read_WholeFile_HasItsLines(string text)
    {
        StatementFile read = Reads.Text(text);

        Assert.Empty(read.Questions);
        Assert.Empty(read.Faults);
        Statement statement = Assert.Single(read.Statements);
        Assert.Equal(["-50.25", "2000.00", "-100.25"], statement.Amounts());
        Assert.Equal(["2026-03-02", "2026-03-09", "2026-03-19"], statement.Days());
        Assert.Contains("TIDEWATER WORKS", statement.Lines[1].Party + statement.Lines[1].Text, StringComparison.Ordinal);
        Assert.Equal(0, statement.LinesLeftOut);
        Assert.NotEqual(false, AddingUp.Of(statement).AddsUp);
    }

    [Theory]
    [InlineData(Summary, "1000.00", "2849.50")]
    [InlineData(DebitAndCredit, "1000.00", "2849.50")]
    [InlineData(Preamble, null, "2849.50")]
    [InlineData(AfBij, "1000.00", "2849.50")]
    [InlineData(Swiss, "1000.00", "2849.50")]
    public void Read_WholeFile_HasItsBalances(string text, string? opening, string closing)
    {
        Statement statement = Reads.One(text);

        Assert.Equal((opening, closing), (statement.Opening?.Amount.ToPlain(), statement.Closing?.Amount.ToPlain()));
    }

    [Theory]
    [InlineData(DebitAndCredit, "12345678")]
    [InlineData(Preamble, "FI2112345600000785")]
    [InlineData(AfBij, "NL00MADE0000000001")]
    public void Read_WholeFile_KnowsTheAccount(string text, string account) => Assert.Equal(account, Reads.One(text).Account);

    [Fact]
    public void Read_ColumnOfTheOtherSidesAccounts_IsTheirs() => Assert.Equal("2222222222", Reads.One(Preamble).Lines[1].PartyAccount);

    [Theory]
    [InlineData("2026-03-04;Kite\n", FaultKind.AmountMissing)]
    [InlineData("2026-03-04;Kite;-1.0x\n", FaultKind.NotAnAmount)]
    public void Read_LastRowIsDamaged_IsNotLostInSilence(string row, FaultKind kind)
    {
        string rows = string.Concat(Enumerable.Range(1, 25).Select(day => $"2026-02-{day:00};Mill;-{day}.00\n"));

        StatementFile read = Reads.Text("Date;Payee;Amount\n" + rows + row);

        Assert.Equal((kind, 27), (Assert.Single(read.Faults).Kind, read.Faults[0].Line));
        Assert.Equal(1, read.Statements[0].LinesLeftOut);
    }
}
