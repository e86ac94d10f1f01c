using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Pots;

namespace Payday.Core.Outlooks;

/// <summary>A payday to come, as its routine closes with all proposals taken. Worked out by <see cref="Outlook"/>.</summary>
/// <param name="Period">The pay period that it covers.</param>
/// <param name="Income">What comes in, and what was still without a purpose.</param>
/// <param name="FromBuffer">What the buffer gives.</param>
/// <param name="Bills">What is set aside for bills.</param>
/// <param name="Minimums">What goes to debt minimums.</param>
/// <param name="Pots">What goes in pots.</param>
/// <param name="Surplus">What is left once all of these have theirs, and is placed.</param>
/// <param name="Cut">What proposals were cut by, because it doesn't fit.</param>
/// <param name="AccountAfter">What the account has at the end of the period, before the next pay.</param>
/// <param name="CashAfter">What is there in cash then.</param>
public sealed record OutlookPayday(
    PayPeriod Period,
    Money Income,
    Money FromBuffer,
    Money Bills,
    Money Minimums,
    Money Pots,
    Money Surplus,
    Money Cut,
    Money AccountAfter,
    Money CashAfter)
{
    /// <summary>The payday.</summary>
    public LocalDate Date => Period.First;

    /// <summary>What of the income pays off an overdraft.</summary>
    public Money ToOverdraft { get; init; } = Money.Zero(Income.Currency);

    /// <summary>What is left of the overdraft; zero where there is none.</summary>
    public Money Overdrawn { get; init; } = Money.Zero(Income.Currency);

    /// <summary>What can't be paid in full; where there is any the payday can't be closed.</summary>
    public ImmutableArray<Unpayable> Unpayable { get; init; } = [];

    /// <summary>Why it can't be closed; empty where it can.</summary>
    public ImmutableArray<Fault> Faults { get; init; } = [];

    /// <summary>
    /// How much more there is than is asked for: the surplus; below zero where something was cut, where the buffer had to
    /// help, or where something can't be paid.
    /// </summary>
    public Money Spare => Unpayable.Aggregate(Surplus.ClampToZero() - Cut - FromBuffer, (sum, one) => sum - one.Short);

    /// <summary>Whether less is there than is asked for.</summary>
    public bool IsTight => Spare.IsNegative;
}
