using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Pages;

/// <summary>The scale of a chart: round amounts from zero or below it to the largest or above it.</summary>
/// <param name="Lowest">Zero, or a round amount below it.</param>
/// <param name="Highest">A round amount above zero.</param>
/// <param name="Step">From line to line.</param>
internal sealed record Scale(Money Lowest, Money Highest, Money Step)
{


    /// <summary>The amounts of its lines, the lowest first.</summary>
    public ImmutableArray<Money> Lines
    {
        get
        {
            var lines = ImmutableArray.CreateBuilder<Money>();
            for (Int128 at = Lowest.MinorUnits; at <= Highest.MinorUnits; at += Step.MinorUnits)
            {
                lines.Add(Money.FromMinorUnits((long)at, Step.Currency));
            }

            return lines.ToImmutable();
        }
    }

    /// <summary>The scale of some amounts: steps of 1, 2 or 5 times a power of ten, whole units where the amounts are (common practice, no source).</summary>
    /// <param name="amounts">At least one.</param>
    /// <param name="mostSteps">How many steps it has at most.</param>
    public static Scale Of(IReadOnlyCollection<Money> amounts, int mostSteps = 5)
    {
        ArgumentOutOfRangeException.ThrowIfZero(amounts.Count);
        Currency currency = amounts.First().Currency;
        Int128 top = Int128.Max(amounts.Max().MinorUnits, 0);
        Int128 bottom = Int128.Min(amounts.Min().MinorUnits, 0);
        Int128 step = 1;
        int turn = 0;
        while (Down(bottom, step) < -mostSteps * step || Up(top, step) - Down(bottom, step) > mostSteps * step)
        {
            step = turn++ % 3 == 1 ? step / 2 * 5 : step * 2;
        }

        Int128 most = (Int128)long.MaxValue;
        long Bounded(Int128 value) => (long)Int128.Clamp(value, -most, most);
        return new Scale(
            Money.FromMinorUnits(Bounded(Down(bottom, step)), currency),
            Money.FromMinorUnits(Bounded(Int128.Max(Up(top, step), step)), currency),
            Money.FromMinorUnits(Bounded(step), currency));
    }

    /// <summary>How far up an amount stands, from 0 to 1.</summary>
    public double Share(Money amount) =>
        Math.Clamp((double)((Int128)amount.MinorUnits - Lowest.MinorUnits) / (double)((Int128)Highest.MinorUnits - Lowest.MinorUnits), 0, 1);

    private static Int128 Up(Int128 value, Int128 step) => (value + step - 1) / step * step;

    private static Int128 Down(Int128 value, Int128 step) => -Up(-value, step);
}
