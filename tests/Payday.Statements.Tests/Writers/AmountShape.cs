namespace Payday.Statements.Tests.Writers;

/// <summary>How a bank says which way an amount goes.</summary>
internal enum AmountShape
{
    Signed,
    MinusBehind,
    TwoColumns,
    Word,
    StrangeWord,
    Turned,
}
