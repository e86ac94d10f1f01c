using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Sums;

namespace Payday.Statements.Tests.Reading.Camt;

public sealed class CamtReaderTests
{
    [Theory]
    [InlineData("<Sts>BOOK</Sts>", true)]
    [InlineData("<Sts>PDNG</Sts>", false)]
    [InlineData("<Sts>INFO</Sts>", false)]
    [InlineData("<Sts><Cd>BOOK</Cd></Sts>", true)]
    [InlineData("<Sts><Cd>FUTR</Cd></Sts>", false)]
    [InlineData("<Sts><Prtry>vorgemerkt</Prtry></Sts>", false)]
    public void Read_Status_OnlyBookedCounts(string status, bool isBooked)
    {
        Statement statement = Reads.One(File(Entry("1.00", "DBIT", status)));

        Assert.Equal((isBooked ? 1 : 0, isBooked ? 0 : 1), (statement.Lines.Length, statement.Pending.Length));
    }

    [Theory]
    [InlineData("DBIT", "10.00", "9.00", "-1.00", false)]
    [InlineData("CRDT", "10.00", "11.00", "1.00", false)]
    [InlineData("DBIT", "10.00", "11.00", "1.00", true)]
    [InlineData("CRDT", "10.00", "9.00", "-1.00", true)]
    [InlineData("CRDT", "10.00", "99.00", "1.00", false)]
    public void Read_Reversal_IsTurnedOnlyWhereTheBalancesAgreeSo(string sign, string opening, string closing, string amount, bool turned)
    {
        StatementFile read = Reads.Text(File(Balance("OPBD", opening) + Balance("CLBD", closing) + Entry("1.00", sign, "<Sts>BOOK</Sts><RvslInd>true</RvslInd>")));

        Assert.Equal([amount], read.Statements[0].Amounts());
        Assert.True(read.Statements[0].Lines[0].IsReversal);
        Assert.Equal(turned, read.Faults.Any(fault => fault.Kind == FaultKind.SignsTurned));
    }

    [Fact]
    public void Read_AccountBelowZero_IsBelowZero()
    {
        Statement statement = Reads.One(File(Balance("OPBD", "10.00", "DBIT") + Balance("CLBD", "25.00", "DBIT") + Entry("15.00", "DBIT")));

        Assert.Equal(("-10.00", "-25.00", true), (statement.Opening!.Amount.ToPlain(), statement.Closing!.Amount.ToPlain(), AddingUp.Of(statement).AddsUp));
    }

    [Theory]
    [InlineData("<BookgDt><Dt>2026-03-05</Dt></BookgDt><ValDt><Dt>2026-03-09</Dt></ValDt>", "2026-03-05", false)]
    [InlineData("<BookgDt><DtTm>2026-03-05T00:30:00+05:00</DtTm></BookgDt>", "2026-03-05", false)]
    [InlineData("<BookgDt><DtTm>2026-03-05T23:30:00-09:00</DtTm></BookgDt>", "2026-03-05", false)]
    [InlineData("<ValDt><Dt>2026-03-09</Dt></ValDt>", "2026-03-09", true)]
    [InlineData("", "2026-03-31", true)]
    [InlineData("<BookgDt><Dt>2026-02-30</Dt></BookgDt>", "2026-02-28", true)]
    public void Read_Date_IsTheBookingDayAsWritten(string dates, string day, bool isSaid)
    {
        StatementFile read = Reads.Text(File($"<FrToDt><FrDtTm>2026-03-01T00:00:00</FrDtTm><ToDtTm>2026-03-31T00:00:00</ToDtTm></FrToDt><Ntry><Amt Ccy=\"EUR\">1</Amt><CdtDbtInd>DBIT</CdtDbtInd>{dates}</Ntry>"));

        Assert.Equal([day], read.Statements[0].Days());
        Assert.Equal(isSaid, read.Faults.Any(fault => fault.Kind is FaultKind.DateReplaced or FaultKind.NoSuchDay));
    }

    [Fact]
    public void Read_BatchWhosePartsAddUp_HasThem()
    {
        Statement statement = Reads.One(File(Entry("6.00", "DBIT", Details(Part("3.50", "Mill"), Part("2.50", "Dale")))));

        StatementLine line = Assert.Single(statement.Lines);
        Assert.Equal([("-3.50", "Mill"), ("-2.50", "Dale")], line.Parts.Select(part => (part.Amount.ToPlain(), part.Party)));
        Assert.Equal(2, line.Count);
    }

    [Theory]
    [InlineData("<Amt Ccy=\"EUR\">3.50</Amt>", "<Amt Ccy=\"EUR\">2.49</Amt>", true)]
    [InlineData("<Amt Ccy=\"EUR\">3.50</Amt>", "", false)]
    [InlineData("<Amt Ccy=\"EUR\">3.50</Amt>", "<AmtDtls><InstdAmt><Amt Ccy=\"EUR\">2.50</Amt></InstdAmt></AmtDtls>", false)]
    [InlineData("<Amt Ccy=\"EUR\">3.50</Amt>", "<AmtDtls><TxAmt><Amt Ccy=\"SEK\">2.50</Amt></TxAmt></AmtDtls>", false)]
    public void Read_BatchWhosePartsDontAddUp_IsOneLine(string one, string other, bool isSaid)
    {
        StatementFile read = Reads.Text(File(Entry("6.00", "DBIT", $"<NtryDtls><Btch><NbOfTxs>5</NbOfTxs></Btch><TxDtls>{one}</TxDtls><TxDtls>{other}</TxDtls></NtryDtls>")));

        StatementLine line = Assert.Single(read.Statements[0].Lines);
        Assert.Empty(line.Parts);
        Assert.Equal(("-6.00", 5), (line.Amount.ToPlain(), line.Count));
        Assert.Equal(isSaid, read.Faults.Any(fault => fault.Kind == FaultKind.PartsDiffer));
    }

    [Theory]
    [InlineData("<Cdtr><Nm>Mill</Nm></Cdtr>")]
    [InlineData("<Cdtr><Pty><Nm>Mill</Nm></Pty></Cdtr>")]
    [InlineData("<Dbtr><Nm>Us</Nm></Dbtr><Cdtr></Cdtr><UltmtCdtr><Nm>Mill</Nm></UltmtCdtr>")]
    public void Read_Debit_NamesTheCreditor(string parties)
    {
        Statement statement = Reads.One(File(Entry("6.00", "DBIT",
            $"<NtryDtls><TxDtls><Refs><EndToEndId>NOTPROVIDED</EndToEndId><MndtId>M-7</MndtId></Refs><RltdPties>{parties}<CdtrAcct><Id><IBAN>FI21 1234 5600 0007 85</IBAN></Id></CdtrAcct></RltdPties><RmtInf><Ustrd>May</Ustrd><Ustrd>and June</Ustrd></RmtInf></TxDtls></NtryDtls>")));

        StatementLine line = statement.Lines[0];
        Assert.Equal(("Mill", "M-7", "", "FI2112345600000785", "May and June"), (line.Party, line.Mandate, line.Reference, line.PartyAccount, line.Text));
    }

    [Theory]
    [InlineData("<BkTxCd><Domn><Cd>PMNT</Cd><Fmly><Cd>RDDT</Cd><SubFmlyCd>ESDD</SubFmlyCd></Fmly></Domn></BkTxCd>", LineKind.DirectDebit)]
    [InlineData("<BkTxCd><Domn><Cd>PMNT</Cd><Fmly><Cd>ICDT</Cd><SubFmlyCd>STDO</SubFmlyCd></Fmly></Domn></BkTxCd>", LineKind.StandingOrder)]
    [InlineData("<BkTxCd><Domn><Cd>PMNT</Cd><Fmly><Cd>RCDT</Cd><SubFmlyCd>CHRG</SubFmlyCd></Fmly></Domn></BkTxCd>", LineKind.Fee)]
    [InlineData("<BkTxCd><Prtry><Cd>544</Cd></Prtry></BkTxCd>", LineKind.Other)]
    public void Read_TransactionCode_SaysTheKind(string code, LineKind kind) => Assert.Equal(kind, Reads.One(File(Entry("6.00", "DBIT", code))).Lines[0].Kind);

    [Fact]
    public void Read_PreviousClosing_StandsInForTheOpening() =>
        Assert.Equal("33.06", Reads.One(File(Balance("PRCD", "33.06") + Balance("CLAV", "99.00") + Balance("CLBD", "23.06"))).Opening!.Amount.ToPlain());

    [Fact]
    public void Read_PrefixesAndEnvelope_AreReadByLocalNames()
    {
        Statement statement = Reads.One("<e:Envelope xmlns:e=\"urn:e\" xmlns:c=\"urn:c\"><e:Body><c:Document><c:BkToCstmrStmt><c:Stmt><c:Ntry><c:Amt Ccy=\"EUR\">1</c:Amt>"
            + "<c:CdtDbtInd>CRDT</c:CdtDbtInd><c:ValDt><c:Dt>2026-03-05</c:Dt></c:ValDt></c:Ntry></c:Stmt></c:BkToCstmrStmt></c:Document></e:Body></e:Envelope>");

        Assert.Equal(["1.00"], statement.Amounts());
    }

    [Theory]
    [InlineData("18.155", "EUR", FaultKind.TooManyDecimals)]
    [InlineData("x", "EUR", FaultKind.NotAnAmount)]
    [InlineData("1.00", "SEK", FaultKind.OtherCurrency)]
    public void Read_EntryThatCantBeRead_IsNamedWithItsLine(string amount, string code, FaultKind kind)
    {
        StatementFile read = Reads.Text(File($"\n<Ntry>\n<Amt Ccy=\"{code}\">{amount}</Amt><CdtDbtInd>DBIT</CdtDbtInd></Ntry>{Entry("2.00", "CRDT")}"));

        StatementFault fault = read.Faults.First(one => !one.IsNotice);
        Assert.Equal((kind, 3), (fault.Kind, fault.Line));
        Assert.Equal(["2.00"], read.Statements[0].Amounts());
        Assert.Equal(1, read.Statements[0].LinesLeftOut);
    }

    [Fact]
    public void Read_NoDirection_IsLeftOutAndNamed() =>
        Assert.Equal(FaultKind.DirectionMissing, Reads.Text(File("<Ntry><Amt Ccy=\"EUR\">1</Amt></Ntry>")).Faults[0].Kind);

    [Fact]
    public void Read_CutOff_KeepsTheStatementsThatAreWhole()
    {
        string whole = File(Entry("1.00", "DBIT"));
        StatementFile read = Reads.Text(whole.Replace("</BkToCstmrStmt></Document>", "<Stmt><Ntry><Amt Ccy=\"EUR\">5", StringComparison.Ordinal));

        Assert.Equal(["-1.00"], Assert.Single(read.Statements).Amounts());
        Assert.Equal(FaultKind.BrokenXml, read.Faults[^1].Kind);
    }

    private static string File(string parts) =>
        $"<?xml version=\"1.0\"?><Document xmlns=\"urn:iso:std:iso:20022:tech:xsd:camt.053.001.08\"><BkToCstmrStmt><Stmt><Acct><Ccy>EUR</Ccy></Acct>{parts}</Stmt></BkToCstmrStmt></Document>";

    private static string Balance(string code, string amount, string sign = "CRDT") =>
        $"<Bal><Tp><CdOrPrtry><Cd>{code}</Cd></CdOrPrtry></Tp><Amt Ccy=\"EUR\">{amount}</Amt><CdtDbtInd>{sign}</CdtDbtInd><Dt><Dt>2026-03-31</Dt></Dt></Bal>";

    private static string Entry(string amount, string sign, string more = "") =>
        $"<Ntry><Amt Ccy=\"EUR\">{amount}</Amt><CdtDbtInd>{sign}</CdtDbtInd><BookgDt><Dt>2026-03-05</Dt></BookgDt>{more}</Ntry>";

    private static string Details(params string[] parts) => $"<NtryDtls>{string.Concat(parts)}</NtryDtls>";

    private static string Part(string amount, string party) =>
        $"<TxDtls><Amt Ccy=\"EUR\">{amount}</Amt><CdtDbtInd>DBIT</CdtDbtInd><RltdPties><Cdtr><Nm>{party}</Nm></Cdtr></RltdPties></TxDtls>";
}
