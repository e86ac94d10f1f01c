using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Routines;

namespace Payday.Core.Status;

/// <summary>What has to leave the account by a date: bills and minimums alike.</summary>
public static class ComingDues
{
    /// <summary>All of a span of dates, paid or not, both ends included.</summary>
    /// <returns>By date; of one day bills first, each in household order.</returns>
    public static ImmutableArray<ComingDue> Between(Book book, LocalDate from, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = book.Household.Holidays;
        ILookup<DueOwner, ComingDue> paid = Paid(book).ToLookup(due => due.Owner);
        return
        [
            .. book.Household.Bills.SelectMany(bill => paid[DueOwner.Of(bill.Id)].Select(due => due with { Name = bill.Name, Date = holidays.Shift(due.Date, bill.Shift) }))
                .Concat(Open(book, holidays, to))
                .Concat(book.Household.Debts.SelectMany(debt => paid[DueOwner.Of(debt.Id)].Select(due => due with { Name = debt.Name })))
                .Concat(DebtCourse.Ahead(book, holidays, to).SelectMany(Ahead))
                .Where(due => due.Date >= from && due.Date <= to)
                .OrderBy(due => due.Date),
        ];
    }

    /// <summary>What is still to leave the account up to a date: what waits since before is among it.</summary>
    /// <returns>In the same order.</returns>
    public static ImmutableArray<ComingDue> Waiting(Book book, LocalDate today, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. Between(book, book.Household.Start, to).Where(due => !due.Paid && (due.Kind == DueKind.Bill || due.Date >= today || !IsCovered(book, due)))];
    }

    private static IEnumerable<ComingDue> Open(Book book, BankHolidays holidays, LocalDate to)
    {
        Dictionary<BillId, string> names = book.Household.Bills.ToDictionary(bill => bill.Id, bill => bill.Name);
        return OpenDues.OfBills(book, holidays, to)
            .Select(due => new ComingDue(due.Key.Owner, names[due.BillId], due.Date, due.Amount, Paid: false) { Key = due.Key });
    }

    // A payday closed in earlier versions has put a minimum's money aside for the lender; until the next one it is still to be sent off by its day.
    private static IEnumerable<ComingDue> Paid(Book book) => book.Closed
        .SelectMany(payday => payday.Dues.Concat(payday.Minimums ?? []).Where(due => due.Paid)
            .Select(due => new ComingDue(due.Key.Owner, "", due.Key.Scheduled, due.Amount + (due.Bought ?? Money.Zero(due.Amount.Currency)), due.Key.Debt is null || !IsSentLater(book, payday)) { Key = due.Key }))
        .Concat(book.Weeks.StandingPayments.Where(payment => payment.Amount.IsPositive)
            .Select(payment => new ComingDue(payment.Key.Owner, "", payment.Key.Scheduled, payment.Amount, Paid: true) { Key = payment.Key }));

    private static bool IsSentLater(Book book, ClosedPayday payday) => payday.Charged is null && payday == book.LastClosed;

    private static bool IsCovered(Book book, ComingDue due) => book.LastClosed is { Minimums: { } minimums, Charged: null }
        && minimums.Any(covered => covered.Paid && covered.Key == new DueKey(due.Owner, due.Date));

    private static IEnumerable<ComingDue> Ahead(DebtCourse course) => course.Rows
        .Where(row => row is { Due: not null, Balance.IsPositive: true })
        .Select(row => new ComingDue(DueOwner.Of(row.DebtId), row.Name, row.Due!.Value, row.Payment, Paid: false) { Key = row.Key!.Value });
}
