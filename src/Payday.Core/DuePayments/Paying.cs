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
    public static Result<Book> Undo(Book book, long number, LocalDate date) => InTheWay(book, number) is { } obstacle
        ? Result.Refused<Book>(obstacle)
        : Taking(book, book.Weeks.Payments[(int)number - 1]).Done(
            date,
            "payment undone",
            weeks => weeks with { Payments = weeks.Payments.SetItem((int)number - 1, weeks.Payments[(int)number - 1] with { Undone = true }) });

    /// <summary>What is in the way of undoing a payment; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, long number)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (number < 1 || number > book.Weeks.Payments.Length)
        {
            return new Obstacle.NoSuchPayment(number);
        }

        DuePayment payment = book.Weeks.Payments[(int)number - 1];
        return payment.Undone ? new Obstacle.PaymentUndone(number)
            : book.Weeks.StandingPayments.LastOrDefault(later => later.Key == payment.Key && later.Number > number) is { } later
                ? new Obstacle.PaidSince(BookEntry.Of(book, payment), BookEntry.Of(book, later))
            : Seen(book, payment) ?? Taking(book, payment).InTheWay();
    }

    // Money that was left to place went on with the next payday; interest that was charged later was charged on what was owed then.
    private static Obstacle.GoneOn? Seen(Book book, DuePayment payment)
    {
        Movement[] own = [.. book.Ledger.Movements.Skip((int)payment.FirstMovement - 1).Take((int)(payment.LastMovement - payment.FirstMovement + 1))];
        if (book.Closed.FirstOrDefault(closed => closed.FirstMovement > payment.LastMovement) is { } since
            && own.Any(movement => movement.To is LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace }))
        {
            return new Obstacle.GoneOn(BookEntry.Of(book, payment), new BookEntry.Payday(since.Payday));
        }

        if (payment.Key.Debt is not { } debt)
        {
            return null;
        }

        bool charged = own.Any(movement => movement.To is LedgerEnd.Outside { Kind: OutsideKind.Interest });
        Movement? seen = book.Ledger.Of(LedgerEnd.InterestOn(debt)).FirstOrDefault(charge => charge.Number > payment.LastMovement
            && (charged || (charge.Date > payment.Date && !(charge.Date <= payment.Key.Scheduled && payment.Amount <= payment.Asked))));
        return seen is null ? null : new Obstacle.GoneOn(
            BookEntry.Of(book, payment),
            BookEntry.Of(book, seen.Number) ?? (seen.Payday is { } payday ? new BookEntry.Payday(payday) : new BookEntry.Movement(seen.Number)));
    }

    private static TakingBack Taking(Book book, DuePayment payment)
    {
        var taking = new TakingBack(book, BookEntry.Of(book, payment));
        taking.AddRange(payment.FirstMovement, payment.LastMovement);
        return taking;
    }

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

        var interest = InterestBase.Of(book, debt, BankHolidays.From(book.Household.Settings.Holidays), entry.Date);
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
        amount.IsZero ? date : EndCourse.Of(writer.Book.Ledger, from).DayFor(amount, date) ?? date;

    private static string Due(DueEntry entry) => $"due {PlainDates.DayMonthYear(entry.Key.Scheduled)}";
}
