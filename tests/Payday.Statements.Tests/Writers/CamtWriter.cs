using System.Xml.Linq;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Tests.Writers;

/// <summary>Writes statements as camt.053 or camt.052: version 02 with a text as status, 08 with a code and parties one level deeper.</summary>
internal static class CamtWriter
{
    public static string Write(Statement statement, int version, bool isReport = false)
    {
        XNamespace ns = $"urn:iso:std:iso:20022:tech:xsd:camt.05{(isReport ? 2 : 3)}.001.{version:00}";
        XElement Amount(Money amount) => new(ns + "Amt", new XAttribute("Ccy", amount.Currency.Code), (amount.IsNegative ? -amount : amount).ToPlain());
        XElement Sign(Money amount) => new(ns + "CdtDbtInd", amount.IsNegative ? "DBIT" : "CRDT");
        XElement Day(string name, NodaTime.LocalDate day) => new(ns + name, new XElement(ns + "DtTm", LocalDatePattern.Iso.Format(day) + "T23:30:00-11:00"));
        XElement Bal(string code, Balance balance) => new(ns + "Bal",
            new XElement(ns + "Tp", new XElement(ns + "CdOrPrtry", new XElement(ns + "Cd", code))), Amount(balance.Amount), Sign(balance.Amount), Day("Dt", balance.Date!.Value));
        XElement Entry(StatementLine line)
        {
            var name = new XElement(ns + "Nm", line.Party);
            return new XElement(ns + "Ntry",
                Amount(line.Amount), Sign(line.Amount),
                version < 7 ? new XElement(ns + "Sts", "BOOK") : new XElement(ns + "Sts", new XElement(ns + "Cd", "BOOK")),
                Day("BookgDt", line.Date),
                new XElement(ns + "NtryDtls", new XElement(ns + "TxDtls",
                    new XElement(ns + "RltdPties", new XElement(ns + (line.Amount.IsNegative ? "Cdtr" : "Dbtr"), version < 7 ? name : new XElement(ns + "Pty", name))),
                    new XElement(ns + "RmtInf", new XElement(ns + "Ustrd", line.Text)))));
        }

        return new XDocument(new XElement(ns + "Document", new XElement(ns + (isReport ? "BkToCstmrAcctRpt" : "BkToCstmrStmt"),
            new XElement(ns + (isReport ? "Rpt" : "Stmt"),
                new XElement(ns + "Id", statement.Id),
                new XElement(ns + "ElctrncSeqNb", statement.Number),
                new XElement(ns + "Acct", new XElement(ns + "Id", new XElement(ns + "IBAN", statement.Account)), new XElement(ns + "Ccy", statement.Currency.Code)),
                Bal("OPBD", statement.Opening!),
                Bal("CLBD", statement.Closing!),
                statement.Lines.Select(Entry))))).ToString(SaveOptions.None);
    }
}
