using System.Collections.Frozen;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>The notes and coins to start a household from. A person can change all of them.</summary>
/// <remarks>
/// They are those in everyday use, so a note that exists but that a teller rarely has (2 USD, 500 EUR) is
/// left out. What is from a published list is said beside it; the rest is from memory.
/// </remarks>
public static class CashDefaults
{
    // In whole units, largest first.
    private static readonly FrozenDictionary<string, (decimal[] Notes, decimal[] Coins)> Known =
        new Dictionary<string, (decimal[] Notes, decimal[] Coins)>(StringComparer.Ordinal)
        {
            // From memory.
            ["USD"] = ([100, 50, 20, 10, 5, 1], [0.25m, 0.10m, 0.05m, 0.01m]),

            // Notes: Bank of Finland (500 is legal tender but no longer issued, from memory). Coins: from memory.
            ["EUR"] = ([200, 100, 50, 20, 10, 5], [2, 1, 0.50m, 0.20m, 0.10m, 0.05m, 0.02m, 0.01m]),

            // Notes: a secondary page on the Bank of England's series. Coins: from memory.
            ["GBP"] = ([50, 20, 10, 5], [2, 1, 0.50m, 0.20m, 0.10m, 0.05m, 0.02m, 0.01m]),

            // A secondary page on the Bank of Canada and the Mint; no cent since 2013 (Budget 2012).
            ["CAD"] = ([100, 50, 20, 10, 5], [2, 1, 0.25m, 0.10m, 0.05m]),

            // Reserve Bank of Australia and Royal Australian Mint.
            ["AUD"] = ([100, 50, 20, 10, 5], [2, 1, 0.50m, 0.20m, 0.10m, 0.05m]),

            // Notes: from memory. Coins: Reserve Bank of New Zealand, 2006.
            ["NZD"] = ([100, 50, 20, 10, 5], [2, 1, 0.50m, 0.20m, 0.10m]),

            // Notes: a secondary page on the Swiss National Bank's series. Coins: from memory.
            ["CHF"] = ([1000, 200, 100, 50, 20, 10], [5, 2, 1, 0.50m, 0.20m, 0.10m, 0.05m]),

            // Notes: a secondary page on the Riksbank's series. Coins: from memory.
            ["SEK"] = ([1000, 500, 200, 100, 50, 20], [10, 5, 2, 1]),

            // From memory.
            ["NOK"] = ([1000, 500, 200, 100, 50], [20, 10, 5, 1]),

            // From memory; the 1,000 note stopped being valid in 2025.
            ["DKK"] = ([500, 200, 100, 50], [20, 10, 5, 2, 1, 0.50m]),

            // Notes: a secondary page on the Bank of Japan's series. Coins: from memory.
            ["JPY"] = ([10000, 5000, 2000, 1000], [500, 100, 50, 10, 5, 1]),

            // Notes: Reserve Bank of India. Coins: from memory.
            ["INR"] = ([500, 200, 100, 50, 20, 10], [20, 10, 5, 2, 1]),

            // Notes: a secondary page on the Bank of Mexico's series. Coins: from memory.
            ["MXN"] = ([1000, 500, 200, 100, 50, 20], [10, 5, 2, 1, 0.50m]),

            // From memory.
            ["ZAR"] = ([200, 100, 50, 20, 10], [5, 2, 1, 0.50m, 0.20m, 0.10m]),

            // From memory.
            ["PLN"] = ([500, 200, 100, 50, 20, 10], [5, 2, 1, 0.50m, 0.20m, 0.10m, 0.05m, 0.02m, 0.01m]),

            // From memory.
            ["BRL"] = ([200, 100, 50, 20, 10, 5, 2], [1, 0.50m, 0.25m, 0.10m, 0.05m]),

            // From memory.
            ["HUF"] = ([20000, 10000, 5000, 2000, 1000, 500], [200, 100, 50, 20, 10, 5]),

            // From memory.
            ["CZK"] = ([5000, 2000, 1000, 500, 200, 100], [50, 20, 10, 5, 2, 1]),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The codes of the currencies that have defaults, in alphabetical order.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. Known.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The notes and coins of a currency.</summary>
    /// <exception cref="ArgumentException">
    /// The currency is not among <see cref="Codes"/>: its notes have to be typed in.
    /// </exception>
    public static CashPieces For(Currency currency)
    {
        if (!Known.TryGetValue(currency.Code, out (decimal[] Notes, decimal[] Coins) pieces))
        {
            throw new ArgumentException($"There are no default notes for {currency.Code}.", nameof(currency));
        }

        return new([.. pieces.Notes.Select(Piece)], [.. pieces.Coins.Select(Piece)]);

        Money Piece(decimal value) => Money.FromUnits(1, currency).Times(value);
    }
}
