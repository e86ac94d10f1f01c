using System.Collections.Frozen;
using Payday.Core.Amounts;

namespace Payday.Core.Calendar;

/// <summary>How dates in figures are read where a currency is used.</summary>
/// <remarks>
/// After the short date patterns of the Unicode CLDR for the places that use a currency, from memory. Where these begin
/// with the year, or where two orders are in use side by side, nothing is settled: a date read wrongly in silence is
/// worse than a question. That is so for Canada (CAD), Hungary (HUF), Japan (JPY), Sweden (SEK) and South Africa (ZAR).
/// </remarks>
public static class DateOrders
{
    private static readonly FrozenDictionary<string, DateOrder> Known = new Dictionary<string, DateOrder>(StringComparer.Ordinal)
    {
        ["USD"] = DateOrder.MonthFirst,
        ["AUD"] = DateOrder.DayFirst,
        ["BRL"] = DateOrder.DayFirst,
        ["CHF"] = DateOrder.DayFirst,
        ["CZK"] = DateOrder.DayFirst,
        ["DKK"] = DateOrder.DayFirst,
        ["EUR"] = DateOrder.DayFirst,
        ["GBP"] = DateOrder.DayFirst,
        ["INR"] = DateOrder.DayFirst,
        ["MXN"] = DateOrder.DayFirst,
        ["NOK"] = DateOrder.DayFirst,
        ["NZD"] = DateOrder.DayFirst,
        ["PLN"] = DateOrder.DayFirst,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The order where a currency is used; unknown where that settles nothing.</summary>
    public static DateOrder Of(Currency currency) => Known.GetValueOrDefault(currency.Code, DateOrder.Unknown);
}
