using Payday.Core.Amounts;

namespace Payday.Core.Debts;

/// <summary>What one month's payment does to a debt.</summary>
/// <param name="Interest">The month's interest, on the balance before the payment.</param>
/// <param name="Principal">
/// What the payment takes off the balance. Below zero when the payment doesn't cover the interest: the
/// balance grows by that much (negative amortisation).
/// </param>
/// <param name="BalanceAfter">
/// The balance after interest and payment. Below zero when more was paid than was owed: the lender owes that much.
/// </param>
public readonly record struct PaymentSplit(Money Interest, Money Principal, Money BalanceAfter)
{
    /// <summary>Whether the balance is larger after the payment than before.</summary>
    public bool Grows => Principal.IsNegative;

    /// <summary>Splits a payment made once for a month.</summary>
    /// <param name="balance">The balance before interest, zero or more.</param>
    /// <param name="yearlyRate">A fraction, e.g. 0.1999 for 19.99 % a year; zero or more.</param>
    /// <param name="payment">Zero or more; it is not capped here.</param>
    /// <remarks>Interest is <see cref="Money.MonthOfInterest"/>: a twelfth of the rate, half to even.</remarks>
    public static PaymentSplit Of(Money balance, decimal yearlyRate, Money payment)
    {
        Money interest = balance.MonthOfInterest(yearlyRate);
        Money principal = payment - interest;
        return new(interest, principal, balance - principal);
    }
}
