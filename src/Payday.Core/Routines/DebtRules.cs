using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Households;

namespace Payday.Core.Routines;

/// <summary>Step 3: a row for each minimum that falls due in the period, and one for each debt at rest.</summary>
internal static class DebtRules
{
    public static DebtsStep Of(Book book, PayPeriod period, BankHolidays holidays, RoutineDraft draft)
    {
        var rows = ImmutableArray.CreateBuilder<DebtRow>();
        Money nothing = Money.Zero(book.Household.Currency);
        foreach (Debt debt in book.Household.Debts)
        {
            Money balance = book.Ledger.Balances.OwedOn(debt.Id).ClampToZero();
            LocalDate[] dues = balance.IsZero
                ? []
                : [.. Occurrences.Between(new Schedule.Monthly(debt.Due), Shift.None, holidays, period.First, period.Last).Select(due => due.Date)];
            if (dues.Length == 0)
            {
                rows.Add(new DebtRow(debt.Id, debt.Name, null, debt.YearlyRate, balance, nothing, nothing, nothing, false, false));
            }

            foreach (LocalDate due in dues)
            {
                Money interest = balance.MonthOfInterest(debt.YearlyRate);
                Money minimum = debt.Minimum.Due(balance, interest);
                bool changed = draft.DebtPayments.TryGetValue(debt.Id, out Money paid);
                Money payment = changed ? Money.Min(paid, balance + interest) : minimum;
                var row = new DebtRow(debt.Id, debt.Name, due, debt.YearlyRate, balance, interest, minimum, payment, changed, draft.PaidDebts.Contains(debt.Id));
                rows.Add(row);
                balance = row.NewBalance;
            }
        }

        return new DebtsStep(rows.ToImmutable(), Money.Sum(rows.Select(row => row.Payment), book.Household.Currency));
    }
}
