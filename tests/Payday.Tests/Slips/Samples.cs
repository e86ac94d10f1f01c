using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Slips;

namespace Payday.Tests.Slips;

/// <summary>Data for slips and filling sheets.</summary>
internal static class Samples
{
    public static readonly LocalDate Friday = new(2026, 3, 6);
    private static readonly Currency Usd = Currency.FromCode("USD");
    private static readonly Currency Eur = Currency.FromCode("EUR");
    private static readonly Currency Jpy = Currency.FromCode("JPY");

    public static ImmutableArray<NoteLine> Notes(Currency currency, params ReadOnlySpan<(long Value, long Count)> notes)
    {
        var lines = ImmutableArray.CreateBuilder<NoteLine>();
        foreach ((long value, long count) in notes)
        {
            lines.Add(new NoteLine(Money.FromUnits(value, currency), count));
        }

        return lines.ToImmutable();
    }

    public static SlipData Slip(string name) => name switch
    {
        "usd" => new(Friday, Usd, NumberStyle.CommaPoint, ["M. Example", "Account ending in 1234"],
            Notes(Usd, (5, 4), (100, 2), (50, 3), (20, 12), (10, 0))),
        "eur" => new(Friday, Eur, NumberStyle.PointComma, [], Notes(Eur, (500, 1), (200, 3), (50, 11), (5, 1))),
        "jpy" => new(Friday, Jpy, NumberStyle.CommaPoint, ["山田の家計"], Notes(Jpy, (10_000, 12), (5_000, 1), (1_000, 7))),
        "big" => new(Friday, Usd, NumberStyle.CommaPoint, [], Notes(Usd, (100, 98_765_432), (1, 1))),
        "empty" => new(Friday, Usd, NumberStyle.CommaPoint, ["M. Example"], Notes(Usd, (20, 0))),
        "deposit" => new(Friday, Usd, NumberStyle.CommaPoint, [], Notes(Usd, (20, 2), (10, 1))) { Kind = SlipKind.Deposit },
        "machine" => new(Friday, Usd, NumberStyle.CommaPoint, [], Notes(Usd, (50, 1), (20, 12))) { AtAMachine = true },
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    public static FillingSheetData Sheet(string name) => name switch
    {
        "usd" => new(
            Friday, Usd, NumberStyle.CommaPoint, ["Kitchen drawer, blue box"],
            [
                new("Groceries", Friday, Notes(Usd, (50, 1), (20, 3), (5, 2))),
                new("Groceries", Friday.PlusWeeks(1), Notes(Usd, (50, 1), (20, 3), (10, 1))),
                new("Cafe\u0301 and eating out with the whole family", Friday, Notes(Usd, (20, 1), (5, 1), (1, 3))),
                new("買い物", Friday, Notes(Usd, (10, 2))),
                new("Gifts", null, Notes(Usd, (100, 1))),
            ],
            Notes(Usd, (100, 2), (50, 2), (20, 4), (10, 3), (5, 3), (1, 3)),
            Notes(Usd, (20, 3)),
            Notes(Usd, (100, 1)),
            [new("Groceries", Money.FromMinorUnits(350, Usd)), new("Car", Money.FromMinorUnits(12, Usd))]),
        "eur" => new(
            Friday, Eur, NumberStyle.PointComma, [],
            [new("House", null, Notes(Eur, (200, 9_876), (100, 5), (50, 3))), new("Car", null, Notes(Eur, (20, 1)))],
            Notes(Eur, (200, 9_876), (100, 5), (50, 3), (20, 1)), [], [],
            [new("Car", Money.FromMinorUnits(123_456, Eur))]),
        "jpy" => new(
            Friday, Jpy, NumberStyle.CommaPoint, [],
            [new("食費", Friday, Notes(Jpy, (10_000, 1), (1_000, 3))), new("食費", Friday.PlusWeeks(1), Notes(Jpy, (5_000, 2)))],
            Notes(Jpy, (10_000, 1), (5_000, 2), (1_000, 3)), [], [], []),
        "empty" => new(
            Friday, Usd, NumberStyle.CommaPoint, [], [new("Groceries", Friday, [])], [], [], [],
            [new("Groceries", Money.FromMinorUnits(350, Usd))]),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };
}
