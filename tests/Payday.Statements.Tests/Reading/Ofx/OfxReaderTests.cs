using System.Text;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Statements.Sums;

namespace Payday.Statements.Tests.Reading.Ofx;

public sealed class OfxReaderTests
{
    // OFX 1.6, statement response example: end tags left out, comments after values, no NAME at all.
    private const string SpecificationExample = """
        OFXHEADER:100
        DATA:OFXSGML
        VERSION:160

        <OFX><BANKMSGSRSV1><STMTTRNRS><TRNUID>1001 <!-- Client's ID -->
        <STMTRS><CURDEF>USD
        <BANKACCTFROM><BANKID>121099999<ACCTID>999988<ACCTTYPE>CHECKING</BANKACCTFROM>
        <BANKTRANLIST><DTSTART>19961001<DTEND>1996102911
        <STMTTRN><TRNTYPE>CHECK <!-- a cheque --><DTPOSTED>19961004<TRNAMT>-200.00<FITID>00002<CHECKNUM>1000</STMTTRN>
        <STMTTRN><TRNTYPE>ATM<DTPOSTED>19961020<DTUSER>19961020<TRNAMT>-300.00 <!-- cash --><FITID>00003</STMTTRN>
        </BANKTRANLIST>
        <LEDGERBAL><BALAMT>200.29<DTASOF>199610291120</LEDGERBAL>
        <AVAILBAL><BALAMT>200.29<DTASOF>199610291120</AVAILBAL>
        </STMTRS></STMTTRNRS></BANKMSGSRSV1></OFX>
        """;

    [Fact]
    public void Read_ExampleOfTheSpecification_HasItsLines()
    {
        Statement statement = Reads.One(SpecificationExample);

        Assert.Equal(["-200.00", "-300.00"], statement.Amounts());
        Assert.Equal(["1996-10-04", "1996-10-20"], statement.Days());
        Assert.Equal([LineKind.Cheque, LineKind.Cash], statement.Lines.Select(line => line.Kind));
        Assert.Equal(("1000", "00003", "999988"), (statement.Lines[0].ChequeNumber, statement.Lines[1].BankId, statement.Account));
        Assert.Equal(("200.29", new LocalDate(1996, 10, 29)), (statement.Closing!.Amount.ToPlain(), statement.Closing.Date));
    }

    // OFX 2.1.1, 16.5.3.2: a bank account and a card in one file; the card's debts are below zero.
    [Fact]
    public void Read_BankAndCard_AreTwoStatements()
    {
        StatementFile read = Reads.Text($"<OFX><STMTRS><CURDEF>USD{Line("20050801", "-80", "1")}<LEDGERBAL><BALAMT>2156.56<DTASOF>20050801</LEDGERBAL></STMTRS>"
            + $"<CCSTMTRS><CURDEF>USD{Line("20050811", "-80", "1")}{Line("20050811", "407", "2")}<LEDGERBAL><BALAMT>-562.00<DTASOF>20050827</LEDGERBAL></CCSTMTRS></OFX>");

        Assert.Equal([false, true], read.Statements.Select(statement => statement.IsCard));
        Assert.Equal(["2156.56", "-562.00"], read.Statements.Select(statement => statement.Closing!.Amount.ToPlain()));
        Assert.Equal("327.00", AddingUp.Of(read.Statements[1]).Sum.ToPlain());
        Assert.Empty(read.Faults);
    }

    // OFX 1.6, 3.2.8.2: 19961005132200.124[-5:EST] is 5 October where the bank is; GMT would make late ones the next day.
    [Theory]
    [InlineData("19961005132200.124[-5:EST]", "1996-10-05")]
    [InlineData("19961005235959[-11:XXX]", "1996-10-05")]
    [InlineData("19961005000000[+12]", "1996-10-05")]
    [InlineData("19961005", "1996-10-05")]
    [InlineData("199610051322", "1996-10-05")]
    [InlineData("19961005000000[-:EST]", "1996-10-05")]
    [InlineData("19961005000000[+5.30:IST]", "1996-10-05")]
    public void Read_DateWithOffset_StaysOnItsDay(string written, string day) => Assert.Equal([day], Reads.One(File(Line(written, "1", "1"))).Days());

    [Theory]
    [InlineData("-11,76", "-11.76")]
    [InlineData("  -11.76 ", "-11.76")]
    [InlineData("$120", "120.00")]
    [InlineData("R$ 5.326,43", "5326.43")]
    [InlineData("+7", "7.00")]
    [InlineData("18.150", "18.15")]
    [InlineData("1,234.50", "1234.50")]
    public void Read_AmountAsBanksWriteIt_IsRead(string written, string amount) =>
        Assert.Equal([amount], Reads.One(File(Line("20260105", written, "1"))).Amounts());

    [Theory]
    [InlineData("18.155", FaultKind.TooManyDecimals)]
    [InlineData(" . ", FaultKind.NotAnAmount)]
    [InlineData("twelve", FaultKind.NotAnAmount)]
    [InlineData("", FaultKind.AmountMissing)]
    [InlineData("99999999999999999", FaultKind.NotAnAmount)]
    public void Read_AmountThatIsNone_IsNamedWithItsLineAndLeftOut(string written, FaultKind kind)
    {
        StatementFile read = Reads.Text(File($"\n\n{Line("20260105", written, "1")}{Line("20260106", "2.00", "2")}"));

        Assert.Equal((kind, 3), (read.Faults[0].Kind, read.Faults[0].Line));
        Assert.Equal(["2.00"], read.Statements[0].Amounts());
        Assert.Equal(1, read.Statements[0].LinesLeftOut);
    }

    [Theory]
    [InlineData("Kite & Sons", "Kite & Sons")]
    [InlineData("Kite &amp; Sons", "Kite & Sons")]
    [InlineData("Kite &amp;amp; Sons", "Kite &amp; Sons")]
    [InlineData("The \"Mill\"", "The \"Mill\"")]
    [InlineData("Pier<BR/>Two", "Pier Two")]
    [InlineData("a < b", "a < b")]
    [InlineData("&unknown; x", "&unknown; x")]
    [InlineData("Caf&#233;&nbsp;1", "Caf\u00E9 1")]
    [InlineData("<![CDATA[Hill & <b> Dale]]>", "Hill & <b> Dale")]
    [InlineData("tab\tand\u0007bell", "tab andbell")]
    public void Read_TextWithOddCharacters_IsTheText(string written, string text) =>
        Assert.Equal(text, Reads.One(File($"<STMTTRN><DTPOSTED>20260105<TRNAMT>1<NAME>{written}</NAME></STMTTRN>")).Lines[0].Party);

    [Theory]
    [InlineData("<STMTTRN><TRNTYPE>DEBIT<DTPOSTED>20260105<TRNAMT>-1.00<NAME>Mill<MEMO>one<STMTTRN><DTPOSTED>20260106<TRNAMT>2.00<NAME>Dale")]
    [InlineData("<stmttrn><trntype>DEBIT</trntype><dtposted>20260105</dtposted><trnamt>-1.00</trnamt><fitid/><name>Mill</name><memo></memo></stmttrn><STMTTRN><DTPOSTED>20260106<TRNAMT>2.00<NAME>Dale</STMTTRN>")]
    [InlineData("<STMTTRN><X.OWN>20200101<DTPOSTED>20260105</DTPOSTED><TRNAMT>-1.00<CHECKNUM></CHECKNUM><NAME>Mill</STMTTRN><STMTTRN><DTPOSTED>20260106<TRNAMT>2.00<PAYEE><NAME>Dale<CITY>Pier</PAYEE></STMTTRN>")]
    public void Read_TagsUnclosedEmptyOrUnknown_GivesTheLines(string lines)
    {
        Statement statement = Reads.One(File(lines));

        Assert.Equal(["-1.00", "2.00"], statement.Amounts());
        Assert.Equal(["Mill", "Dale"], statement.Lines.Select(line => line.Party));
    }

    [Theory]
    [InlineData("OFXHEADER: 100 DATA:OFXSGML VERSION:102 CHARSET:8859-1 ")]
    [InlineData("\r\n\r\n\r\nOFXHEADER:100\rDATA:OFXSGML\r\r")]
    [InlineData("<!-- OFXHEADER:100 -->")]
    [InlineData("")]
    public void Read_AnyHeader_IsRead(string header) => Assert.Equal(["1.00"], Reads.One(header + File(Line("20260105", "1", "1"))).Amounts());

    [Fact]
    public void Read_DeclaredCharsetIsWrong_ReadsTheBytes()
    {
        string text = "OFXHEADER:100\nCHARSET:1252\n\n" + File("<STMTTRN><DTPOSTED>20260105<TRNAMT>1<NAME>Caf\u00E9 \u20AC</STMTTRN>");
        byte[] latin = [.. text.Select(c => c == '\u20AC' ? (byte)0x80 : (byte)c)];

        foreach (byte[] bytes in new[] { Encoding.UTF8.GetBytes(text), latin, Encoding.Unicode.GetBytes(text), Encoding.BigEndianUnicode.GetBytes(text), [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)] })
        {
            Assert.Equal("Caf\u00E9 \u20AC", StatementReader.Read(bytes, ReadingOptions.None).Statements[0].Lines[0].Party);
        }
    }

    [Fact]
    public void Read_PendingList_IsKeptApart()
    {
        Statement statement = Reads.One(File($"{Line("20260105", "-1", "1")}</BANKTRANLIST><BANKTRANLISTP><STMTTRNP><TRNTYPE>HOLD<DTTRAN>20260106<TRNAMT>-9.00<NAME>Pier</STMTTRNP></BANKTRANLISTP>"));

        Assert.Equal(["-1.00"], statement.Amounts());
        Assert.Equal("-9.00", Assert.Single(statement.Pending).Amount.ToPlain());
    }

    [Fact]
    public void Read_NoCurrency_TakesTheHouseholdsOrSaysSo()
    {
        string text = "<OFX><STMTRS><CURDEF></CURDEF>" + Line("20260105", "1", "1") + "</STMTRS></OFX>";

        Assert.Equal(Reads.Euro, Reads.One(text).Currency);
        Assert.Equal(FaultKind.CurrencyMissing, Assert.Single(Reads.Text(text, ReadingOptions.None).Faults).Kind);
    }

    [Fact]
    public void Read_LineInAnotherCurrency_IsLeftOutAndNamed()
    {
        StatementFile read = Reads.Text(File("<STMTTRN><DTPOSTED>20260105<TRNAMT>1<CURRENCY><CURRATE>1.1<CURSYM>SEK</CURRENCY></STMTTRN>"
            + "<STMTTRN><DTPOSTED>20260105<TRNAMT>2<ORIGCURRENCY><CURRATE>1.1<CURSYM>SEK</ORIGCURRENCY></STMTTRN>"));

        Assert.Equal(["2.00"], read.Statements[0].Amounts());
        Assert.Equal((FaultKind.OtherCurrency, "SEK"), (Assert.Single(read.Faults).Kind, read.Faults[0].Found));
    }

    [Fact]
    public void Read_SignSpeaksAgainstTheType_SignRules() =>
        Assert.Equal(["-80.00"], Reads.One(File("<STMTTRN><TRNTYPE>DIRECTDEP<DTPOSTED>20260105<TRNAMT>-80.00</STMTTRN>")).Amounts());

    private static string File(string lines) => $"<OFX><STMTRS><CURDEF>EUR<BANKTRANLIST><DTSTART>20260101<DTEND>20260131{lines}</BANKTRANLIST></STMTRS></OFX>";

    private static string Line(string date, string amount, string id) => $"<STMTTRN><TRNTYPE>OTHER<DTPOSTED>{date}<TRNAMT>{amount}<FITID>{id}</STMTTRN>";
}
