using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Status;

/// <summary>What is set aside for a bill or a debt's next payment, at a glance.</summary>
/// <param name="Owner">The bill or debt.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Has">What the account has for it; above zero.</param>
/// <param name="Next">What it is to pay next; null where nothing is to come within a year.</param>
public sealed record SetAsideGlance(DueOwner Owner, string Name, Money Has, ComingDue? Next)
{
    private const int MonthsAhead = 12;

    /// <summary>All of a book, by the date of the next due; those without one last.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public static ImmutableArray<SetAsideGlance> Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        Balances balances = book.Ledger.Balances;
        Dictionary<DueOwner, ComingDue> next = ComingDues.Waiting(book, today, today.PlusMonths(MonthsAhead))
            .GroupBy(due => due.Owner)
            .ToDictionary(dues => dues.Key, dues => dues.First());
        return
        [
            .. book.Household.Bills.Select(bill => Glance(DueOwner.Of(bill.Id), bill.Name, balances[LedgerEnd.InAccount(Purpose.SetAside(bill.Id))]))
                .Concat(book.Household.Debts.Select(debt => Glance(DueOwner.Of(debt.Id), debt.Name, ForDebt(balances, debt.Id))))
                .Where(glance => glance.Has.IsPositive)
                .OrderBy(glance => glance.Next is null).ThenBy(glance => glance.Next?.Date ?? LocalDate.MaxIsoValue),
        ];

        SetAsideGlance Glance(DueOwner owner, string name, Money has) => new(owner, name, has, next.GetValueOrDefault(owner));
    }

    // For its minimums, and for what was bought with it.
    private static Money ForDebt(Balances balances, DebtId debt) =>
        balances[LedgerEnd.InAccount(Purpose.ForDebt(debt))] + balances[LedgerEnd.InAccount(Purpose.ForCard(debt))];
}
