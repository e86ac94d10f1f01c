using System.Text;
using NodaTime;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Reading;

namespace Payday.Statements.Tests.Reading;

/// <summary>Odd files as they were reported of banks, that no test of one reader is about.</summary>
public sealed class TrapTests
{
    private const string Lines = "<STMTTRN><DTPOSTED>20260105<TRNAMT>-3.20<FITID>1<NAME>Lumi\u00E8re</STMTTRN>";

    // The balance is of another day than the period's end: said as it is, and no day of a line moves.
    [Theory]
    [InlineData("20260131", "2026-01-31")]
    [InlineData("20260214", "2026-02-14")]
    public void Ofx_BalanceAfterThePeriod_KeepsItsOwnDay(string written, string day)
    {
        Statement statement = Reads.One($"<OFX><STMTRS><CURDEF>EUR<BANKTRANLIST><DTSTART>20260101<DTEND>20260131{Lines}</BANKTRANLIST><LEDGERBAL><BALAMT>9.00<DTASOF>{written}</LEDGERBAL></STMTRS></OFX>");

        Assert.Equal((new LocalDate(2026, 1, 31), NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value, "9.00"), (statement.To, statement.Closing!.Date, statement.Closing.Amount.ToPlain()));
    }

    [Fact]
    public void Ofx_DateOfNoughts_IsReplacedAndSaid()
    {
        StatementFile read = Reads.Text($"<OFX><STMTRS><CURDEF>EUR<BANKTRANLIST><DTSTART>20260101<DTEND>20260131{Lines.Replace("20260105", "00000000", StringComparison.Ordinal)}</BANKTRANLIST></STMTRS></OFX>");

        Assert.Equal(["2026-01-31"], read.Statements[0].Days());
        Assert.Contains(read.Faults, fault => fault.Kind == FaultKind.DateReplaced);
    }

    [Theory]
    [InlineData("<OFX><STMTRS><CURDEF>EUR<LEDGERBAL><BALAMT>9.00<DTASOF>20260131</LEDGERBAL></STMTRS></OFX>")]
    [InlineData("<OFX><STMTRS><CURDEF>EUR<BANKTRANLIST><DTSTART>20260101<DTEND>20260131</BANKTRANLIST><LEDGERBAL><BALAMT>9.00<DTASOF>20260131</LEDGERBAL></STMTRS></OFX>")]
    [InlineData(":20:1\n:25:1\n:28C:1\n:60F:C260101EUR9,00\n:62F:C260131EUR9,00\n-")]
    [InlineData("<Document><BkToCstmrStmt><Stmt><Acct><Ccy>EUR</Ccy></Acct><Bal><Tp><CdOrPrtry><Cd>CLBD</Cd></CdOrPrtry></Tp><Amt Ccy=\"EUR\">9.00</Amt><CdtDbtInd>CRDT</CdtDbtInd><Dt><Dt>2026-01-31</Dt></Dt></Bal></Stmt></BkToCstmrStmt></Document>")]
    public void AnyFormat_NoLineAtAll_IsAStatementWithItsBalance(string text)
    {
        Statement statement = Reads.One(text);

        Assert.Empty(statement.Lines);
        Assert.Equal("9.00", statement.Closing!.Amount.ToPlain());
    }

    // One byte that is no UTF-8 makes the whole file one of the older charset, whatever it declares; amounts and days are ASCII in both.
    [Theory]
    [InlineData("CHARSET:NONE\n")]
    [InlineData("CHARSET:8859-1\n")]
    [InlineData("CHARSET:1252\n")]
    [InlineData("ENCODING:UTF-8\n")]
    public void Ofx_OneBadByte_CostsNoLine(string header)
    {
        byte[] bytes = Encoding.UTF8.GetBytes($"OFXHEADER:100\n{header}\n<OFX><STMTRS><CURDEF>EUR<BANKTRANLIST><DTSTART>20260101<DTEND>20260131{Lines}<STMTTRN><DTPOSTED>20260106<TRNAMT>2.00<NAME>Mill#</STMTTRN></BANKTRANLIST></STMTRS></OFX>");
        bytes[Array.LastIndexOf(bytes, (byte)'#')] = 0xFF;

        Statement statement = StatementReader.Read(bytes, ReadingOptions.None).Statements[0];

        Assert.Equal(["-3.20", "2.00"], statement.Amounts());
        Assert.Equal("Mill\u00FF", statement.Lines[1].Party);
    }

    // A bank's reference is unique within an account: the same in two accounts is two lines.
    [Fact]
    public void TwoAccounts_OneReference_AreTwoLines()
    {
        string Of(string account) => $"<STMTRS><CURDEF>EUR<BANKACCTFROM><ACCTID>{account}</BANKACCTFROM><BANKTRANLIST><DTSTART>20260101<DTEND>20260131{Lines}</BANKTRANLIST></STMTRS>";

        StatementFile read = Reads.Text($"<OFX>{Of("1")}{Of("2")}</OFX>");

        Assert.Equal([("1", 1), ("2", 1)], AccountHistory.Of(read.Statements).Select(history => (history.Account, history.Lines.Length)));
    }
}
