using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>One debt over the due dates that it still has up to a day, each with the interest charged with it.</summary>
/// <param name="Rows">A row for each due date, or the one of a debt at rest.</param>
/// <param name="Charges">What is charged up to today, each on its own day, zero too.</param>
/// <param name="Held">What the account holds for its payments.</param>
/// <param name="Bought">What waits there for what was bought with the card, beside that.</param>
internal sealed record DebtCourse(ImmutableArray<DebtRow> Rows, ImmutableArray<InterestCharge> Charges, Money Held, Money Bought)
{
    /// <summary>The debts of a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="holidays">Its bank holidays.</param>
    /// <param name="today">Interest up to this day is charged; what is due by then is proposed as paid.</param>
    /// <param name="to">The last due date that is looked at.</param>
    /// <param name="draft">What was decided.</param>
    /// <param name="takes">Which of the open minimums are looked at; null for all.</param>
    public static ImmutableArray<DebtCourse> All(
        Book book, BankHolidays holidays, LocalDate today, LocalDate to, RoutineDraft draft, Func<OpenMinimum, bool>? takes = null)
    {
        ILookup<DebtId, OpenMinimum> dues = OpenDues.OfDebts(book, holidays, to).Where(takes ?? (_ => true)).ToLookup(due => due.DebtId);
        return [.. book.Household.Debts.Select(debt => Of(book, debt, [.. dues[debt.Id]], holidays, today, to, draft))];
    }

    /// <summary>The debts as they go on if nothing else is decided, each minimum paid on its day.</summary>
    /// <param name="book">The book.</param>
    /// <param name="holidays">Its bank holidays.</param>
    /// <param name="to">The last due date that is looked at.</param>
    /// <param name="takes">Which of the open minimums are looked at; null for all.</param>
    public static ImmutableArray<DebtCourse> Ahead(Book book, BankHolidays holidays, LocalDate to, Func<OpenMinimum, bool>? takes = null)
    {
        LocalDate before = book.Household.Start.PlusDays(-1);
        return All(book, holidays, before, to, new RoutineDraft(before), takes);
    }

    private static DebtCourse Of(
        Book book, Debt debt, ImmutableArray<OpenMinimum> dues, BankHolidays holidays, LocalDate today, LocalDate to, RoutineDraft draft)
    {
        var walk = new Walk(book, debt, InterestBase.Of(book, debt, holidays, to), today, draft);
        DebtCourse course = walk.Over(dues, Money.Zero(book.Household.Currency));

        // What waits for the debt beyond its minimums is paid with the next one.
        Money spare = course.Held - Money.Sum(course.Rows.Select(row => row.Own), course.Held.Currency);
        return spare.IsPositive && course.Rows.Any(row => row is { Key: not null, Changed: false }) ? walk.Over(dues, spare) : course;
    }

    private sealed class Walk(Book book, Debt debt, InterestBase interest, LocalDate today, RoutineDraft draft)
    {
        private readonly Money nothing = Money.Zero(book.Household.Currency);
        private readonly Money held = book.Ledger.Balances[LedgerEnd.InAccount(Purpose.ForDebt(debt.Id))];
        private readonly Money bought = book.Ledger.Balances[LedgerEnd.InAccount(Purpose.ForCard(debt.Id))].ClampToZero();
        private readonly EndCourse whenBought = EndCourse.Of(book.Ledger, LedgerEnd.InAccount(Purpose.ForCard(debt.Id)));

        public DebtCourse Over(ImmutableArray<OpenMinimum> dues, Money spare)
        {
            Money balance = book.Ledger.Balances.OwedOn(debt.Id);
            Money more = nothing;
            Money rest = held;
            Money waits = bought;
            var rows = ImmutableArray.CreateBuilder<DebtRow>();
            var charges = ImmutableArray.CreateBuilder<InterestCharge>();
            var planned = new List<(LocalDate Date, Money Amount)>();
            var days = new Queue<LocalDate>(interest.Days);
            foreach (OpenMinimum due in dues)
            {
                (Money charged, Money expected) = Charge(day => day <= due.Date);
                Money owed = balance.ClampToZero();
                Money all = charged + expected;
                Money minimum = Money.Min((debt.Minimum.Nominal(owed + due.Paid, all) - due.Paid).ClampToZero(), owed + all);
                Money? decided = Decided(due.Key);
                Money asked = due.Covered ?? minimum;
                if (decided is null && spare.IsPositive)
                {
                    asked += spare;
                    spare = nothing;
                }

                // What was bought by then is paid with it, beside the minimum and before it where both are more than is owed.
                Money there = Money.Min(waits, (whenBought.LeastFrom(due.Date) - (bought - waits)).ClampToZero());
                asked = Money.Min(asked, (owed + all - there).ClampToZero());
                Money payment = Money.Min(decided ?? (asked + there), owed + all);
                Money paysBought = Money.Min(decided is null ? there : waits, (payment - asked).ClampToZero());
                waits -= paysBought;
                bool paid = draft.PaidMinimums.TryGetValue(due.Key, out bool ticked) ? ticked : due.Date <= today;
                LocalDate paidOn = paysBought > there ? today : PaidOn(due.Date, payment - paysBought);
                rows.Add(new DebtRow(debt.Id, debt.Name, due.Date, debt.YearlyRate, owed, all, minimum, payment, decided is not null)
                {
                    Key = due.Key, Expected = expected, Paid = paid, PaidOn = paidOn, PaidBefore = due.Paid, IsTicked = draft.PaidMinimums.ContainsKey(due.Key), Bought = paysBought,
                });
                balance = owed + all - payment;
                rest = (rest - (payment - paysBought)).ClampToZero();

                // Before its day only what goes beyond the minimum counts for the interest of that day.
                Money early = paid && paidOn < due.Date ? (payment - minimum).ClampToZero() : nothing;
                planned.Add((paidOn, early));
                planned.Add((paid && paidOn >= due.Date ? paidOn : LocalDate.Max(due.Date, today), payment - early));
            }

            (Money late, Money still) = Charge(_ => true);
            if (rows.Count == 0)
            {
                rows.Add(new DebtRow(debt.Id, debt.Name, null, debt.YearlyRate, (late + still).IsZero ? balance.ClampToZero() : balance, late + still, nothing, nothing, false) { Expected = still });
            }
            else
            {
                rows[^1] = rows[^1] with { Interest = rows[^1].Interest + late + still, Expected = rows[^1].Expected + still };
            }

            return new DebtCourse(rows.ToImmutable(), charges.ToImmutable(), held, bought);

            (Money Charged, Money Expected) Charge(Func<LocalDate, bool> takes)
            {
                Money charged = nothing;
                Money expected = nothing;
                while (days.TryPeek(out LocalDate day) && takes(day))
                {
                    days.Dequeue();
                    Money amount = interest.On(day, more - Money.Sum(planned.Where(payment => payment.Date < day).Select(payment => payment.Amount), nothing.Currency));
                    more += amount;
                    if (day <= today)
                    {
                        charges.Add(new InterestCharge(debt.Id, day, amount));
                        charged += amount;
                    }
                    else
                    {
                        expected += amount;
                    }
                }

                return (charged, expected);
            }

            // On its own day where the money was held by then; what only this payday brings can't have been paid before it.
            LocalDate PaidOn(LocalDate due, Money payment) => due >= today || due < book.LastClosed?.Payday || rest < payment ? today : due;
        }

        private Money? Decided(DueKey due) =>
            draft.Minimums.TryGetValue(due, out Money paid) || draft.DebtPayments.TryGetValue(debt.Id, out paid) ? paid : null;
    }
}

/// <summary>A month's interest on a debt.</summary>
/// <param name="DebtId">The debt.</param>
/// <param name="Date">The day on which it is charged.</param>
/// <param name="Amount">Zero or more.</param>
public readonly record struct InterestCharge(DebtId DebtId, LocalDate Date, Money Amount);
