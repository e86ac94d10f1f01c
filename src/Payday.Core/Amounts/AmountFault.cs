using Payday.Core.Faults;

namespace Payday.Core.Amounts;

/// <summary>Why a typed text is no amount, or no sum of amounts.</summary>
public abstract record AmountFault : Fault
{
    /// <summary>Nothing was typed.</summary>
    public sealed record Missing : AmountFault;

    /// <summary>It is longer than any amount needs.</summary>
    public sealed record TooLong : AmountFault;

    /// <summary>It holds control characters, or others that could turn a line of the screen round.</summary>
    public sealed record ControlCharacters : AmountFault;

    /// <summary>A sign stands alone.</summary>
    public sealed record SignAlone : AmountFault;

    /// <summary>A sum has a sign with no amount on one side of it.</summary>
    public sealed record SumUnfinished : AmountFault;

    /// <summary>It can't be read as an amount.</summary>
    /// <param name="Text">What was typed, at most 200 characters and none of them a control character.</param>
    /// <param name="Currency">The currency that was asked for.</param>
    /// <param name="Style">How it was expected to be written.</param>
    public sealed record NotAnAmount(string Text, Currency Currency, NumberStyle Style) : AmountFault;

    /// <summary>It has more decimals than the currency.</summary>
    /// <param name="Currency">The currency that was asked for.</param>
    /// <param name="Style">How it was expected to be written.</param>
    public sealed record TooManyDecimals(Currency Currency, NumberStyle Style) : AmountFault;

    /// <summary>It is beyond 64 bits of minor units.</summary>
    public sealed record TooLarge : AmountFault;

    /// <summary>Each of its amounts fits, but not all of them together.</summary>
    public sealed record SumTooLarge : AmountFault;
}
