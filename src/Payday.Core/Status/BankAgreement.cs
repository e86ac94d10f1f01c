using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Reconciling;

namespace Payday.Core.Status;

/// <summary>What came of the last reconciliation.</summary>
/// <param name="Date">The day of the bank's balance.</param>
/// <param name="Difference">By how much the bank had more, or less where it is below zero, than it should; zero where they agreed.</param>
/// <param name="Name">What the person calls the difference; empty for nothing.</param>
/// <param name="IsExplained">Whether there is none, or what was entered since explains it; see <see cref="OpenDifference"/>.</param>
public sealed record BankAgreement(LocalDate Date, Money Difference, string Name, bool IsExplained)
{
    /// <summary>What came of the last one of a book; null where the account was never held against the bank.</summary>
    public static BankAgreement? Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.StandingReconciliations.LastOrDefault() is { } last
            ? new BankAgreement(last.Date, last.Difference, last.Name, OpenDifference.IsExplained(book, last))
            : null;
    }
}
