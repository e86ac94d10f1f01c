using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Undo;

namespace Payday.Core.DuePayments;

/// <summary>The dues that can be ticked, bills and minimums alike.</summary>
public static class DueLines
{
    /// <summary>All that fall due up to a date and have not left the account, those of the past among them.</summary>
    /// <returns>By date; of one day bills first, each in household order.</returns>
    public static ImmutableArray<DueLine> Of(Book book, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = book.Household.Holidays;
        Dictionary<DueOwner, string> names = book.Household.Bills.ToDictionary(bill => DueOwner.Of(bill.Id), bill => bill.Name);
        var held = new Dictionary<DueOwner, Money>();
        DueLine[] lines =
        [
            .. OpenDues.OfBills(book, holidays, to).Select(due => new DueLine(due.Key, names[due.Key.Owner], due.Date, due.Amount, due.Paid, due.Amount)),
            .. DebtCourse.Ahead(book, holidays, to).SelectMany(course => course.Rows).Where(row => row is { Due: not null, Balance.IsPositive: true })
                .Select(row => new DueLine(row.Key!.Value, row.Name, row.Due!.Value, row.Payment, row.PaidBefore, row.Payment) { Bought = row.Bought }),
        ];
        return [.. lines.OrderBy(line => line.Date).Select(Funded)];

        DueLine Funded(DueLine line)
        {
            Money rest = held.TryGetValue(line.Key.Owner, out Money left) ? left : book.Ledger.Balances[Holding(line.Key.Owner)].ClampToZero();
            Money has = Money.Min(rest, line.Own);
            held[line.Key.Owner] = rest - has;
            return line with { Has = has + line.Bought };
        }
    }

    /// <summary>What was paid or freed since a day, the last first.</summary>
    public static ImmutableArray<PaidDue> Paid(Book book, LocalDate since)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = book.Household.Holidays;
        Dictionary<DueOwner, Shift> shifts = book.Household.Bills.ToDictionary(bill => DueOwner.Of(bill.Id), bill => bill.Shift);
        return
        [
            .. book.Closed.Where(payday => payday.Payday >= since)
                .SelectMany(payday => payday.Dues.Concat(payday.Minimums ?? []).Where(due => due.Paid)
                    .Select(due => new PaidDue(due.Key, BookEntry.NameOf(book, due.Key.Owner), Day(due.Key), payday.Payday, due.Amount + (due.Bought ?? Money.Zero(due.Amount.Currency)), null)))
                .Concat(book.Weeks.StandingPayments.Where(payment => payment.Date >= since)
                    .Select(payment => new PaidDue(payment.Key, BookEntry.NameOf(book, payment.Key.Owner), Day(payment.Key), payment.Date, payment.Amount, payment.Number)
                    {
                        IsFreed = payment.Completes && payment.Amount < payment.Asked,
                        IsPaidInPart = book.Weeks.StandingPayments.Any(part => part.Key == payment.Key && part.Number <= payment.Number && part.Amount.IsPositive),
                    }))
                .OrderByDescending(paid => paid.PaidOn).ThenByDescending(paid => paid.Number),
        ];

        LocalDate Day(DueKey key) => holidays.Shift(key.Scheduled, shifts.GetValueOrDefault(key.Owner, Shift.None));
    }

    /// <summary>Where the money of a bill or a debt waits.</summary>
    internal static LedgerEnd Holding(DueOwner owner) => LedgerEnd.InAccount(
        owner.Bill is { } bill ? Purpose.SetAside(bill) : Purpose.ForDebt(owner.Debt!.Value));
}
