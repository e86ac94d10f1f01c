using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Mt940;

/// <summary>Makes a statement of a message's fields.</summary>
internal static class Mt940Statement
{
    /// <summary>The statement, or null where its balances don't say its currency.</summary>
    public static Statement? Of(Mt940Page page, FaultList faults)
    {
        string code = CodeOf(page.Opening) is { Length: > 0 } opened ? opened : CodeOf(page.Closing);
        if (!Currency.TryFromCode(code, out Currency currency))
        {
            faults.Add(code.Length == 0 ? FaultKind.CurrencyMissing : FaultKind.UnknownCurrency, page.Place, code);
            return null;
        }

        foreach (Mt940Field broken in page.Broken)
        {
            faults.Add(FaultKind.BrokenLine, broken.Place, broken.Value);
        }

        Balance? opening = BalanceOf(page.Opening, currency, faults);
        var minuses = page.Entries.Where(entry => entry.HasMinus).Select(entry => entry.Place).ToHashSet();
        ImmutableArray<StatementLine> booked = Lines(page.Entries.Where(entry => !entry.Mark.IsExpected), currency, faults);
        Balance? closing = BalanceOf(page.Closing, currency, faults);
        (Statement settled, bool turned) = DoubtfulSigns.Settle(
            new Statement(StatementFormat.Mt940, currency)
            {
                Account = page.Account,
                Id = CleanText.Of(page.Id),
                Number = NumberOf(page.Number),
                From = opening?.Date,
                To = closing?.Date,
                Opening = opening,
                Closing = closing,
                Lines = booked,
                Pending = Lines(page.Entries.Where(entry => entry.Mark.IsExpected), currency, faults),
                LinesLeftOut = page.Broken.Count + page.Entries.Count(entry => !entry.Mark.IsExpected) - booked.Length,
            },
            line => line.IsReversal || minuses.Contains(line.Place));
        if (turned)
        {
            faults.Add(FaultKind.SignsTurned, page.Place);
        }

        return StatementBuilder.Complete(settled);
    }

    private static string CodeOf(Mt940Field? balance) => balance is { Value.Length: >= 10 } field ? field.Value[7..10] : "";

    // Banks that don't number their statements write zero.
    private static long? NumberOf(string field)
    {
        string number = field.Split('/')[0].Trim();
        return number.Length is > 0 and <= 18 && number.All(char.IsAsciiDigit) && number.Any(digit => digit != '0')
            ? long.Parse(number, System.Globalization.CultureInfo.InvariantCulture)
            : null;
    }

    private static ImmutableArray<StatementLine> Lines(IEnumerable<Mt940Entry> entries, Currency currency, FaultList faults) =>
        [.. entries.Select(entry => Line(entry, currency, faults)).OfType<StatementLine>()];

    private static StatementLine? Line(Mt940Entry entry, Currency currency, FaultList faults)
    {
        AmountReading amount = AmountText.Read(entry.Amount, AmountText.MarkOf(entry.Amount), currency.Decimals);
        if (!amount.Ok)
        {
            faults.Add(AmountFaults.KindOf(amount.State), entry.Place, entry.Amount, currency.Code);
            return null;
        }

        LocalDate date = entry.Date.Date!.Value;
        if (entry.Date.WasMoved || entry.ValueDate.WasMoved)
        {
            faults.Add(FaultKind.NoSuchDay, entry.Place, entry.Dates, LocalDatePattern.Iso.Format(date));
        }

        Mt940Text[] texts = [.. entry.Texts.Select(Mt940Text.Of)];
        return new StatementLine(date, Money.FromMinorUnits(entry.Mark.Sign * amount.MinorUnits, currency))
        {
            Place = entry.Place,
            ValueDate = entry.ValueDate.Date,
            Kind = Mt940Kinds.Of(entry.Type, First(texts, text => text.Code)),
            Party = First(texts, text => text.Party),
            PartyAccount = First(texts, text => text.PartyAccount),
            Text = CleanText.Join([.. texts.Select(text => text.Text), texts.Length == 0 ? entry.Supplement : ""]),
            Mandate = First(texts, text => text.Mandate),
            BankId = CleanText.Of(entry.BankReference),
            Reference = First(texts, text => text.Reference) is { Length: > 0 } said ? said : OwnReference(entry.Reference),
            ChequeNumber = entry.Type == "CHK" ? OwnReference(entry.Reference) : "",
            IsReversal = entry.Mark.IsReversal,
        };
    }

    private static string First(Mt940Text[] texts, Func<Mt940Text, string> part) => texts.Select(part).FirstOrDefault(value => value.Length > 0, "");

    private static string OwnReference(string written) => written is "NONREF" or "EREF" or "NOTPROVIDED" ? "" : CleanText.Of(written);

    private static Balance? BalanceOf(Mt940Field? field, Currency currency, FaultList faults)
    {
        if (field is not { } found)
        {
            return null;
        }

        string value = found.Value.Trim();
        int sign = value.StartsWith('C') ? 1 : value.StartsWith('D') ? -1 : 0;
        string written = value.Length > 10 ? value[10..] : "";
        AmountReading amount = AmountText.Read(written, AmountText.MarkOf(written), currency.Decimals);
        if (sign == 0 || !amount.Ok || value[7..10] != currency.Code)
        {
            faults.Add(FaultKind.BalanceUnusable, found.Place, value);
            return null;
        }

        DayReading day = Mt940Date.Of(value.AsSpan(1));
        if (day is { WasMoved: true, Date: { } moved })
        {
            faults.Add(FaultKind.NoSuchDay, found.Place, value[1..7], LocalDatePattern.Iso.Format(moved));
        }

        return new Balance(Money.FromMinorUnits(sign * amount.MinorUnits, currency), day.Date, found.Place);
    }
}
