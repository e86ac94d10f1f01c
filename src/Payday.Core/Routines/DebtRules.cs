using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;

namespace Payday.Core.Routines;

/// <summary>
/// Step 3: a row for each minimum that falls due up to the period's end and hasn't left the account yet, and one for each
/// debt at rest.
/// </summary>
/// <remarks>
/// As with bills a tick says that it has left the account; what is due by the payday is proposed so. What isn't ticked waits
/// in the account for its debt. Today brings what the account doesn't hold for it yet; what it holds and no row needs goes
/// back to what is left to place.
/// </remarks>
internal static class DebtRules
{
    public static DebtsStep Of(Book book, PayPeriod period, BankHolidays holidays, RoutineDraft draft)
    {
        ImmutableArray<DebtCourse> courses = DebtCourse.All(book, holidays, period.First, period.Last, draft);
        Money nothing = Money.Zero(book.Household.Currency);
        ImmutableArray<DebtRow> rows = [.. courses.SelectMany(course => course.Rows)];
        ImmutableArray<DebtCover> covers = [.. courses.Select(course => new DebtCover(course.Rows[0].DebtId, course.Held, Taken(course)))];
        return new DebtsStep(
            rows,
            Money.Sum(covers.Select(cover => cover.Taken), nothing.Currency),
            Money.Sum(rows.Select(row => row.Payment), nothing.Currency),
            [.. courses.SelectMany(course => course.Charges)],
            covers);

        // A debt that rests keeps what waits for it, unless nothing is owed any more.
        Money Taken(DebtCourse course) => course.Rows[0].Key is null && course.Rows[0].NewBalance.IsPositive
            ? nothing
            : Money.Sum(course.Rows.Select(row => row.Payment), nothing.Currency) - course.Held;
    }
}
