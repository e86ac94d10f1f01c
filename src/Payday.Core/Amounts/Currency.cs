using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace Payday.Core.Amounts;

/// <summary>
/// A currency of ISO 4217: its three-letter code and how many decimals its minor unit has.
/// </summary>
/// <remarks>
/// Minor units follow the ISO 4217 list published 2024-06-25. A minor unit is not the smallest
/// cash piece: the forint has two decimals and no coin below 5. <c>default</c> is
/// <c>XXX</c>, the standard's own code for "no currency", with no decimals.
/// </remarks>
public readonly struct Currency : IEquatable<Currency>
{
    private static readonly (string Code, byte Decimals)[] Known =
    [
        ("XXX", 0),
        ("JPY", 0), ("KRW", 0), ("CLP", 0), ("VND", 0), ("ISK", 0), ("XAF", 0),
        ("USD", 2), ("EUR", 2), ("GBP", 2), ("CAD", 2), ("AUD", 2), ("NZD", 2), ("CHF", 2),
        ("SEK", 2), ("NOK", 2), ("DKK", 2), ("INR", 2), ("MXN", 2), ("BRL", 2), ("ZAR", 2),
        ("HUF", 2), ("CZK", 2), ("PLN", 2),
        ("BHD", 3), ("KWD", 3), ("TND", 3), ("JOD", 3),
        ("CLF", 4),
    ];

    private static readonly FrozenDictionary<string, byte> Numbers = Known.Index().Skip(1)
        .ToFrozenDictionary(known => known.Item.Code, known => (byte)known.Index, StringComparer.Ordinal);

    // Its place among the known ones: a byte, as there is one in each amount, and a book of years has a million amounts.
    private readonly byte number;

    private Currency(byte number) => this.number = number;

    /// <summary>The code of ISO 4217, three upper-case letters.</summary>
    public string Code => Known[number].Code;

    /// <summary>The decimals of the minor unit, 0 to 4.</summary>
    public int Decimals => Known[number].Decimals;

    /// <summary>How many minor units make one whole unit: 1, 10, 100, 1,000 or 10,000.</summary>
    public long MinorPerUnit => Decimals switch { 0 => 1, 1 => 10, 2 => 100, 3 => 1_000, _ => 10_000 };

    /// <summary>The codes that <see cref="FromCode"/> knows, in alphabetical order.</summary>
    public static IReadOnlyList<string> KnownCodes { get; } =
        [.. Numbers.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The currency of a code.</summary>
    /// <param name="code">Three upper-case letters.</param>
    /// <exception cref="ArgumentException">The code is not among <see cref="KnownCodes"/>.</exception>
    public static Currency FromCode(string code) =>
        TryFromCode(code, out Currency currency)
            ? currency
            : throw new ArgumentException($"'{code}' is not a currency code known here.", nameof(code));

    /// <summary>The currency of a code, if it is known here.</summary>
    public static bool TryFromCode([NotNullWhen(true)] string? code, out Currency currency)
    {
        if (code is not null && Numbers.TryGetValue(code, out byte number))
        {
            currency = new Currency(number);
            return true;
        }

        currency = default;
        return false;
    }

    /// <inheritdoc/>
    public bool Equals(Currency other) => number == other.number;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Currency other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => number;

    /// <summary>The code.</summary>
    public override string ToString() => Code;

    /// <summary>Whether both are the same currency.</summary>
    public static bool operator ==(Currency left, Currency right) => left.Equals(right);

    /// <summary>Whether they are different currencies.</summary>
    public static bool operator !=(Currency left, Currency right) => !left.Equals(right);
}
