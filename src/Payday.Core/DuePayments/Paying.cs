using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Undo;

namespace Payday.Core.DuePayments;

/// <summary>Ticking dues between paydays: bills and minimums alike (design, section 5.9).</summary>
/// <remarks>
/// What is paid comes from what the account holds for the bill or debt, its later money too, then from the buffer. Paid in
/// part, the rest stays due until it is paid or freed; what is freed, and held for it, is left to place again. Interest whose
/// day has come by then is charged with it, each on its own day.
/// </remarks>
public static class Paying
{
    /// <summary>Ticks a due.</summary>
    /// <param name="book">The book.</param>
    /// <param name="entry">What was ticked.</param>
    /// <param name="today">The last day on which it can have left the account.</param>
    /// <returns>The book afterwards, the payment being its last; or why it can't be ticked.</returns>
    public static Result<Book> Enter(Book book, DueEntry entry, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(entry);
        LocalDate ahead = today.PlusMonths(BillDues.MonthsAhead);
        DueLine? due = DueLines.Of(book, ahead).FirstOrDefault(line => line.Key == entry.Key);
        if (due is null)
        {
            return Result.Refused<Book>(new DueFault.NotOpen(BookEntry.NameOf(book, entry.Key.Owner), entry.Key.Scheduled));
        }

        Money amount = entry.Amount ?? due.Rest;
        LedgerEnd holding = DueLines.Holding(entry.Key.Owner);
        LedgerEnd buffer = LedgerEnd.InAccount(Purpose.Buffer);
        ImmutableArray<InterestCharge> charges = ChargesUpTo(book, entry);
        if (Fault(book, entry, due, amount, charges, today) is { } fault)
        {
            return Result.Refused<Book>(fault);
        }

        var writer = new WeekWriter(book);
        long first = writer.Next;
        foreach (InterestCharge charge in charges)
        {
            writer.Move(charge.Date, new LedgerEnd.Owed(charge.DebtId), LedgerEnd.InterestOn(charge.DebtId), charge.Amount, "a month's interest");
        }

        // The due itself first, then what was bought with the card; what is above both has what is held for later, then the buffer.
        Money own = Money.Min(Money.Min(amount, due.Own), writer[holding].ClampToZero());
        Money bought = Money.Min(amount - Money.Min(amount, due.Own), Bought(book, entry.Key));
        Money later = Money.Min(amount - own - bought, writer[holding].ClampToZero() - own);
        Money more = Money.Min(amount - own - bought - later, Bought(book, entry.Key) - bought);
        Pay(writer, entry, holding, own + later);
        Pay(writer, entry, ForCard(entry.Key), bought + more);
        Pay(writer, entry, buffer, amount - own - bought - later - more);
        bool completes = entry.FreesRest || amount >= due.Own;
        if (completes)
        {
            // What was bought is owed all the same, and goes on waiting.
            Money freed = Money.Min((due.Has - due.Bought - amount).ClampToZero(), writer[holding].ClampToZero());
            writer.Move(DayFor(writer, holding, freed, entry.Date), holding, LedgerEnd.InAccount(Purpose.LeftToPlace), freed, $"{Due(entry)} freed");
        }

        writer.Record(weeks => weeks with
        {
            Payments = weeks.Payments.Add(new DuePayment(weeks.Payments.Length + 1, entry.Key, entry.Date, amount, completes, first, writer.Last) { Asked = due.Own }),
        });
        return Result.Of(writer.Book);
    }

    /// <summary>Undoes a payment: all is as if it had never been entered.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">The payment.</param>
    /// <param name="date">The day on which it is undone.</param>
    /// <returns>The book afterwards; or why it can't be undone.</returns>
    public static Result<Book> Undo(Book book, long number, LocalDate date) => new PaymentUndo().Undo(book, number, date);

    /// <summary>What is in the way of undoing a payment; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, long number) => new PaymentUndo().InTheWay(book, number);

    private static DueFault? Fault(Book book, DueEntry entry, DueLine due, Money amount, ImmutableArray<InterestCharge> charges, LocalDate today)
    {
        if (entry.Date > today)
        {
            return new DueFault.StillToCome(entry.Date);
        }

        if (entry.Date < book.Household.Start)
        {
            return new DueFault.BeforeStart(entry.Date, book.Household.Start);
        }

        if (amount.IsNegative || (amount.IsZero && !entry.FreesRest && due.Rest.IsPositive))
        {
            return new DueFault.NotAboveZero();
        }

        if (entry.Key.Debt is { } debt)
        {
            Money owed = book.Ledger.Balances.OwedOn(debt) + Money.Sum(charges.Select(charge => charge.Amount), amount.Currency);
            if (amount > Money.Max(owed, due.Rest))
            {
                return new DueFault.MoreThanOwed(due.Name, Money.Max(owed, due.Rest));
            }
        }

        Money held = book.Ledger.Balances[DueLines.Holding(entry.Key.Owner)].ClampToZero() + Bought(book, entry.Key);
        Money buffer = book.Ledger.Balances[LedgerEnd.InAccount(Purpose.Buffer)].ClampToZero();
        return amount > held + buffer ? new DueFault.NotEnough(due.Name, amount, held, buffer) : null;
    }

    private static LedgerEnd ForCard(DueKey key) => key.Debt is { } debt ? LedgerEnd.InAccount(Purpose.ForCard(debt)) : LedgerEnd.InAccount(Purpose.Buffer);

    private static Money Bought(Book book, DueKey key) => key.Debt is null ? Money.Zero(book.Household.Currency) : book.Ledger.Balances[ForCard(key)].ClampToZero();

    private static ImmutableArray<InterestCharge> ChargesUpTo(Book book, DueEntry entry)
    {
        if (book.Household.Debts.FirstOrDefault(debt => debt.Id == entry.Key.Debt) is not { } debt)
        {
            return [];
        }

        var interest = InterestBase.Of(book, debt, book.Household.Holidays, entry.Date);
        Money more = Money.Zero(book.Household.Currency);
        var charges = ImmutableArray.CreateBuilder<InterestCharge>();
        foreach (LocalDate day in interest.Days)
        {
            Money amount = interest.On(day, more);
            more += amount;
            charges.Add(new InterestCharge(debt.Id, day, amount));
        }

        return charges.ToImmutable();
    }

    // As with card purchases: on its day where the money was there by then, else on the first day on which it was.
    private static void Pay(WeekWriter writer, DueEntry entry, LedgerEnd from, Money amount) => writer.Move(
        DayFor(writer, from, amount, entry.Date),
        from,
        entry.Key.Bill is { } bill ? LedgerEnd.PaidFor(bill) : new LedgerEnd.Owed(entry.Key.Debt!.Value),
        amount,
        entry.Key.Bill is null ? "minimum payment" : Due(entry));

    private static LocalDate DayFor(WeekWriter writer, LedgerEnd from, Money amount, LocalDate date) =>
        EndCourse.Of(writer.Book.Ledger, from).DayFor(amount, date) ?? date;

    private static string Due(DueEntry entry) => $"due {PlainDates.DayMonthYear(entry.Key.Scheduled)}";
}
