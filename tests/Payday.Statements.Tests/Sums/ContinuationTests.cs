using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Sums;

public sealed class ContinuationTests
{
    [Theory]
    [InlineData(1000, 900, ContinuationKind.UnsureAreRepeats, 0)]
    [InlineData(1000, 850, ContinuationKind.UnsureAreNew, -50)]
    [InlineData(1000, 700, ContinuationKind.Breaks, -200)]
    public void Of_NewAndUnsureLines_IsWhatTheBalancesSay(long before, long closing, ContinuationKind kind, long missing)
    {
        Continuation found = Continuation.Of(Amount(before), [Repeat(-60, RepeatKind.New), Repeat(-40, RepeatKind.Booked), Repeat(-50, RepeatKind.Unsure), Repeat(-999, RepeatKind.Repeated)], Amount(closing));

        Assert.Equal((kind, Amount(missing)), (found.Kind, found.Missing));
    }

    [Fact]
    public void Of_UnsureLinesThatComeToNothing_CantSay() => Assert.Equal(
        ContinuationKind.Unknown,
        Continuation.Of(Amount(10), [Repeat(-50, RepeatKind.Unsure), Repeat(50, RepeatKind.Unsure)], Amount(10)).Kind);

    [Fact]
    public void Of_NoLines_AgreesWhereTheBalancesDo()
    {
        Assert.Equal(ContinuationKind.UnsureAreRepeats, Continuation.Of(Amount(10), [], Amount(10)).Kind);
        Assert.Equal(ContinuationKind.Breaks, Continuation.Of(Amount(10), [], Amount(11)).Kind);
    }

    private static LineRepeat Repeat(long amount, RepeatKind kind) => new(new StatementLine(new LocalDate(2026, 3, 5), Amount(amount)), kind, null);

    private static Money Amount(long minorUnits) => Money.FromMinorUnits(minorUnits, MadeStatements.Euro);
}
