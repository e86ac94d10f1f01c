using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CashReturns;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>
/// Step 3: a row for each minimum that falls due up to the period's end and hasn't left the account yet, and one for each
/// debt at rest.
/// </summary>
/// <remarks>
/// As with bills a tick says that it has left the account; what is due by the payday is proposed so. What isn't ticked waits
/// in the account for its debt. Today brings what the account doesn't hold for it yet; what it holds and no row needs goes
/// back to what is left to place. What was bought with a card that is the debt, and waits for it, is paid beside its next minimum.
/// </remarks>
internal static class DebtRules
{
    public static DebtsStep Of(Book book, PayPeriod period, BankHolidays holidays, RoutineDraft draft)
    {
        ImmutableArray<DebtCourse> courses = DebtCourse.All(book, holidays, period.First, period.Last, draft);
        Money nothing = Money.Zero(book.Household.Currency);
        ImmutableArray<OwedItem> forCards = OwedItems.ForCards(book);
        ImmutableArray<DebtRow> rows = [.. courses.SelectMany(course => course.Rows)];
        ImmutableArray<DebtCover> covers = [.. courses.Select(course => new DebtCover(course.Rows[0].DebtId, course.Held, Taken(course)) { Freed = Freed(course), Waits = Left(course) - Freed(course) + OnItsWay(course.Rows[0].DebtId) })];
        return new DebtsStep(
            rows,
            Money.Sum(covers.Select(cover => cover.Taken - cover.Freed), nothing.Currency),
            Money.Sum(rows.Select(row => row.Payment), nothing.Currency),
            [.. courses.SelectMany(course => course.Charges)],
            covers);

        // A debt that rests keeps what waits for it, unless nothing is owed any more.
        Money Taken(DebtCourse course) => course.Rows[0].Key is null && course.Rows[0].NewBalance.IsPositive
            ? nothing
            : Money.Sum(course.Rows.Select(row => row.Own), nothing.Currency) - course.Held;

        // What was bought with a card waits until it is paid, or until nothing is owed.
        Money Freed(DebtCourse course) => course.Rows[^1].NewBalance.IsPositive ? nothing : Left(course);

        Money Left(DebtCourse course) => course.Bought - Money.Sum(course.Rows.Select(row => row.Bought), nothing.Currency);

        Money OnItsWay(DebtId debt)
        {
            LedgerEnd waits = LedgerEnd.InAccount(Purpose.ForCard(debt));
            return Money.Sum(forCards.Where(item => item.To == waits).Select(item => item.Short), nothing.Currency);
        }
    }
}
