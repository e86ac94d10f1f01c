using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Status;

/// <summary>A payment that the account here counts as made and that the bank hasn't shown: the person may have to make it yet.</summary>
/// <param name="DebtId">The debt that it goes to, above its minimum.</param>
/// <param name="Amount">Above zero.</param>
/// <param name="Since">The payday that placed it.</param>
/// <param name="Line">The number of the account line that it is a part of.</param>
public sealed record PaymentToMake(DebtId DebtId, Money Amount, LocalDate Since, long Line)
{
    // The form in which it is kept what the person said is paid, by the numbers of its lines: it says nothing of money, and outlives the terminal.
    private const string Form = "paid-yourself";

    /// <summary>Whether the person said that it is paid.</summary>
    public bool IsSaid { get; init; }

    /// <summary>What the last closed payday put on debts above their minimums and waits to be paid: the bank doesn't show it, and the person didn't say so.</summary>
    /// <returns>In the order in which they were placed.</returns>
    public static ImmutableArray<PaymentToMake> Of(Book book) => [.. All(book).Where(payment => !payment.IsSaid)];

    /// <summary>What the last closed payday put on debts above their minimums, as long as the bank doesn't show it.</summary>
    /// <returns>
    /// In the order in which they were placed. One is gone once its account line is at the bank by a reconciliation, once it is undone, and with the next
    /// closing: by then the bank's balance is what tells.
    /// </returns>
    /// <remarks>
    /// Worked out from ledger and reconciliations, so that taking one of those back brings it back too. What is ticked in a reconciliation that is only begun
    /// isn't at the bank yet. Common practice, no source.
    /// </remarks>
    public static ImmutableArray<PaymentToMake> All(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.LastClosed is not { } closed)
        {
            return [];
        }

        Movement[] extra =
        [
            .. book.Ledger.Between(closed.FirstMovement, closed.LastMovement)
                .Where(movement => movement.From == LedgerEnd.InAccount(Purpose.LeftToPlace) && movement.To is LedgerEnd.Owed && book.Ledger.Stands(movement)),
        ];
        if (extra.Length == 0)
        {
            return [];
        }

        AccountLines lines = AccountLines.Of(book);
        ImmutableHashSet<long> shown = AccountLines.AtBank(book);
        return
        [
            .. extra.Select(movement => (Movement: movement, Line: lines[movement.Number]))
                .Where(one => one.Line is { } line && !shown.Contains(line.Number))
                .Select(one => new PaymentToMake(((LedgerEnd.Owed)one.Movement.To).DebtId, one.Movement.Amount, closed.Payday, one.Line!.Number)
                {
                    IsSaid = book.Weeks.FormOf(Form)?.Texts.ContainsKey(Key(one.Movement.Number)) == true,
                    Movement = one.Movement.Number,
                }),
        ];
    }

    /// <summary>The book in which the person says that it is paid; or, where that was said, that it isn't after all.</summary>
    /// <param name="book">The book that it is of.</param>
    public Book Turned(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        ImmutableSortedDictionary<string, string> said = All(book).Where(one => one.Movement == Movement ? !one.IsSaid : one.IsSaid)
            .ToImmutableSortedDictionary(one => Key(one.Movement), _ => "yes", StringComparer.Ordinal);
        return book with { Weeks = book.Weeks.With(new FormDraft(Form, said)) };
    }

    /// <summary>The book in which the person says of all payments to a debt that they are paid, or that they aren't.</summary>
    /// <returns>Null where none waits on it.</returns>
    public static Book? Say(Book book, DebtId debt, bool paid)
    {
        PaymentToMake[] all = [.. All(book).Where(one => one.DebtId == debt)];
        return all.Length == 0 ? null : all.Where(one => one.IsSaid != paid).Aggregate(book, (before, one) => one.Turned(before));
    }

    // Of the ledger, so that two debts of one account line are told apart.
    private long Movement { get; init; }

    private static string Key(long movement) => movement.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
