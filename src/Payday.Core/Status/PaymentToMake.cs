using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Reconciling;

namespace Payday.Core.Status;

/// <summary>A payment that the account here counts as made and that the bank hasn't shown: the person may have to make it yet.</summary>
/// <param name="DebtId">The debt that it goes to, above its minimum.</param>
/// <param name="Amount">Above zero.</param>
/// <param name="Since">The payday that placed it.</param>
/// <param name="Line">The number of the account line that it is a part of.</param>
public sealed record PaymentToMake(DebtId DebtId, Money Amount, LocalDate Since, long Line)
{
    /// <summary>What the last closed payday put on debts above their minimums, as long as the bank doesn't show it.</summary>
    /// <returns>
    /// In the order in which they were placed. One is gone once its account line is at the bank by a reconciliation or is ticked for the next one, once it is
    /// undone, and with the next closing: by then the bank's balance is what tells.
    /// </returns>
    /// <remarks>Worked out from ledger and reconciliations alone, so that taking one of those back brings it back too. Common practice, no source.</remarks>
    public static ImmutableArray<PaymentToMake> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.LastClosed is not { } closed)
        {
            return [];
        }

        Movement[] extra =
        [
            .. book.Ledger.Movements
                .Skip((int)closed.FirstMovement - 1)
                .Take((int)(closed.LastMovement - closed.FirstMovement + 1))
                .Where(movement => movement.From == LedgerEnd.InAccount(Purpose.LeftToPlace) && movement.To is LedgerEnd.Owed && book.Ledger.Stands(movement)),
        ];
        if (extra.Length == 0)
        {
            return [];
        }

        AccountLines lines = AccountLines.Of(book);
        ImmutableHashSet<long> shown = AccountLines.AtBank(book);
        if (book.Weeks.Reconciling is { } begun)
        {
            shown = shown.Union(begun.AtBank);
        }

        return
        [
            .. extra.Select(movement => (Movement: movement, Line: lines[movement.Number]))
                .Where(one => one.Line is { } line && !shown.Contains(line.Number))
                .Select(one => new PaymentToMake(((LedgerEnd.Owed)one.Movement.To).DebtId, one.Movement.Amount, closed.Payday, one.Line!.Number)),
        ];
    }

    /// <summary>The book in which its account line is ticked for the next reconciliation, which goes on where it was begun.</summary>
    /// <param name="book">The book, in which it waits.</param>
    /// <param name="today">The day of a reconciliation that begins with it.</param>
    public Book Ticked(Book book, LocalDate today) => ReconciliationPlan.Of(book, today).Tick(Line) is { Ok: true, Value: { } plan } ? plan.Kept() : book;
}
