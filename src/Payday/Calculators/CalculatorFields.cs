using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Calculators;

/// <summary>Fields that the calculators' inputs share.</summary>
internal static class CalculatorFields
{
    /// <summary>The most characters of a name.</summary>
    public const int LongestName = 60;

    /// <summary>The currency of all amounts.</summary>
    public static Currency CurrencyOf(JsonFields fields) =>
        Currency.TryFromCode(fields.Required("currency").Word(Currency.KnownCodes), out Currency currency)
            ? currency
            : Currency.FromCode("USD");
}
