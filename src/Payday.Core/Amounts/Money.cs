namespace Payday.Core.Amounts;

/// <summary>
/// An exact amount of money: whole minor units of one currency.
/// </summary>
/// <remarks>
/// The range is that of a 64-bit count of minor units. Every operation is exact and
/// overflow-checked, and two currencies never mix. Amounts of one currency are ordered by value.
/// <c>default</c> is zero of <c>XXX</c>, no currency, which mixes with no other either.
/// </remarks>
public readonly partial struct Money : IEquatable<Money>, IComparable<Money>
{
    private Money(long minorUnits, Currency currency)
    {
        MinorUnits = minorUnits;
        Currency = currency;
    }

    /// <summary>The amount in minor units, e.g. cents.</summary>
    public long MinorUnits { get; }

    /// <summary>The currency.</summary>
    public Currency Currency { get; }

    /// <summary>Whether the amount is zero.</summary>
    public bool IsZero => MinorUnits == 0;

    /// <summary>Whether the amount is above zero.</summary>
    public bool IsPositive => MinorUnits > 0;

    /// <summary>Whether the amount is below zero.</summary>
    public bool IsNegative => MinorUnits < 0;

    /// <summary>An amount from whole minor units.</summary>
    public static Money FromMinorUnits(long minorUnits, Currency currency) => new(minorUnits, currency);

    /// <summary>An amount from whole units, e.g. dollars.</summary>
    /// <exception cref="OverflowException">The minor units don't fit 64 bits.</exception>
    public static Money FromUnits(long units, Currency currency) =>
        new(checked(units * currency.MinorPerUnit), currency);

    /// <summary>Nothing, in a currency.</summary>
    public static Money Zero(Currency currency) => new(0, currency);

    /// <summary>The sum of the amounts, zero of <paramref name="currency"/> for none.</summary>
    /// <exception cref="InvalidOperationException">An amount is of another currency.</exception>
    /// <exception cref="OverflowException">The sum doesn't fit 64 bits.</exception>
    public static Money Sum(IEnumerable<Money> amounts, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(amounts);
        Money sum = Zero(currency);
        foreach (Money amount in amounts)
        {
            sum += amount;
        }

        return sum;
    }

    /// <summary>The smaller of two amounts of one currency.</summary>
    public static Money Min(Money left, Money right) => left <= right ? left : right;

    /// <summary>The larger of two amounts of one currency.</summary>
    public static Money Max(Money left, Money right) => left >= right ? left : right;

    /// <summary>Adds.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    /// <exception cref="OverflowException">The result doesn't fit 64 bits.</exception>
    public static Money operator +(Money left, Money right) =>
        new(checked(left.MinorUnits + right.In(left.Currency)), left.Currency);

    /// <summary>Subtracts.</summary>
    /// <inheritdoc cref="op_Addition"/>
    public static Money operator -(Money left, Money right) =>
        new(checked(left.MinorUnits - right.In(left.Currency)), left.Currency);

    /// <summary>The opposite amount.</summary>
    /// <exception cref="OverflowException">The amount is the smallest of the range.</exception>
    public static Money operator -(Money amount) => new(checked(-amount.MinorUnits), amount.Currency);

    /// <summary>A whole multiple.</summary>
    /// <exception cref="OverflowException">The result doesn't fit 64 bits.</exception>
    public static Money operator *(Money amount, long factor) =>
        new(checked(amount.MinorUnits * factor), amount.Currency);

    /// <summary>Whether both are the same amount of the same currency.</summary>
    public static bool operator ==(Money left, Money right) => left.Equals(right);

    /// <summary>Whether they differ in amount or currency.</summary>
    public static bool operator !=(Money left, Money right) => !left.Equals(right);

    /// <summary>Less.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static bool operator <(Money left, Money right) => left.CompareTo(right) < 0;

    /// <summary>More.</summary>
    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >(Money left, Money right) => left.CompareTo(right) > 0;

    /// <summary>Less or the same.</summary>
    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator <=(Money left, Money right) => left.CompareTo(right) <= 0;

    /// <summary>More or the same.</summary>
    /// <inheritdoc cref="op_LessThan"/>
    public static bool operator >=(Money left, Money right) => left.CompareTo(right) >= 0;

    /// <summary>The amount in whole units, e.g. 45.50 for 4,550 cents.</summary>
    public decimal ToDecimal() => (decimal)MinorUnits / Currency.MinorPerUnit;

    /// <summary>This amount as zero or more: negative amounts become zero.</summary>
    public Money ClampToZero() => IsNegative ? Zero(Currency) : this;

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public int CompareTo(Money other) => MinorUnits.CompareTo(other.In(Currency));

    /// <inheritdoc/>
    public bool Equals(Money other) => MinorUnits == other.MinorUnits && Currency == other.Currency;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Money other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(MinorUnits, Currency);

    private long In(Currency currency) =>
        Currency == currency
            ? MinorUnits
            : throw new InvalidOperationException($"An amount in {Currency} can't be used with one in {currency}.");
}
