using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Tests.Slips;

namespace Payday.Tests.Sentences;

/// <summary>What is taken, and what is said, of amounts, sums and dates as they are typed.</summary>
public sealed class TypedTests
{
    private static readonly string[] Amounts =
    [
        "", " ", "0", "12", "12.5", "12.50", "12,50", "12.505", "12,505", "1,234.56", "1.234,56", "1 234,56", "1'234.56", "1’234.56", "1\u00A0234,56", "1\u202F234,56", "1,23", "12,34,567", "1,2345", ",5", ".5", "5.", "5,", ".", ",",
        "-", "+", "-5", "+5", "\u22125", "--5", "- 5", "5-", "5 -", "$5", "5 USD", "five", "12.5.0", "1e3", "0x10", "٣", "５", "1\n2", "1\u202E2", "1\uD83D", "🎁", "12345678901234567890123456", "abcdefghijklmnopqrstuvwxyz",
        "92233720368547758.07", "92233720368547758.08", "-92233720368547758.08", "9223372036854775807", "9223372036854775808", "99999999999999999999999999",
        "12.50+3", "12,50+3", "12.50+3-1", "12.50 + 3", "1+-2", "1++2", "+1+2", "1+", "+", "1-", "1+x", "1*2", "(1+2)", "92233720368547758.07+0.01", "9223372036854775807+1", "92233720368547758.08-1",
        new string('1', 201), "1" + new string(' ', 199) + "2",
    ];

    private static readonly string[] Dates =
    [
        "", " ", "today", "Yesterday", "tomorrow", "2026-03-12", "2026-3-2", "2026/03/12", "2026.3.12", "2026-13-01", "2026-00-01", "2026-02-30", "2026-02-00", "2024-02-29", "2026-02-29", "0000-01-01", "9999-12-31", "26-03-12",
        "12.3.2026", "3.3.2026", "13.3.2026", "3.13.2026", "13.13.2026", "3/4/2026", "3-4-2026", "0.3.2026", "3.0.2026", "12.3.26", "12.3", "12.3.", "1.2.3.4", "2026-03", "2026", "12", "12/03/20266", "-1.3.2026",
        "12 Mar 2026", "12 March 2026", "Mar 12 2026", "March 12, 2026", "2026 Mar 12", "12-Mar-2026", "12 Ma 2026", "12 Maerz 2026", "12 Mar", "Mar 12", "28 Nov", "31 Dec", "29 Feb", "30 Feb", "32 Mar 2026", "0 Mar 2026",
        "Thu 12 Mar 2026", "Fri 12 Mar 2026", "Thursday, 12 March 2026", "Th 12 Mar 2026", "Thu 12 Mar", "12 13 Mar 2026", "12 Mar Apr 2026", "12 Mar 26", "12 Mar 2026 2027", "Mar 2026", "hello", "2026-03-12T10:00", "12,50", "🎁",
    ];

    private static readonly string[] Spans =
    [
        "", "2026", "2026-03", "Mar 2026", "2026-03-06", "6 Mar 2026", "2026-01 to 2026-03", "2026-03 to 2026-01", "2026-03-06 to 2026-03-01", "2026 to 2027 to 2028", "Mar 2026 to Apr 2026", "x to 2026", "2026 to x", "2026-13", "3.4.2026", "6 Mar", "2026-02-30",
    ];

    // Without decimals, and with three.
    private static readonly string[] OtherCurrencies = ["JPY", "BHD"];

    private static readonly LocalDate?[] Todays = [null, new LocalDate(2026, 11, 28)];

    [Fact]
    public void Amount_AsTyped_IsTakenAsRecorded() => Golden.Equal("typed-amounts", Amounts.SelectMany(text => Read(text, Money.Parse)));

    [Fact]
    public void Sum_AsTyped_IsTakenAsRecorded() => Golden.Equal("typed-sums", Amounts.SelectMany(text => Read(text, Money.ParseSum)));

    [Fact]
    public void Date_AsTyped_IsTakenAsRecorded() => Golden.Equal("typed-dates", Dates.SelectMany(text => (string[])
    [
        Shown(text),
        .. Todays.SelectMany(today => Enum.GetValues<DateOrder>().Select(order =>
            $"  {(today is null ? "any day" : "up to Sat 28 Nov 2026")}, {Order(order)}: {Said(TypedDate.Parse(text, today, order), date => date.ToString("uuuu-MM-dd", null))}")),
    ]));

    [Fact]
    public void Span_AsTyped_IsTakenAsRecorded() => Golden.Equal("typed-spans", Spans.Select(text =>
        $"{Shown(text)}: {Said(DateSpan.Parse(text), span => $"{span.First:uuuu-MM-dd} to {span.Last:uuuu-MM-dd}")}"));

    private static IEnumerable<string> Read(string text, Func<string, Currency, NumberStyle, Result<Money>> parse) =>
    [
        Shown(text),
        .. NumberStyle.All.Select(style => $"  USD, {style.Sample}: {Said(parse(text, Currency.FromCode("USD"), style), money => money.ToPlain())}"),
        .. OtherCurrencies.Select(code => $"  {code}, 1,234.56: {Said(parse(text, Currency.FromCode(code), NumberStyle.CommaPoint), money => money.ToPlain())}"),
    ];

    private static string Said<T>(Result<T> read, Func<T, string> shown) => read.Ok ? shown(read.Value) : "! " + Escaped(read.Fault);

    private static string Order(DateOrder order) => order switch
    {
        DateOrder.Unknown => "no order",
        DateOrder.DayFirst => "day first",
        _ => "month first",
    };

    private static string Shown(string text) => text.Length > 60 ? $"'{Escaped(text[..60])}...' ({text.Length} characters)" : $"'{Escaped(text)}'";

    // So that the golden is plain text, whatever was typed.
    private static string Escaped(string text) => string.Concat(text.Select(c => c is >= ' ' and <= '~' ? c.ToString() : $"\\u{(int)c:X4}"));
}
