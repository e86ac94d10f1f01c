using System.Collections.Frozen;
using Payday.Core.Amounts;

namespace Payday.Core.Households;

/// <summary>What is usual in a region, to begin a household with. A person can change it.</summary>
/// <remarks>
/// Currencies after ISO 4217, marks in numbers after the Unicode CLDR's main locale of each region, from memory. Notes, bank
/// holidays, the order of dates and paper go by the currency.
/// </remarks>
/// <param name="Currency">The currency.</param>
/// <param name="Numbers">How numbers are written.</param>
public sealed record RegionDefaults(Currency Currency, NumberStyle Numbers)
{
    private static readonly FrozenDictionary<string, (string Code, NumberStyle Numbers)> Known = new Dictionary<string, (string, NumberStyle)>(StringComparer.Ordinal)
    {
        ["US"] = ("USD", NumberStyle.CommaPoint),
        ["CA"] = ("CAD", NumberStyle.CommaPoint),
        ["AU"] = ("AUD", NumberStyle.CommaPoint),
        ["NZ"] = ("NZD", NumberStyle.CommaPoint),
        ["GB"] = ("GBP", NumberStyle.CommaPoint),
        ["IE"] = ("EUR", NumberStyle.CommaPoint),
        ["MT"] = ("EUR", NumberStyle.CommaPoint),
        ["DE"] = ("EUR", NumberStyle.PointComma),
        ["AT"] = ("EUR", NumberStyle.PointComma),
        ["NL"] = ("EUR", NumberStyle.PointComma),
        ["BE"] = ("EUR", NumberStyle.PointComma),
        ["IT"] = ("EUR", NumberStyle.PointComma),
        ["ES"] = ("EUR", NumberStyle.PointComma),
        ["GR"] = ("EUR", NumberStyle.PointComma),
        ["PT"] = ("EUR", NumberStyle.SpaceComma),
        ["FR"] = ("EUR", NumberStyle.SpaceComma),
        ["FI"] = ("EUR", NumberStyle.SpaceComma),
        ["CH"] = ("CHF", NumberStyle.ApostrophePoint),
        ["SE"] = ("SEK", NumberStyle.SpaceComma),
        ["NO"] = ("NOK", NumberStyle.SpaceComma),
        ["DK"] = ("DKK", NumberStyle.PointComma),
        ["PL"] = ("PLN", NumberStyle.SpaceComma),
        ["BR"] = ("BRL", NumberStyle.PointComma),
        ["JP"] = ("JPY", NumberStyle.CommaPoint),
        ["IN"] = ("INR", NumberStyle.CommaPoint),
        ["MX"] = ("MXN", NumberStyle.CommaPoint),
        ["ZA"] = ("ZAR", NumberStyle.SpaceComma),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>What is usual where a locale is used.</summary>
    /// <param name="locale">Its POSIX name, such as <c>en_US.UTF-8</c>; null or one without a region, such as <c>C</c>, says nothing.</param>
    /// <returns>What is usual; null where the region isn't known.</returns>
    public static RegionDefaults? OfLocale(string? locale)
    {
        int at = locale?.IndexOf('_', StringComparison.Ordinal) ?? -1;
        string region = at < 0 ? "" : string.Concat(locale![(at + 1)..].TakeWhile(char.IsAsciiLetterUpper));
        return Known.TryGetValue(region, out (string Code, NumberStyle Numbers) usual)
            ? new(Currency.FromCode(usual.Code), usual.Numbers)
            : null;
    }
}
