using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.DuePayments;

namespace Payday.Core.Status;

/// <summary>What should have been paid and isn't said to be.</summary>
public static class UntickedDues
{
    /// <summary>What is due by a day and not ticked, with what is to be paid by oneself, which is due at once.</summary>
    /// <param name="lines">What is to be paid of bills and minimums.</param>
    /// <param name="own">Payments above a minimum; those said to be paid don't count.</param>
    /// <param name="day">The day.</param>
    /// <param name="currency">Of all of them.</param>
    public static Money By(IEnumerable<DueLine> lines, IEnumerable<PaymentToMake> own, LocalDate day, Currency currency) => Money.Sum(
        lines.Where(due => due.Date <= day).Select(due => due.Rest).Concat(own.Where(payment => !payment.IsSaid).Select(payment => payment.Amount)), currency);
}
