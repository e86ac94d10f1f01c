using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Ofx;

/// <summary>One statement of an OFX file as its tags come by. Amounts and dates are read at the end, once the currency is known.</summary>
internal sealed class OfxStatement(bool isCard)
{
    private readonly List<OfxGroup> lines = [];
    private readonly List<OfxGroup> pending = [];
    private readonly OfxGroup account = new("ACCTFROM", 0);
    private readonly OfxGroup head = new("HEAD", 0);
    private OfxGroup? ledger;
    private OfxGroup? line;

    // Where values go while a group within the statement is open; null while they are its own.
    private OfxGroup? other;

    /// <summary>How many lines came by.</summary>
    public int LineCount => lines.Count + pending.Count;

    /// <summary>Takes the next tag.</summary>
    public void Take(OfxToken token, int place)
    {
        switch (token.Name)
        {
            case "STMTTRN" or "STMTTRNP":
                line = token.Kind == OfxTokenKind.Open ? new OfxGroup(token.Name, place) : null;
                other = null;
                if (line is not null)
                {
                    (token.Name == "STMTTRN" ? lines : pending).Add(line);
                }

                break;
            case "BANKTRANLIST" or "BANKTRANLISTP":
                line = null;
                other = null;
                break;
            case "BANKACCTFROM" or "CCACCTFROM":
                Enter(token, account);
                break;
            case "LEDGERBAL":
                line = null;
                ledger ??= new OfxGroup(token.Name, place);
                Enter(token, ledger);
                break;
            case "AVAILBAL" or "BALLIST" or "BAL":
                line = null;
                Enter(token, new OfxGroup(token.Name, place));
                break;
            case "BANKACCTTO" or "CCACCTTO" or "PAYEE" or "CURRENCY" or "ORIGCURRENCY":
                Enter(token, line?.Sub(token.Name, place) ?? new OfxGroup(token.Name, place));
                break;
            default:
                if (token.Kind == OfxTokenKind.Open && token.Value.Length > 0)
                {
                    (other ?? line ?? head).Add(token.Name, token.Value, place);
                }

                break;
        }
    }

    /// <summary>The statement, or null where its currency can't be known.</summary>
    public Statement? Finish(Currency? fallback, FaultList faults)
    {
        if (CurrencyOf(fallback, faults) is not { } currency)
        {
            return null;
        }

        LocalDate? end = DayReading.Compact(head.Text("DTEND")).Date;
        var reader = new OfxLineReader(currency, end, faults);
        ImmutableArray<StatementLine> booked = reader.Lines(lines, isPending: false);
        reader.NameRepeatedIds(booked);
        return StatementBuilder.Complete(new Statement(StatementFormat.Ofx, currency)
        {
            Account = CleanText.Of(account.Text("ACCTID")).Replace(" ", "", StringComparison.Ordinal),
            IsCard = isCard,
            From = DayReading.Compact(head.Text("DTSTART")).Date,
            To = end,
            Closing = ClosingOf(currency, faults),
            Lines = booked,
            Pending = reader.Lines(pending, isPending: true),
            LinesLeftOut = lines.Count - booked.Length,
        });
    }

    private void Enter(OfxToken token, OfxGroup group) => other = token.Kind == OfxTokenKind.Open ? group : null;

    private Currency? CurrencyOf(Currency? fallback, FaultList faults)
    {
        string code = head.Text("CURDEF");
        code = code.Length > 0 ? code : lines.Select(one => one.Find("CURRENCY")?.Text("CURSYM") ?? "").FirstOrDefault(symbol => symbol.Length > 0, "");
        if (code.Length == 0)
        {
            if (fallback is null)
            {
                faults.Add(FaultKind.CurrencyMissing, lines.Count > 0 ? lines[0].Place : 0);
            }

            return fallback;
        }

        if (Currency.TryFromCode(code.ToUpperInvariant(), out Currency currency))
        {
            return currency;
        }

        faults.Add(FaultKind.UnknownCurrency, head.PlaceOf("CURDEF"), code);
        return null;
    }

    // Whose date can't be read isn't used: nothing says of when it is.
    private Balance? ClosingOf(Currency currency, FaultList faults)
    {
        if (ledger?.Text("BALAMT") is not { Length: > 0 } written)
        {
            return null;
        }

        AmountReading amount = AmountText.Read(written, AmountText.MarkOf(written), currency.Decimals);
        LocalDate? date = DayReading.Compact(ledger.Text("DTASOF")).Date;
        if (amount.Ok && date is not null)
        {
            return new Balance(Money.FromMinorUnits(amount.MinorUnits, currency), date, ledger.Place);
        }

        faults.Add(FaultKind.BalanceUnusable, ledger.Place, $"{written} {ledger.Text("DTASOF")}");
        return null;
    }
}
