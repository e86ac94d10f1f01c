using Payday.Core.Amounts;

namespace Payday.Core.Tests.Amounts;

/// <summary>Short ways to write amounts in tests.</summary>
internal static class Amount
{
    public static Currency Dollars { get; } = Currency.FromCode("USD");

    public static Money Usd(decimal units) => Of(units, "USD");

    public static Money Cents(long cents) => Money.FromMinorUnits(cents, Dollars);

    public static Money Of(decimal units, string code)
    {
        Currency currency = Currency.FromCode(code);
        return Money.FromMinorUnits(decimal.ToInt64(units * currency.MinorPerUnit), currency);
    }
}
