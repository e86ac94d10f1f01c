using Payday.Statements.Texts;

namespace Payday.Statements.Faults;

/// <summary>The fault of an amount that couldn't be read.</summary>
internal static class AmountFaults
{
    /// <summary>The kind of fault.</summary>
    public static FaultKind KindOf(AmountState state) => state switch
    {
        AmountState.Missing => FaultKind.AmountMissing,
        AmountState.TooManyDecimals => FaultKind.TooManyDecimals,
        _ => FaultKind.NotAnAmount,
    };
}
