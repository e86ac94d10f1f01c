using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ledgers;
using Payday.Core.Routines;

namespace Payday.Core.Households;

/// <summary>What has to leave the account in a span of dates: bills and minimums alike.</summary>
public static class ComingDues
{
    /// <summary>All of them, paid or not, both ends included.</summary>
    /// <returns>By date; of one day bills first, each in household order.</returns>
    public static ImmutableArray<ComingDue> Between(Book book, LocalDate from, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = BankHolidays.From(book.Household.Settings.Holidays);
        return
        [
            .. OfBills(book, holidays, from, to)
                .Concat(book.Household.Debts.SelectMany(debt => OfDebt(book, debt, holidays, from, to)))
                .OrderBy(due => due.Date),
        ];
    }

    private static IEnumerable<ComingDue> OfBills(Book book, BankHolidays holidays, LocalDate from, LocalDate to)
    {
        IReadOnlySet<DueKey> paid = book.PaidDues;
        return BillDues.Between(book.Household.Bills, holidays, from, to)
            .Select(due => new ComingDue(
                DueKind.Bill, due.BillId, due.Name, due.Date, book.Expected(due), paid.Contains(new DueKey(due.BillId, due.Date))));
    }

    private static IEnumerable<ComingDue> OfDebt(Book book, Debt debt, BankHolidays holidays, LocalDate from, LocalDate to) => book.Closed
        .Where(payday => payday.Period.First <= to && payday.Period.Last >= from)
        .SelectMany(payday => Closed(book, debt, payday, holidays))
        .Concat(Ahead(book, debt, holidays, to))
        .Where(due => due.Date >= from && due.Date <= to);

    // A closed payday wrote a payment for each due date of its period, in their order, before any surplus.
    private static IEnumerable<ComingDue> Closed(Book book, Debt debt, ClosedPayday payday, BankHolidays holidays)
    {
        IEnumerable<Movement> payments = book.Ledger.Of(new LedgerEnd.Owed(debt.Id))
            .Where(movement => movement.Number >= payday.FirstMovement && movement.Number <= payday.LastMovement)
            .Where(movement => movement.To is LedgerEnd.Owed);
        return Dates(debt, holidays, payday.Period.First, payday.Period.Last).Zip(payments, (date, payment) => new ComingDue(
            DueKind.Minimum, debt.Id, debt.Name, date, payment.Amount, payday.Draft.PaidDebts.Contains(debt.Id)));
    }

    private static IEnumerable<ComingDue> Ahead(Book book, Debt debt, BankHolidays holidays, LocalDate to)
    {
        Money balance = book.Ledger.Balances.OwedOn(debt.Id).ClampToZero();
        LocalDate from = book.LastClosed is { } last ? last.Period.Last.PlusDays(1) : book.Household.Start;
        foreach (LocalDate date in Dates(debt, holidays, from, to))
        {
            if (balance.IsZero)
            {
                yield break;
            }

            Money interest = balance.MonthOfInterest(debt.YearlyRate);
            Money minimum = debt.Minimum.Due(balance, interest);
            balance += interest - minimum;
            yield return new ComingDue(DueKind.Minimum, debt.Id, debt.Name, date, minimum, false);
        }
    }

    private static IEnumerable<LocalDate> Dates(Debt debt, BankHolidays holidays, LocalDate from, LocalDate to) =>
        Occurrences.Between(new Schedule.Monthly(debt.Due), Shift.None, holidays, from, to).Select(due => due.Date);
}
