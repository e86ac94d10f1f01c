using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Histories;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Status;
using Payday.Reports;

namespace Payday.Tests.Pages;

/// <summary>Reports of households that never were.</summary>
internal static class ReportSamples
{
    private static readonly LocalDate Today = new(2027, 5, 20);

    private static readonly Gen<string> GenName = Gen.OneOf(
        "Rent", "Groceries", "", "買い物と外食", "Еда и дом", "Café Größe Żywność", "a\u001b[2Jb\nc", "A name that is much longer than any column on paper can be, and goes on",
        "Wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww", "👩‍👩‍👧 Trip");

    private static readonly Gen<Currency> GenCurrency = Gen.OneOf(Currency.FromCode("USD"), Currency.FromCode("JPY"), Currency.FromCode("HUF"));

    /// <summary>Of up to so many purposes, bills and dues.</summary>
    public static Gen<PeriodReport> Gen500(int most) =>
        from currency in GenCurrency
        from style in Gen.OneOf(NumberStyle.CommaPoint, NumberStyle.SpaceComma, NumberStyle.Plain)
        from household in GenName
        from isYear in Gen.Bool
        from rows in Row(currency).Array[0, most]
        from camein in Row(currency)
        from total in Row(currency)
        from months in Month(currency).Array[1, 30]
        from aside in Gen.Select(GenName, Amount(currency), Gen.Int[0, 400]).Array[0, most]
        from dues in Gen.Select(GenName, Amount(currency), Gen.Int[0, 31]).Array[0, most]
        select new PeriodReport(
            household,
            isYear ? ReportPeriod.OfYear(2027, Today) : new ReportPeriod(new YearMonth(2027, 5), IsYear: false),
            Today,
            currency,
            style,
            camein,
            new WhereItWent([.. rows], total, null),
            isYear ? "2026" : "usual",
            [.. Dated(months).TakeLast(12)],
            [.. Dated(months)],
            [.. aside.Select((line, i) => new SetAsideGlance(Owner(i), line.Item1, line.Item2.Abs(), line.Item3 < 40 ? null : Due(i, line.Item1, line.Item2.Abs(), line.Item3)))],
            [.. dues.Select((line, i) => Due(i, line.Item1, line.Item2.Abs(), line.Item3))],
            Today.PlusMonths(1));

    private static Gen<Money> Amount(Currency currency) => Gen.OneOf(Gen.Long[-2_000, 300_000], Gen.Long[0, 90_000_000], Gen.Long[-1_000_000_000_000, 9_000_000_000_000])
        .Select(amount => Money.FromMinorUnits(amount, currency));

    private static Money Abs(this Money amount) => amount.IsNegative ? -amount : amount;

    private static Gen<WentRow> Row(Currency currency) =>
        Gen.Select(GenName, Amount(currency), Amount(currency), Gen.Int[0, 3]).Select((name, amount, beside, which) =>
            new WentRow(name, amount, which == 0 ? null : beside, which == 1 ? 5 : null));

    private static Gen<(Flow Flow, Money Saved, Money Owed)> Month(Currency currency) =>
        Gen.Select(Amount(currency), Amount(currency), Amount(currency), Amount(currency)).Select((came, went, saved, owed) =>
            (new Flow(came, went, Money.Zero(currency), Money.Zero(currency), ImmutableDictionary<LedgerEnd, Money>.Empty), saved, owed));

    private static IEnumerable<MonthFlow> Dated((Flow Flow, Money Saved, Money Owed)[] months) =>
        months.Select((month, i) => new MonthFlow(new YearMonth(2027, 5).PlusMonths(i - months.Length + 1), month.Flow, month.Saved, month.Owed));

    private static DueOwner Owner(int i) => DueOwner.Of(new BillId("bill-" + i.ToString(CultureInfo.InvariantCulture)));

    private static ComingDue Due(int i, string name, Money amount, int days) => new(Owner(i), name, Today.PlusDays(days), amount, Paid: false);
}
