namespace Payday.Statements.Texts;

/// <summary>What became of reading an amount.</summary>
/// <param name="State">How it went.</param>
/// <param name="MinorUnits">The amount while <see cref="AmountState.Read"/>, else zero.</param>
internal readonly record struct AmountReading(AmountState State, long MinorUnits)
{
    /// <summary>Nothing stands there.</summary>
    public static AmountReading Missing => new(AmountState.Missing, 0);

    /// <summary>No amount.</summary>
    public static AmountReading Refused => new(AmountState.NotAnAmount, 0);

    /// <summary>More decimals than the currency has.</summary>
    public static AmountReading Precise => new(AmountState.TooManyDecimals, 0);

    /// <summary>Whether it was read.</summary>
    public bool Ok => State == AmountState.Read;

    /// <summary>An amount.</summary>
    public static AmountReading Of(long minorUnits) => new(AmountState.Read, minorUnits);
}
