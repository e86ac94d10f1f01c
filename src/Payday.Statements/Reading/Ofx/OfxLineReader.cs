using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Ofx;

/// <summary>Reads the lines of one OFX statement.</summary>
internal sealed class OfxLineReader(Currency currency, LocalDate? end, FaultList faults)
{
    /// <summary>The lines that can be read, in the file's order; the others have their faults.</summary>
    public ImmutableArray<StatementLine> Lines(IEnumerable<OfxGroup> groups, bool isPending) =>
        [.. groups.Select(group => Line(group, isPending)).OfType<StatementLine>()];

    /// <summary>Tells of references that stand at two lines: the id alone neither parts nor joins them.</summary>
    public void NameRepeatedIds(ImmutableArray<StatementLine> lines)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (StatementLine line in lines.Where(line => line.BankId.Length > 0 && !seen.Add(line.BankId)))
        {
            faults.Add(FaultKind.IdTwice, line.Place, line.BankId);
        }
    }

    private StatementLine? Line(OfxGroup group, bool isPending)
    {
        if (Amount(group) is not { } amount || Date(group, isPending ? "DTTRAN" : "DTPOSTED") is not { } date)
        {
            return null;
        }

        return new StatementLine(date, amount)
        {
            Place = group.Place,
            ValueDate = DayReading.Compact(group.Text("DTAVAIL")).Date,
            Kind = KindOf(group.Text("TRNTYPE")),
            Party = CleanText.Of(NameOf(group)),
            PartyAccount = CleanText.Of((group.Find("BANKACCTTO") ?? group.Find("CCACCTTO"))?.Text("ACCTID")),
            Text = CleanText.Join(group.Texts("MEMO")),
            BankId = CleanText.Of(group.Text("FITID")),
            Reference = CleanText.Of(group.Text("REFNUM")),
            ChequeNumber = ChequeOf(group.Text("CHECKNUM")),
        };
    }

    // OFX 1.6, 3.2.9.1: the sign of the amount rules, the type never does; a point or a comma, and no group marks.
    private Money? Amount(OfxGroup group)
    {
        string written = group.Text("TRNAMT");
        int place = group.PlaceOf("TRNAMT");
        string symbol = group.Find("CURRENCY")?.Text("CURSYM") ?? "";
        if (symbol.Length > 0 && symbol != currency.Code)
        {
            faults.Add(FaultKind.OtherCurrency, place, symbol, currency.Code);
            return null;
        }

        AmountReading amount = AmountText.Read(written, AmountText.MarkOf(written), currency.Decimals);
        if (!amount.Ok)
        {
            faults.Add(AmountFaults.KindOf(amount.State), place, written, currency.Code);
            return null;
        }

        return Money.FromMinorUnits(amount.MinorUnits, currency);
    }

    // The first eight digits are the bank's booking day. Its offset moves nothing: converting would move days.
    private LocalDate? Date(OfxGroup group, string tag)
    {
        string written = group.Text(tag);
        int place = group.PlaceOf(tag);
        DayReading day = DayReading.Compact(written);
        if (day.Date is { } date)
        {
            if (day.WasMoved)
            {
                faults.Add(FaultKind.NoSuchDay, place, written, LocalDatePattern.Iso.Format(date));
            }

            return date;
        }

        if (end is { } last)
        {
            faults.Add(FaultKind.DateReplaced, place, written, LocalDatePattern.Iso.Format(last));
            return last;
        }

        faults.Add(FaultKind.DateMissing, place, written);
        return null;
    }

    private static string NameOf(OfxGroup group) =>
        group.Text("NAME") is { Length: > 0 } name ? name
        : group.Find("PAYEE")?.Text("NAME") is { Length: > 0 } payee ? payee
        : group.Text("EXTDNAME");

    // Some banks write zero for "no cheque".
    private static string ChequeOf(string written) => written.AsSpan().Trim('0').IsEmpty ? "" : CleanText.Of(written);

    // OFX 1.6, 11.4.4.3. Types that say nothing of the kind, such as CREDIT, are left out.
    private static LineKind KindOf(string type) => type.ToUpperInvariant() switch
    {
        "INT" or "DIV" => LineKind.Interest,
        "FEE" or "SRVCHG" => LineKind.Fee,
        "ATM" or "CASH" => LineKind.Cash,
        "POS" => LineKind.Card,
        "XFER" => LineKind.Transfer,
        "CHECK" => LineKind.Cheque,
        "DIRECTDEP" => LineKind.Pay,
        "DIRECTDEBIT" => LineKind.DirectDebit,
        "REPEATPMT" => LineKind.StandingOrder,
        _ => LineKind.Other,
    };
}
