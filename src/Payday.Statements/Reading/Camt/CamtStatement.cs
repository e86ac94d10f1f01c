using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Camt;

/// <summary>One statement of a camt message as its parts come by.</summary>
internal sealed class CamtStatement(StatementFormat format, int place)
{
    private readonly List<CamtElement> balances = [];
    private readonly List<CamtEntry> entries = [];
    private readonly List<CamtElement> head = [];

    /// <summary>How many entries came by.</summary>
    public int LineCount => entries.Count;

    /// <summary>Takes the next part.</summary>
    public void Take(CamtElement part)
    {
        switch (part.Name)
        {
            case "Bal":
                balances.Add(part);
                break;
            case "Ntry":
                entries.Add(CamtEntry.Of(part));
                break;
            case "Id" or "ElctrncSeqNb" or "FrToDt" or "Acct" or "TxsSummry":
                head.Add(part);
                break;
            default:
                break;
        }
    }

    /// <summary>The statement, or null where its currency can't be known.</summary>
    public Statement? Finish(Currency? fallback, FaultList faults)
    {
        if (format == StatementFormat.Camt052)
        {
            faults.Add(FaultKind.NotClosed, place);
        }

        if (CurrencyOf(fallback, faults) is not { } currency)
        {
            return null;
        }

        CamtElement? account = Head("Acct");
        LocalDate? from = PeriodDay("FrDtTm") ?? PeriodDay("FrDt");
        LocalDate? to = PeriodDay("ToDtTm") ?? PeriodDay("ToDt");
        Balance? opening = FirstBalance(currency, faults, "OPBD", "PRCD");
        Balance? closing = LastBalance(currency, faults, "CLBD", "ITBD");
        var reader = new CamtEntryReader(currency, to ?? closing?.Date, faults);
        ImmutableArray<StatementLine> booked = reader.Lines(entries.Where(entry => entry.IsBooked));
        NameMissing(faults);
        (Statement settled, bool turned) = DoubtfulSigns.Settle(
            new Statement(format, currency)
            {
                Account = AccountOf(account),
                Id = CleanText.Of(Head("Id")?.Text),
                Number = long.TryParse(Head("ElctrncSeqNb")?.Text, out long number) ? number : null,
                From = from,
                To = to,
                Opening = opening,
                Closing = closing,
                Lines = booked,
                Pending = reader.Lines(entries.Where(entry => !entry.IsBooked)),
                LinesLeftOut = entries.Count(entry => entry.IsBooked) - booked.Length,
            },
            line => line.IsReversal);
        if (turned)
        {
            faults.Add(FaultKind.SignsTurned, place);
        }

        return StatementBuilder.Complete(settled);
    }

    /// <summary>An account's number: IBAN, else the other identification, without blanks.</summary>
    public static string AccountOf(CamtElement? account)
    {
        string iban = account?.TextOf("Id", "IBAN") ?? "";
        return CleanText.Of(iban.Length > 0 ? iban : account?.TextOf("Id", "Othr", "Id")).Replace(" ", "", StringComparison.Ordinal);
    }

    private CamtElement? Head(string name) => head.Find(part => part.Name == name);

    private LocalDate? PeriodDay(string name) => DayReading.Iso(Head("FrToDt")?.TextOf(name)).Date;

    private void NameMissing(FaultList faults)
    {
        string said = Head("TxsSummry")?.TextOf("TtlNtries", "NbOfNtries") ?? "";
        if (int.TryParse(said, out int count) && count != entries.Count)
        {
            faults.Add(FaultKind.CountDiffers, Head("TxsSummry")!.Line, $"{entries.Count}", said);
        }
    }

    private Currency? CurrencyOf(Currency? fallback, FaultList faults)
    {
        string code = Head("Acct")?.TextOf("Ccy") ?? "";
        code = code.Length > 0 ? code
            : balances.Find(IsBooked)?.Find("Amt")?.CurrencyCode is { Length: > 0 } balance ? balance
            : entries.Select(entry => entry.CurrencyCode).FirstOrDefault(entry => entry.Length > 0, "");
        if (code.Length == 0)
        {
            if (fallback is null)
            {
                faults.Add(FaultKind.CurrencyMissing, place);
            }

            return fallback;
        }

        if (Currency.TryFromCode(code, out Currency currency))
        {
            return currency;
        }

        faults.Add(FaultKind.UnknownCurrency, place, code);
        return null;
    }

    private static bool IsBooked(CamtElement balance) => CodeOf(balance) is "OPBD" or "PRCD" or "CLBD" or "ITBD";

    private static string CodeOf(CamtElement balance) => balance.TextOf("Tp", "CdOrPrtry", "Cd");

    // The balance the bank closed with before stands in for a missing opening one, and two balances in between are those of a page.
    private Balance? FirstBalance(Currency currency, FaultList faults, params ReadOnlySpan<string> codes)
    {
        foreach (string code in codes)
        {
            if (balances.Find(balance => CodeOf(balance) == code) is { } found)
            {
                return BalanceOf(found, currency, faults);
            }
        }

        List<CamtElement> between = balances.FindAll(balance => CodeOf(balance) == "ITBD");
        return between.Count > 1 ? BalanceOf(between[0], currency, faults) : null;
    }

    private Balance? LastBalance(Currency currency, FaultList faults, params ReadOnlySpan<string> codes)
    {
        foreach (string code in codes)
        {
            if (balances.FindLast(balance => CodeOf(balance) == code) is { } found)
            {
                return BalanceOf(found, currency, faults);
            }
        }

        return null;
    }

    private static Balance? BalanceOf(CamtElement balance, Currency currency, FaultList faults)
    {
        CamtElement? written = balance.Find("Amt");
        Currency its = Currency.TryFromCode(written?.CurrencyCode, out Currency named) ? named : currency;
        AmountReading amount = AmountText.Read(written?.Text, '.', its.Decimals);
        int? sign = CamtEntry.SignOf(balance);
        if (!amount.Ok || sign is null)
        {
            faults.Add(FaultKind.BalanceUnusable, balance.Line, written?.Text ?? "");
            return null;
        }

        if (its != currency)
        {
            faults.Add(FaultKind.OtherCurrency, balance.Line, its.Code, currency.Code);
        }

        return new Balance(Money.FromMinorUnits(sign.Value * amount.MinorUnits, its), CamtEntry.DayOf(balance.Find("Dt")).Date, balance.Line);
    }
}
