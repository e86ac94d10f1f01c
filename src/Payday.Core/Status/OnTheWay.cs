using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Reconciling;

namespace Payday.Core.Status;

/// <summary>What is here and not at the bank yet, so that the account here and the bank's balance can be told apart.</summary>
/// <param name="In">What comes in, zero or more.</param>
/// <param name="Out">What goes out, zero or more.</param>
/// <param name="Bank">What the bank should show: the account here without both, and with the difference that the last reconciliation left.</param>
/// <param name="Difference">That difference: below zero where the bank had less than it should; zero for none.</param>
/// <remarks>Rule (design, 14): expected at the bank = account here + out on its way - in on its way.</remarks>
public sealed record OnTheWay(Money In, Money Out, Money Bank, Money Difference)
{
    /// <summary>That of a book; null where nothing is on its way, or the account was never held against the bank, so that nobody ticked anything.</summary>
    /// <param name="book">The book. What is ticked in a reconciliation that is only begun is on its way still.</param>
    public static OnTheWay? Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Weeks.StandingReconciliations.LastOrDefault() is not { } last)
        {
            return null;
        }

        ReconciliationPlan plan = ReconciliationPlan.Of(book with { Weeks = book.Weeks with { Reconciling = null } }, last.Date);
        AccountLine[] open = [.. plan.Lines.Where(line => !plan.IsAtBank(line))];
        Money nothing = Money.Zero(book.Household.Currency);
        return open.Length == 0 ? null : new OnTheWay(
            Money.Sum(open.Select(line => line.Amount.ClampToZero()), nothing.Currency),
            Money.Sum(open.Select(line => (-line.Amount).ClampToZero()), nothing.Currency),
            plan.Expected + last.Difference,
            last.Difference);
    }
}
