namespace Payday.Statements.Texts;

/// <summary>How reading an amount went.</summary>
internal enum AmountState
{
    Missing,
    Read,
    NotAnAmount,
    TooManyDecimals,
}
