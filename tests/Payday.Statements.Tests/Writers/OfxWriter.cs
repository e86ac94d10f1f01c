using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using Payday.Statements.Lines;

namespace Payday.Statements.Tests.Writers;

/// <summary>Writes statements as OFX: 1.x as SGML without end tags of values, 2.x as XML.</summary>
internal static class OfxWriter
{
    private static readonly LocalDatePattern Compact = LocalDatePattern.CreateWithInvariantCulture("yyyyMMdd");

    public static string Write(Statement statement, bool asXml)
    {
        var text = new StringBuilder(asXml
            ? "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<?OFX OFXHEADER=\"200\" VERSION=\"220\" SECURITY=\"NONE\" OLDFILEUID=\"NONE\" NEWFILEUID=\"NONE\"?>\n"
            : "OFXHEADER:100\r\nDATA:OFXSGML\r\nVERSION:160\r\nSECURITY:NONE\r\nENCODING:USASCII\r\nCHARSET:1252\r\nCOMPRESSION:NONE\r\nOLDFILEUID:NONE\r\nNEWFILEUID:NONE\r\n\r\n");
        void Value(string tag, string value) => text.Append(CultureInfo.InvariantCulture, $"<{tag}>{Escaped(value)}{(asXml ? $"</{tag}>" : "")}\n");
        text.Append("<OFX><BANKMSGSRSV1><STMTTRNRS><STMTRS>\n");
        Value("CURDEF", statement.Currency.Code);
        text.Append("<BANKACCTFROM>");
        Value("ACCTID", statement.Account);
        text.Append("</BANKACCTFROM><BANKTRANLIST>\n");
        Value("DTSTART", Day(statement.From));
        Value("DTEND", Day(statement.To) + "120000[-5:EST]");
        foreach (StatementLine line in statement.Lines)
        {
            text.Append("<STMTTRN>");
            Value("TRNTYPE", line.Amount.IsNegative ? "DEBIT" : "CREDIT");
            Value("DTPOSTED", Day(line.Date) + "235959.999[-11:XXX]");
            Value("TRNAMT", line.Amount.ToPlain());
            Value("FITID", line.BankId);
            Value("NAME", line.Party);
            Value("MEMO", line.Text);
            text.Append("</STMTTRN>\n");
        }

        text.Append("</BANKTRANLIST><LEDGERBAL>");
        Value("BALAMT", statement.Closing!.Amount.ToPlain());
        Value("DTASOF", Day(statement.Closing.Date));
        return text.Append("</LEDGERBAL></STMTRS></STMTTRNRS></BANKMSGSRSV1></OFX>\n").ToString();
    }

    private static string Day(LocalDate? day) => Compact.Format(day!.Value);

    private static string Escaped(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
