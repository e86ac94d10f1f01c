using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>Step 3: a row for each minimum that falls due up to the period's end and isn't covered yet, and one for each debt at rest.</summary>
internal static class DebtRules
{
    public static DebtsStep Of(Book book, PayPeriod period, BankHolidays holidays, RoutineDraft draft)
    {
        Money nothing = Money.Zero(book.Household.Currency);
        ILookup<DebtId, OpenMinimum> dues = OpenDues.OfDebts(book, holidays, period.Last).ToLookup(due => due.DebtId);
        ImmutableArray<DebtRow> rows = [.. book.Household.Debts.SelectMany(debt => Rows(debt))];
        return new DebtsStep(rows, Money.Sum(rows.Select(row => row.Payment), book.Household.Currency));

        IEnumerable<DebtRow> Rows(Debt debt)
        {
            Money balance = book.Ledger.Balances.OwedOn(debt.Id).ClampToZero();
            if (!dues.Contains(debt.Id))
            {
                yield return new DebtRow(debt.Id, debt.Name, null, debt.YearlyRate, balance, nothing, nothing, nothing, false);
            }

            foreach (OpenMinimum due in dues[debt.Id])
            {
                Money interest = due.IsCharged ? nothing : balance.MonthOfInterest(debt.YearlyRate);
                Money minimum = debt.Minimum.Due(balance, interest);
                Money? decided = Decided(draft, due.Key);
                Money payment = decided is { } paid ? Money.Min(paid, balance + interest) : minimum;
                var row = new DebtRow(debt.Id, debt.Name, due.Date, debt.YearlyRate, balance, interest, minimum, payment, decided is not null) { Key = due.Key };
                yield return row;
                balance = row.NewBalance;
            }
        }
    }

    private static Money? Decided(RoutineDraft draft, DueKey due) =>
        draft.Minimums.TryGetValue(due, out Money paid) || draft.DebtPayments.TryGetValue(due.Debt!.Value, out paid) ? paid : null;
}
