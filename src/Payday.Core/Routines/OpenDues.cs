using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>What is due and not paid, waived or covered yet, from the household's start on.</summary>
/// <remarks>
/// <para>
/// Every due from the start on is paid, waiting or waived (design, rule 9). A closed payday writes down each due that it
/// dealt with. What it left open waits; what its days hold beyond that was entered or changed since, and is due all the same.
/// Days before those of the last closed payday are history: a bill that is entered later doesn't reach back to them.
/// </para>
/// <para>A due keeps what it is while its schedule changes (<see cref="DueMatch"/>); its date and amount follow the bill.</para>
/// </remarks>
public static class OpenDues
{
    /// <summary>The dues of all bills that fall due up to a date, those of the past that wait included.</summary>
    /// <returns>In order of their dates, those of one day in household order.</returns>
    public static ImmutableArray<OpenDue> OfBills(Book book, BankHolidays holidays, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(holidays);
        return book.Remembered(static _ => new Known<OpenDue>()).Of(holidays, to, () => BillsOf(book, holidays, to));
    }

    private static ImmutableArray<OpenDue> BillsOf(Book book, BankHolidays holidays, LocalDate to)
    {
        WrittenDues written = WrittenDues.OfBills(book);
        return [.. book.Household.Bills.SelectMany(bill => Of(bill, written)).OrderBy(due => due.Date)];

        IEnumerable<OpenDue> Of(Bill bill, WrittenDues all)
        {
            (ImmutableArray<(WrittenDue Due, Occurrence? Time)> known, ImmutableArray<Occurrence> fresh) =
                all.Among(DueOwner.Of(bill.Id), bill.Schedule, bill.Shift, bill.Until, holidays, to);
            IEnumerable<OpenDue> waiting =
                from one in known
                where !one.Due.IsDone && !(one.Time is null && bill.Until < one.Due.Key.Scheduled)
                let date = one.Time?.Date ?? holidays.Shift(one.Due.Key.Scheduled, bill.Shift)
                where date <= to
                let decided = one.Due.Closed is { IsDecided: true } closed ? closed : null
                let usual = bill.AmountOn(one.Time?.Scheduled ?? one.Due.Key.Scheduled)
                let rest = decided is null ? usual - one.Due.Paid : decided.Amount - one.Due.PaidSince
                where rest.IsPositive || one.Due.PaidSince.IsZero
                select new OpenDue(one.Due.Key, date, rest.ClampToZero(), decided is not null) { Paid = one.Due.Paid };
            return waiting.Concat(fresh.Select(time => new OpenDue(new DueKey(bill.Id, time.Scheduled), time.Date, bill.AmountOn(time.Scheduled), IsDecided: false)));
        }
    }

    /// <summary>The minimums of all debts that fall due up to a date and have not left the account; a debt that is paid off has none.</summary>
    /// <returns>In household order, those of one debt by date.</returns>
    public static ImmutableArray<OpenMinimum> OfDebts(Book book, BankHolidays holidays, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(holidays);
        return book.Remembered(static _ => new Known<OpenMinimum>()).Of(holidays, to, () => DebtsOf(book, holidays, to));
    }

    private static ImmutableArray<OpenMinimum> DebtsOf(Book book, BankHolidays holidays, LocalDate to)
    {
        Money nothing = Money.Zero(book.Household.Currency);
        WrittenDues written = WrittenDues.OfDebts(book);
        return [.. book.Household.Debts.Where(debt => book.Ledger.Balances.OwedOn(debt.Id).IsPositive).SelectMany(debt => Of(debt, written))];

        IEnumerable<OpenMinimum> Of(Debt debt, WrittenDues all)
        {
            (ImmutableArray<(WrittenDue Due, Occurrence? Time)> known, ImmutableArray<Occurrence> fresh) =
                all.Among(DueOwner.Of(debt.Id), debt.Schedule, Shift.None, null, holidays, to);
            return known
                .Where(one => !one.Due.IsDone)
                .Select(one => new OpenMinimum(one.Due.Key, one.Time?.Date ?? one.Due.Key.Scheduled, one.Due.Paid, Covered(one.Due)))
                .Concat(fresh.Where(time => IsOwedOn(debt, time.Date)).Select(time => new OpenMinimum(new DueKey(debt.Id, time.Scheduled), time.Date, nothing, null)))
                .Where(due => due.Date <= to)
                .OrderBy(due => due.Date);
        }

        // A card that was paid off on that day was asked for nothing, whatever it paid since.
        bool IsOwedOn(Debt debt, LocalDate day) => EndCourse.Of(book.Ledger, new LedgerEnd.Owed(debt.Id))
            .On(day > book.Household.Start ? day.PlusDays(-1) : book.Household.Start).IsNegative;

        // A payment of an earlier version that was undone left nothing in the account for its minimum.
        static Money? Covered(WrittenDue due) => due.Closed is { Asked: not null } closed ? (closed.Amount - due.PaidSince).ClampToZero() : null;
    }

    // A routine asks for the same ones in several of its steps, and again with each of its decisions.
    private sealed class Known<T>
    {
        private readonly Dictionary<(BankHolidays Holidays, LocalDate To), ImmutableArray<T>> known = [];

        public ImmutableArray<T> Of(BankHolidays holidays, LocalDate to, Func<ImmutableArray<T>> workOut)
        {
            if (!known.TryGetValue((holidays, to), out ImmutableArray<T> dues))
            {
                known[(holidays, to)] = dues = workOut();
            }

            return dues;
        }
    }
}
