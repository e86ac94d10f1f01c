namespace Payday.Core.Amounts;

public readonly partial struct Money
{
    /// <summary>The largest whole multiple of <paramref name="unit"/> that is not above this amount.</summary>
    /// <param name="unit">More than zero, same currency.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not above zero.</exception>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    /// <exception cref="OverflowException">The result doesn't fit 64 bits.</exception>
    public Money FloorTo(Money unit)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(unit.In(Currency), nameof(unit));
        long rest = MinorUnits % unit.MinorUnits;
        return new(checked(MinorUnits - (rest < 0 ? rest + unit.MinorUnits : rest)), Currency);
    }

    /// <summary>The smallest whole multiple of <paramref name="unit"/> that is not below this amount.</summary>
    /// <inheritdoc cref="FloorTo"/>
    public Money CeilingTo(Money unit)
    {
        Money floor = FloorTo(unit);
        return floor == this ? this : floor + unit;
    }

    /// <summary>
    /// The nearest whole multiple of <paramref name="unit"/>, as a total is rounded where the smallest coins
    /// are gone. Halves go up; a negative amount is rounded as its opposite is.
    /// </summary>
    /// <remarks>
    /// Source of the rule: the Swedish act on rounding (Lag 1970:1029, section 2), where 10.50 becomes 11.
    /// Canada and Australia round to five cents, which has no halves in cents.
    /// </remarks>
    /// <inheritdoc cref="FloorTo"/>
    public Money RoundTo(Money unit)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(unit.In(Currency), nameof(unit));

        // Through Int128 because the smallest long has no opposite.
        (Int128 units, Int128 rest) = Int128.DivRem(Int128.Abs(MinorUnits), unit.MinorUnits);
        Int128 size = (rest * 2 >= unit.MinorUnits ? units + 1 : units) * unit.MinorUnits;
        return new(checked((long)(MinorUnits < 0 ? -size : size)), Currency);
    }

    /// <summary>
    /// This amount times a rate over twelve, for one month, rounded half to even at the minor unit.
    /// </summary>
    /// <param name="yearlyRate">A fraction, e.g. 0.1999 for 19.99 % a year; zero or more.</param>
    /// <remarks>Source of the rule: the project's design, section 3. The lender's statement wins.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The rate is below zero.</exception>
    /// <exception cref="OverflowException">The result doesn't fit 64 bits.</exception>
    public Money MonthOfInterest(decimal yearlyRate)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(yearlyRate);
        return new(decimal.ToInt64(Math.Round(MinorUnits * yearlyRate / 12m, 0, MidpointRounding.ToEven)), Currency);
    }

    /// <summary>This amount times a fraction, rounded half to even at the minor unit.</summary>
    /// <exception cref="OverflowException">The result doesn't fit 64 bits.</exception>
    public Money Times(decimal fraction) =>
        new(decimal.ToInt64(Math.Round(MinorUnits * fraction, 0, MidpointRounding.ToEven)), Currency);
}
