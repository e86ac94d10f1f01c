using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Camt;

/// <summary>Reads the entries of one camt statement.</summary>
internal sealed class CamtEntryReader(Currency currency, LocalDate? end, FaultList faults)
{
    /// <summary>The entries that can be read, in the file's order; the others have their faults.</summary>
    public ImmutableArray<StatementLine> Lines(IEnumerable<CamtEntry> entries) =>
        [.. entries.Select(entry => Line(entry.Element)).OfType<StatementLine>()];

    private StatementLine? Line(CamtElement entry)
    {
        if (Amount(entry) is not { } amount || Date(entry) is not { } date)
        {
            return null;
        }

        CamtElement[] details = [.. entry.All("NtryDtls").SelectMany(group => group.All("TxDtls"))];
        CamtElement? one = details.Length == 1 ? details[0] : null;
        int count = CountOf(entry, details.Length);
        return new StatementLine(date, amount)
        {
            Place = entry.Line,
            ValueDate = CamtEntry.DayOf(entry.Find("ValDt")).Date,
            Kind = CamtKinds.Of(entry, one, amount.IsPositive),
            Party = PartyOf(one, amount.IsPositive),
            PartyAccount = CamtStatement.AccountOf(one?.Find("RltdPties", amount.IsPositive ? "DbtrAcct" : "CdtrAcct")),
            Text = CleanText.Join([.. TextsOf(one), entry.TextOf("AddtlNtryInf")]),
            Mandate = MandateOf(one),
            BankId = CleanText.Of(entry.TextOf("AcctSvcrRef") is { Length: > 0 } id ? id : one?.TextOf("Refs", "AcctSvcrRef")),
            Reference = ReferenceOf(one),
            ChequeNumber = CleanText.Of(one?.TextOf("Refs", "ChqNb")),
            IsReversal = entry.TextOf("RvslInd") is "true" or "1",
            Count = count,
            Parts = details.Length > 1 ? PartsOf(entry, details, amount) : [],
        };
    }

    private Money? Amount(CamtElement entry)
    {
        CamtElement? written = entry.Find("Amt");
        if (written?.CurrencyCode is { Length: > 0 } code && code != currency.Code)
        {
            faults.Add(FaultKind.OtherCurrency, written.Line, code, currency.Code);
            return null;
        }

        AmountReading amount = AmountText.Read(written?.Text, '.', currency.Decimals);
        if (!amount.Ok)
        {
            faults.Add(AmountFaults.KindOf(amount.State), written?.Line ?? entry.Line, written?.Text ?? "", currency.Code);
            return null;
        }

        if (CamtEntry.SignOf(entry) is not { } sign)
        {
            faults.Add(FaultKind.DirectionMissing, entry.Line, entry.TextOf("CdtDbtInd"));
            return null;
        }

        return Money.FromMinorUnits(sign * amount.MinorUnits, currency);
    }

    private LocalDate? Date(CamtElement entry)
    {
        DayReading booked = CamtEntry.DayOf(entry.Find("BookgDt"));
        if (booked.Date is { } date)
        {
            if (booked.WasMoved)
            {
                faults.Add(FaultKind.NoSuchDay, entry.Line, entry.TextOf("BookgDt", "Dt"), LocalDatePattern.Iso.Format(date));
            }

            return date;
        }

        if ((CamtEntry.DayOf(entry.Find("ValDt")).Date ?? end) is { } other)
        {
            faults.Add(FaultKind.DateReplaced, entry.Line, entry.TextOf("BookgDt", "Dt"), LocalDatePattern.Iso.Format(other));
            return other;
        }

        faults.Add(FaultKind.DateMissing, entry.Line);
        return null;
    }

    // Charges inside a payment may or may not be in its amount, and an instructed amount may be in another currency: neither is used.
    private ImmutableArray<LinePart> PartsOf(CamtElement entry, CamtElement[] details, Money amount)
    {
        var parts = ImmutableArray.CreateBuilder<LinePart>(details.Length);
        Int128 sum = 0;
        foreach (CamtElement detail in details)
        {
            CamtElement? written = detail.Find("Amt") ?? detail.Find("AmtDtls", "TxAmt", "Amt");
            AmountReading part = AmountText.Read(written?.Text, '.', currency.Decimals);
            if (!part.Ok || (written!.CurrencyCode.Length > 0 && written.CurrencyCode != currency.Code))
            {
                return [];
            }

            long signed = part.MinorUnits * (CamtEntry.SignOf(detail) ?? (amount.IsNegative ? -1 : 1));
            sum += signed;
            parts.Add(new LinePart(Money.FromMinorUnits(signed, currency), PartyOf(detail, amount.IsPositive), CleanText.Join(TextsOf(detail))));
        }

        if (sum == amount.MinorUnits)
        {
            return parts.ToImmutable();
        }

        string found = sum < long.MaxValue && sum > long.MinValue ? Money.FromMinorUnits((long)sum, currency).ToPlain() : "";
        faults.Add(FaultKind.PartsDiffer, entry.Line, found, amount.ToPlain());
        return [];
    }

    private static int CountOf(CamtElement entry, int details)
    {
        string said = entry.Find("NtryDtls")?.TextOf("Btch", "NbOfTxs") ?? "";
        return int.TryParse(said, out int count) && count > 0 ? Math.Max(count, details) : Math.Max(1, details);
    }

    // From version 07 on a party is one level deeper, as it may be an agent instead.
    private static string PartyOf(CamtElement? detail, bool comesIn)
    {
        CamtElement? parties = detail?.Find("RltdPties");
        string[] names = comesIn ? ["Dbtr", "UltmtDbtr"] : ["Cdtr", "UltmtCdtr"];
        return names
            .Select(name => parties?.Find(name))
            .Select(party => CleanText.Of(party?.TextOf("Nm") is { Length: > 0 } direct ? direct : party?.TextOf("Pty", "Nm")))
            .FirstOrDefault(name => name.Length > 0, "");
    }

    private static IEnumerable<string> TextsOf(CamtElement? detail) => detail is null ? [] :
    [
        .. detail.Find("RmtInf")?.All("Ustrd").Select(text => text.Text) ?? [],
        detail.TextOf("RmtInf", "Strd", "CdtrRefInf", "Ref"),
        detail.TextOf("AddtlTxInf"),
    ];

    private static string MandateOf(CamtElement? detail)
    {
        string mandate = CleanText.Of(detail?.TextOf("Refs", "MndtId"));
        CamtElement? creditor = detail?.Find("RltdPties", "Cdtr");
        string identifier = (creditor?.Find("Pty") ?? creditor)?.TextOf("Id", "PrvtId", "Othr", "Id") ?? "";
        return mandate.Length > 0 ? mandate : CleanText.Of(identifier);
    }

    private static string ReferenceOf(CamtElement? detail)
    {
        string endToEnd = CleanText.Of(detail?.TextOf("Refs", "EndToEndId"));
        return endToEnd.Length > 0 && endToEnd != "NOTPROVIDED"
            ? endToEnd
            : CleanText.Of(detail?.TextOf("RmtInf", "Strd", "CdtrRefInf", "Ref"));
    }
}
