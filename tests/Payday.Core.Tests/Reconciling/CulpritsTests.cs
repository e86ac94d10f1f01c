using System.Collections.Immutable;
using NodaTime;
using Payday.Core.BankLines;
using Payday.Core.Ledgers;
using Payday.Core.Reconciling;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Reconciling;

/// <summary>Where to look for a difference (design, rule 14; common practice, no source), on lines that are made up.</summary>
public class CulpritsTests
{
    [Fact]
    public void Of_NoDifference_AreNone() => Assert.Empty(Culprits.Of([Line(1, -5)], [1], Usd(0)));

    // Two that the bank may not show, with different ones paid: the later is the likelier.
    [Fact]
    public void Of_TwoLinesThatMayNotBeThere_NamesTheLaterFirst()
    {
        AccountLine[] lines = [Line(1, -5, "a"), Line(2, -5, "b"), Line(3, -7, "c")];
        Assert.Equal([new Culprit.NotThere(lines[1]), new Culprit.NotThere(lines[0])], Culprits.Of([.. lines], [1, 2, 3], Usd(5)));
    }

    // A person looks at three at most; beyond these many lines chance alone makes up any amount.
    [Theory]
    [InlineData(2, 400, true)]
    [InlineData(2, 401, false)]
    [InlineData(3, 60, true)]
    [InlineData(3, 61, false)]
    public void Of_LinesTogether_AreSoughtAmongSoManyOnly(int together, int count, bool named)
    {
        // Powers of two apart, the others far away: no other pair or triple makes it up.
        ImmutableArray<AccountLine> lines = [.. Enumerable.Range(1, count).Select(i => Line(i, i <= together ? -(1 << i) : -100_000 - i))];
        Culprit culprit = Assert.Single(Culprits.Of(lines, [], Usd(-(1 << (together + 1)) + 2)));

        Assert.Equal(named ? together : null, (culprit as Culprit.Together)?.Lines.Length);
        Assert.Equal(!named, culprit is Culprit.NoneTicked);
    }

    private static AccountLine Line(long number, decimal amount, string who = "shop") => new(
        number, new LocalDate(2026, 3, 6), Usd(amount), AccountLineKind.Payment, LedgerEnd.FromKey($"outside/spending:{who}"), who, null, null, [number]);
}
