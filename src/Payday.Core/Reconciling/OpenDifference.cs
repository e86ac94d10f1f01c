using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;

namespace Payday.Core.Reconciling;

/// <summary>Whether the difference of a reconciliation is explained since (design, rule 14); until then it stays in view.</summary>
public static class OpenDifference
{
    /// <summary>
    /// Whether what was entered since explains it: an account line of its amount, or all lines together, that the bank hasn't
    /// shown and that is of the reconciliation's day or before. A later day's can't be in that day's balance.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="last">Its last reconciliation that stands.</param>
    public static bool IsExplained(Book book, Reconciliation last)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(last);
        if (last.Difference.IsZero)
        {
            return true;
        }

        if (last.LastMovement is not { } before)
        {
            return false;
        }

        Money[] since = [.. AccountLines.Of(book).All.Where(line => line.Movements.All(number => number > before) && line.Date <= last.Date).Select(line => line.Amount)];
        return since.Contains(last.Difference) || Money.Sum(since, last.Difference.Currency) == last.Difference;
    }
}
