using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Core.Histories;

/// <summary>What came in and went out over a stretch of time.</summary>
/// <param name="CameIn">Into the account and cash: pay, what was entered as come in, and what was borrowed; less what of it went back.</param>
/// <param name="WentOut">Out of the account and cash: bills, payments on debts, what was spent or is missing, and what was entered as gone; less what of it came back.</param>
/// <param name="Opened">What the account and cash began with, where the household began in that time; below zero for an overdraft.</param>
/// <param name="Missing">What of that was missing at counts, less what counts found; below zero where more was found. It is part of its pot in <paramref name="Where"/>.</param>
/// <param name="Where">
/// Where it went: for each pot (as <see cref="LedgerEnd.SpentFrom"/>), bill, debt and kind of entry. A purchase with a card that is a debt counts for
/// its pot on its day and not again when the card is paid, so these add up to <see cref="WentOut"/> only where no such card is.
/// None is zero; one is below zero where more came back than went.
/// </param>
public sealed record Flow(Money CameIn, Money WentOut, Money Opened, Money Missing, ImmutableDictionary<LedgerEnd, Money> Where)
{
    /// <summary>No movement at all.</summary>
    public static Flow None(Currency currency)
    {
        Money nothing = Money.Zero(currency);
        return new Flow(nothing, nothing, nothing, nothing, ImmutableDictionary<LedgerEnd, Money>.Empty);
    }

    /// <summary>What went somewhere; nothing where it didn't.</summary>
    public Money To(LedgerEnd end) => Where.GetValueOrDefault(end, Money.Zero(CameIn.Currency));

    /// <summary>Both together.</summary>
    public static Flow operator +(Flow left, Flow right)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        var where = left.Where.ToBuilder();
        foreach ((LedgerEnd end, Money amount) in right.Where)
        {
            Money sum = left.To(end) + amount;
            if (sum.IsZero)
            {
                where.Remove(end);
            }
            else
            {
                where[end] = sum;
            }
        }

        return new Flow(left.CameIn + right.CameIn, left.WentOut + right.WentOut, left.Opened + right.Opened, left.Missing + right.Missing, where.ToImmutable());
    }

    /// <summary>Both together.</summary>
    public static Flow Add(Flow left, Flow right) => left + right;
}
