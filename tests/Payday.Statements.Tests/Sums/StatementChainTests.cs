using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Sums;

public sealed class StatementChainTests
{
    [Fact]
    public void Of_YearInAnyOrder_Follows() => Gen.Shuffle(Year()).Sample(shuffled =>
        Assert.All(StatementChain.Of(shuffled), step => Assert.Equal(ChainLink.Follows, step.Link)));

    [Fact]
    public void Of_OneMissingInTheMiddle_IsNamedByNumberDayAndAmount()
    {
        Statement[] year = Year();

        StatementStep missing = Assert.Single(StatementChain.Of([.. year[..5], .. year[6..]]), step => step.Link != ChainLink.Follows);

        Assert.Equal((ChainLink.Missing, 5L, 7L), (missing.Link, missing.Before.Number, missing.After.Number));
        Assert.Equal((1L, new LocalDate(2026, 6, 1)), (missing.MissingCount, missing.MissingFrom));
        Assert.Equal(year[5].Closing!.Amount - year[5].Opening!.Amount, missing.Missing);
    }

    [Fact]
    public void Of_TwoAccounts_AreChainsOfTheirOwn()
    {
        Statement[] year = Year();

        Assert.Empty(StatementChain.Of([year[0], year[5] with { Account = "OTHER" }]));
    }

    [Fact]
    public void Of_PeriodsOverlap_AreSaidToOverlap()
    {
        Statement[] year = Year();
        Statement late = year[1] with { From = new LocalDate(2026, 1, 20), Opening = null, Closing = null };

        Assert.Equal(ChainLink.Overlaps, Assert.Single(StatementChain.Of([year[0], late])).Link);
    }

    [Fact]
    public void Of_NoOpeningBalance_ClosingMinusLinesStandsInForIt()
    {
        Statement[] year = [.. Year().Select(statement => statement with { Opening = null })];

        Assert.Equal([ChainLink.Follows, ChainLink.Unknown], StatementChain.Of([year[0], year[1], year[3] with { Number = null }]).Select(step => step.Link));
    }

    private static Statement[] Year() => [.. Enumerable.Range(1, 12).Select(month =>
    {
        var first = new LocalDate(2026, month, 1);
        var last = first.PlusMonths(1).PlusDays(-1);
        return new Statement(StatementFormat.Camt053, MadeStatements.Euro)
        {
            Account = "A1",
            Number = month,
            From = first,
            To = last,
            Opening = new Balance(Amount(1000 * month), first, 1),
            Closing = new Balance(Amount(1000 * (month + 1)), last, 1),
            Lines = [new StatementLine(first, Amount(1000))],
        };
    })];

    private static Money Amount(long minorUnits) => Money.FromMinorUnits(minorUnits, MadeStatements.Euro);
}
