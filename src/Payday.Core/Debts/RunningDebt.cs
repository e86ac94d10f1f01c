using Payday.Core.Amounts;

namespace Payday.Core.Debts;

/// <summary>A debt while payments are made on it.</summary>
internal sealed class RunningDebt
{
    // Opening balance and all interest so far. Balance and payments are parts of it, so as long as it fits
    // 64 bits they do.
    private Money cost;
    private Money nominalMinimum;

    /// <exception cref="ArgumentOutOfRangeException">The rate, the minimum or what is paid at once is out of range.</exception>
    public RunningDebt(DebtState state)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(state.YearlyRate, nameof(state));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(state.YearlyRate, DebtState.HighestRate, nameof(state));
        (decimal percent, Money amount) = state.Minimum switch
        {
            MinimumRule.PercentOrFloor rule => (rule.Percent, rule.Floor),
            MinimumRule.Fixed rule => (0m, rule.Amount),
            _ => throw new ArgumentException("The minimum is of an unknown kind.", nameof(state)),
        };
        ArgumentOutOfRangeException.ThrowIfNegative(percent, nameof(state));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(percent, 1m, nameof(state));
        ArgumentOutOfRangeException.ThrowIfNegative(amount.MinorUnits, nameof(state));

        State = state;
        cost = state.Balance.ClampToZero();
        Money atOnce = state.PaidAtOnce ?? Money.Zero(cost.Currency);
        ArgumentOutOfRangeException.ThrowIfNegative(atOnce.MinorUnits, nameof(state));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(atOnce.MinorUnits, cost.MinorUnits, nameof(state));
        Balance = cost - atOnce;
        nominalMinimum = state.Minimum.Nominal(cost, cost.MonthOfInterest(state.YearlyRate));
    }

    /// <summary>The debt as it stood at the start.</summary>
    public DebtState State { get; }

    /// <summary>What is owed now.</summary>
    public Money Balance { get; private set; }

    /// <summary>
    /// What a month sets free for other debts: nothing while this one is owed, then what its minimums of a month last
    /// asked for, uncapped. A debt that was paid from the start sets nothing free: that money has other purposes.
    /// </summary>
    public Money SetFree => IsPaid && State.Balance.IsPositive ? nominalMinimum : Money.Zero(Balance.Currency);

    /// <summary>All interest so far.</summary>
    public Money Interest => cost - State.Balance.ClampToZero();

    /// <summary>Whether nothing is owed.</summary>
    public bool IsPaid => Balance.IsZero;

    /// <summary>The month in which it was found paid, 1 for the first, 0 for before it, or null.</summary>
    public int? PaidInMonth { get; private set; }

    /// <summary>Whether the debt has outgrown every amount there is; nothing further is counted on it.</summary>
    public bool IsRunaway { get; private set; }

    /// <summary>Adds a month's interest, pays the minimum on each due date of the month, and returns the part of it that was not needed.</summary>
    public Money PayMonth(DebtMonth month)
    {
        Money nothing = Money.Zero(Balance.Currency);
        Money interest = month.IsCharged ? nothing : (Balance + Early(month)).MonthOfInterest(State.YearlyRate);
        IsRunaway = IsRunaway || interest.MinorUnits > long.MaxValue - cost.MinorUnits;
        if (IsRunaway)
        {
            return nothing;
        }

        cost += interest;
        Balance += interest;
        Money asked = nothing;
        Money paid = nothing;
        for (int due = 0; due < month.Dues; due++)
        {
            Money before = Balance - interest;
            Money nominal = State.Minimum.Nominal(before, interest);
            Money payment = State.Minimum.Due(before, interest);
            asked += nominal;
            paid += payment;
            Balance -= payment;
            interest = nothing;
        }

        // A month whose minimum was paid early asks for none, but the next one does.
        nominalMinimum = month is { PaidEarly: not null, Dues: 0 } ? nominalMinimum : asked;
        return asked - paid;
    }

    // A minimum paid early changes nothing of the interest of its month; what was paid beyond it does (design, rule 9).
    private Money Early(DebtMonth month)
    {
        if (month.PaidEarly is not { } paid)
        {
            return Money.Zero(Balance.Currency);
        }

        Money owed = Balance + paid;
        return Money.Min(paid, State.Minimum.Due(owed, owed.MonthOfInterest(State.YearlyRate)));
    }

    /// <summary>Pays on the balance.</summary>
    /// <param name="payment">Zero to the balance.</param>
    public void Pay(Money payment)
    {
        if (!IsRunaway)
        {
            Balance -= payment;
        }
    }

    /// <summary>Notes the month in which the debt was paid.</summary>
    public void CloseMonth(int month) => PaidInMonth ??= IsPaid ? month : null;
}
