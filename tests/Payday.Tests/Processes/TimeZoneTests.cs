using Payday.Tests.Printing;

namespace Payday.Tests.Processes;

/// <summary>The day that a bank wrote stays that day, wherever the machine stands.</summary>
public class TimeZoneTests
{
    private const string Ofx = """
        <OFX><STMTRS><CURDEF>EUR<BANKTRANLIST><DTSTART>20260301000000[-9:AKST]<DTEND>20260331235959[+14:LINT]
        <STMTTRN><DTPOSTED>20260305000000.000[-5:EST]<TRNAMT>-3.20</STMTTRN><STMTTRN><DTPOSTED>20260306235959[+12]<TRNAMT>-4.10</STMTTRN>
        </BANKTRANLIST></STMTRS></OFX>
        """;

    private const string Camt = """
        <Document><BkToCstmrStmt><Stmt><CreDtTm>2026-04-01T00:30:00Z</CreDtTm><FrToDt><FrDtTm>2026-03-01T00:00:00Z</FrDtTm><ToDtTm>2026-03-31T23:59:59Z</ToDtTm></FrToDt><Acct><Ccy>EUR</Ccy></Acct>
        <Ntry><Amt Ccy="EUR">3.20</Amt><CdtDbtInd>DBIT</CdtDbtInd><BookgDt><DtTm>2026-03-05T00:10:00Z</DtTm></BookgDt></Ntry>
        <Ntry><Amt Ccy="EUR">4.10</Amt><CdtDbtInd>DBIT</CdtDbtInd><BookgDt><DtTm>2026-03-06T23:50:00+02:00</DtTm></BookgDt></Ntry>
        </Stmt></BkToCstmrStmt></Document>
        """;

    [Theory]
    [InlineData("Pacific/Kiritimati")]
    [InlineData("America/Anchorage")]
    [InlineData("UTC")]
    public void Statement_InAnyTimeZone_HasTheDaysAsWritten(string zone)
    {
        using var folder = new ScratchFolder();
        File.WriteAllText(folder.In("march.ofx"), Ofx);
        File.WriteAllText(folder.In("march.xml"), Camt);

        Ended ended = BuiltProgram.Run("payday statement march.ofx march.xml --read --json", folder.Path, ("TZ", zone));

        Assert.Equal(0, ended.Exit);
        Assert.Equal(
            """{"version":1,"statements":[{"currency":"EUR","from":"2026-03-01","to":"2026-03-31","lines":2,"sum":"-7.30","addsUp":null},{"currency":"EUR","from":"2026-03-01","to":"2026-03-31","lines":2,"sum":"-7.30","addsUp":null}]}""",
            ended.Out.TrimEnd());
    }
}
