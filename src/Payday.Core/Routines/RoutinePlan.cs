using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>A payday routine as it stands: all seven steps, from the book and the decisions so far.</summary>
/// <param name="Book">The book it was made from.</param>
/// <param name="Draft">The decisions.</param>
/// <param name="Payday">The payday.</param>
/// <param name="Period">The pay period that it covers.</param>
/// <param name="Income">Step 1.</param>
/// <param name="Bills">Step 2.</param>
/// <param name="Debts">Step 3.</param>
/// <param name="Pots">Step 4.</param>
/// <param name="Surplus">Step 5.</param>
/// <param name="Unpayable">What can't be paid in full, most important first; empty unless it doesn't fit.</param>
public sealed record RoutinePlan(
    Book Book,
    RoutineDraft Draft,
    ScheduledPayday Payday,
    PayPeriod Period,
    IncomeStep Income,
    BillsStep Bills,
    DebtsStep Debts,
    PotsStep Pots,
    SurplusStep Surplus,
    ImmutableArray<Unpayable> Unpayable)
{
    /// <summary>Step 6; step 7 is its paper. Worked out when it is first asked for: the other steps, home and the status don't, and it follows all notes of a life.</summary>
    public WithdrawalStep Withdrawal => field ??= InNotes();

    /// <summary>Works step 6 out.</summary>
    internal Func<WithdrawalStep> InNotes { private get; init; } = () => throw new InvalidOperationException("Only the routine makes a plan.");

    /// <summary>The plan with the debts' courses worked out, so that amounts that are too large for them are refused while it is decided, not where it is looked at.</summary>
    /// <exception cref="OverflowException">The payments of one month don't fit 64 bits.</exception>
    public RoutinePlan Foreseen()
    {
        _ = (Surplus.Without, Surplus.With);
        return this;
    }

    /// <summary>Income and carried-over money minus all that has been placed; must be exactly zero to close.</summary>
    public Money LeftToPlace => Surplus.Before - Surplus.Placed;
}
