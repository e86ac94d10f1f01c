using System.Text.Json;
using Payday.Statements.Answers;
using Payday.Statements.Tests.Reading;

namespace Payday.Statements.Tests.Answers;

public sealed class SummaryJsonTests
{
    private const string Mt940 = ":20:X\n:25:1\n:28C:1/1\n:60F:C260301EUR33,06\n:61:260302D10,00NTRFX\n:61:260305EC5,00NTRFX\n:62F:C260331EUR23,06\n-";

    [Fact]
    public void Of_StatementWithBalances_HasThemAll() => Assert.Equal(
        """{"statements":[{"currency":"EUR","from":"2026-03-01","to":"2026-03-31","lines":1,"sum":"-10.00","opening":"33.06","closing":"23.06","addsUp":true}]}""",
        Json(Mt940));

    [Fact]
    public void Of_StatementThatBreaks_SaysFalse() =>
        Assert.Contains("\"closing\":\"23.05\",\"addsUp\":false", Json(Mt940.Replace("EUR23,06", "EUR23,05", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Fact]
    public void Of_OfxWithoutOpening_LeavesItOutAndSaysNull() => Assert.Equal(
        """{"statements":[{"currency":"EUR","from":"2026-03-02","to":"2026-03-02","lines":1,"sum":"-1.00","closing":"9.00","addsUp":null}]}""",
        Json("<OFX><STMTRS><CURDEF>EUR<STMTTRN><DTPOSTED>20260302<TRNAMT>-1</STMTTRN><LEDGERBAL><BALAMT>9<DTASOF>20260302</LEDGERBAL></STMTRS></OFX>"));

    [Fact]
    public void Of_NoDaysAtAll_LeavesThemOut() =>
        Assert.Equal("""{"statements":[{"currency":"EUR","lines":0,"sum":"0.00","addsUp":null}]}""", Json("<OFX><STMTRS><CURDEF>EUR</STMTRS></OFX>"));

    [Fact]
    public void Of_AnyText_IsJson() => JsonDocument.Parse(Json(Mt940 + "\n" + Mt940));

    private static string Json(string text) => SummaryJson.Of(StatementSummary.Of(Reads.Text(text).Statements));
}
