namespace Payday.Tests.Commands;

/// <summary>Files of a bank that is made up. The readings themselves are tried with their readers.</summary>
public class StatementCommandTests
{
    private const string Camt = """
        <?xml version="1.0" encoding="UTF-8"?>
        <Document xmlns="urn:iso:std:iso:20022:tech:xsd:camt.053.001.08"><BkToCstmrStmt><GrpHdr><MsgId>1</MsgId><CreDtTm>2026-04-01T06:00:00</CreDtTm></GrpHdr>
        <Stmt><Id>3</Id><Acct><Id><Othr><Id>77</Id></Othr></Id><Ccy>EUR</Ccy></Acct>
        <Bal><Tp><CdOrPrtry><Cd>OPBD</Cd></CdOrPrtry></Tp><Amt Ccy="EUR">33.06</Amt><CdtDbtInd>CRDT</CdtDbtInd><Dt><Dt>2026-03-01</Dt></Dt></Bal>
        <Bal><Tp><CdOrPrtry><Cd>CLBD</Cd></CdOrPrtry></Tp><Amt Ccy="EUR">CLOSING</Amt><CdtDbtInd>CRDT</CdtDbtInd><Dt><Dt>2026-03-31</Dt></Dt></Bal>
        <Ntry><Amt Ccy="EUR">10.00</Amt><CdtDbtInd>DBIT</CdtDbtInd><Sts><Cd>BOOK</Cd></Sts><BookgDt><Dt>2026-03-14</Dt></BookgDt></Ntry>
        <Ntry><Amt Ccy="EUR">4.00</Amt><CdtDbtInd>DBIT</CdtDbtInd><Sts><Cd>PDNG</Cd></Sts><BookgDt><Dt>2026-03-30</Dt></BookgDt></Ntry>
        </Stmt></BkToCstmrStmt></Document>
        """;

    [Theory]
    [InlineData("23.06", "true")]
    [InlineData("24.06", "false")]
    public void Read_AStatementWithBalances_SaysWhetherItAddsUp(string closing, string addsUp)
    {
        using var shell = new TestShell();
        string file = shell.File("march.xml", Camt.Replace("CLOSING", closing, StringComparison.Ordinal));

        Assert.Equal(
            $$"""{"version":1,"statements":[{"currency":"EUR","from":"2026-03-01","to":"2026-03-31","lines":1,"sum":"-10.00","opening":"33.06","closing":"{{closing}}","addsUp":{{addsUp}}}]}""",
            shell.Run("statement", file, "--read", "--json").Fine().Out.TrimEnd());
        Assert.Contains(addsUp == "true" ? "It adds up." : "It doesn't add up: the lines lead to 23.06, and it closes with 24.06.", shell.Run("statement", file, "--read").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WhatOnlyThePersonKnows_IsAskedAndAnswered()
    {
        using var shell = new TestShell();
        string file = shell.File("list.csv", "Date;Text;Amount\n03/04/2026;Corner shop;-12,50\n05/04/2026;Pay;1.200,00\n");

        Ran noCurrency = shell.Run("statement", file, "--read");
        Assert.Equal(1, noCurrency.Exit);
        Assert.Contains("the file doesn't say its currency; name it with --currency CODE.", noCurrency.Error, StringComparison.Ordinal);
        Ran asked = shell.Run("statement", file, "--read", "--currency", "EUR");
        Assert.Equal(1, asked.Exit);
        Assert.Contains("line 2 doesn't say which figure is the day", asked.Error, StringComparison.Ordinal);
        Assert.Contains("--choose 2: 2026-03-04", asked.Error, StringComparison.Ordinal);
        Assert.Equal(
            """{"version":1,"statements":[{"currency":"EUR","from":"2026-03-04","to":"2026-05-04","lines":2,"sum":"1187.50","addsUp":null}]}""",
            shell.Run("statement", file, "--read", "--currency", "EUR", "--choose", "2", "--json").Fine().Out.TrimEnd());
    }

    [Fact]
    public void Read_OneOfSeveralFilesIsNone_SaysWhichAndNothingElse()
    {
        using var shell = new TestShell();
        string good = shell.File("march.xml", Camt.Replace("CLOSING", "23.06", StringComparison.Ordinal));
        string bad = shell.File("letter.txt", "Dear customer,\n");

        Ran ran = shell.Run("statement", good, bad, "--read");
        Assert.Equal((1, ""), (ran.Exit, ran.Out));
        Assert.Contains("letter.txt: ", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("payday: Nothing was stored.\n", ran.Error, StringComparison.Ordinal);
    }
}
