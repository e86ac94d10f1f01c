using Payday.Statements.Lines;

namespace Payday.Statements.Habits;

/// <summary>How much a series must show before it is proposed, by what the bank says of its lines.</summary>
/// <remarks>
/// Habits look periodic: on real lines the spread of gaps alone had a precision of 0.28. So cash stays out, purchases by card must
/// come round exactly, and amounts that vary need the bank's word or many hits. Measured on the PKDD'99 bank data: equal amounts,
/// 3 hits and 75% of the days expected gave a precision of at least 0.77, 4 hits and 90% at least 0.97.
/// </remarks>
internal static class SeriesTrust
{
    private const int MostSpread = 35;

    /// <summary>Whether a fit is proposed.</summary>
    public static bool Accepts(RhythmFit fit, SeriesAmounts amounts, IReadOnlyList<StatementLine> hits)
    {
        bool isCash = Most(hits, line => line.Kind is LineKind.Cash or LineKind.Cheque);
        bool isOrdered = Most(hits, line => line.Mandate.Length > 0 || line.Kind is LineKind.DirectDebit or LineKind.StandingOrder or LineKind.Pay);
        bool isShop = Most(hits, line => line.Kind == LineKind.Card);
        bool isYearly = fit.Rhythm is { Unit: RhythmUnit.Months, Every: 12 };
        bool isOften = fit.Rhythm.Unit == RhythmUnit.Weeks && fit.Rhythm.Every < 4;
        return !isCash && (isOrdered ? fit is { Cover: >= 75, Purity: >= 80 } && fit.Hits.Count >= (isYearly ? 2 : 3)
            : isShop ? amounts.AreFixed && ((Shows(fit, 5, 90, 90) && IsExact(fit, isOften ? 10 : 100)) || (!isOften && Shows(fit, 4, 100, 100) && IsExact(fit, 50)))
            : amounts.AreFixed && isOften ? Shows(fit, 6, 90, 90) && IsExact(fit, 30)
            : amounts.AreFixed ? (Shows(fit, 3, 100, 100) && IsExact(fit, 150)) || Shows(fit, 5, 80, 80)
            : amounts.Spread <= MostSpread && (!isOften || hits[0].Amount.IsPositive) && Shows(fit, isOften ? 6 : 5, 90, 90));
    }

    private static bool Shows(RhythmFit fit, int hits, int cover, int purity) => fit.Hits.Count >= hits && fit.Cover >= cover && fit.Purity >= purity;

    // Days off in hundredths of a day a line.
    private static bool IsExact(RhythmFit fit, int most) => 100 * fit.Off <= most * fit.Hits.Count;

    private static bool Most(IReadOnlyList<StatementLine> lines, Func<StatementLine, bool> isSo) => lines.Count(isSo) * 2 > lines.Count;
}
