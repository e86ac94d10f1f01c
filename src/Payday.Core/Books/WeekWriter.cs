using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>A book while movements and records are added to it.</summary>
internal sealed class WeekWriter(Book book)
{
    /// <summary>The book as it is so far.</summary>
    public Book Book { get; private set; } = book;

    /// <summary>The number of the next movement.</summary>
    public long Next => Book.Ledger.Movements.Count + 1;

    /// <summary>The number of the last movement.</summary>
    public long Last => Book.Ledger.Movements.Count;

    /// <summary>What an end holds now.</summary>
    public Money this[LedgerEnd end] => Book.Ledger.Balances[end];

    /// <summary>Moves an amount.</summary>
    /// <returns>The number of the movement, or null where the amount is zero.</returns>
    public long? Move(LocalDate date, LedgerEnd from, LedgerEnd to, Money amount, string reason, LocalDate? payday = null)
    {
        if (amount.IsZero)
        {
            return null;
        }

        Add([new Movement(0, date, from, to, amount, reason, payday)]);
        return Last;
    }

    /// <summary>Adds movements as they are.</summary>
    public void Add(IEnumerable<Movement> movements) => Book = Book with { Ledger = Book.Ledger.Add(movements) };

    /// <summary>Changes the records.</summary>
    public void Record(Func<WeekRecords, WeekRecords> change) => Book = Book with { Weeks = change(Book.Weeks) };
}
