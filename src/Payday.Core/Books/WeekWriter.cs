using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>A book while movements and records are added to it.</summary>
/// <remarks>Movements wait until the book is asked for, so that many are added to its ledger at once.</remarks>
internal sealed class WeekWriter(Book book)
{
    private readonly List<Movement> waiting = [];
    private Book written = book;

    /// <summary>The book as it is so far.</summary>
    public Book Book
    {
        get
        {
            if (waiting.Count > 0)
            {
                written = written with { Ledger = written.Ledger.Add(waiting) };
                waiting.Clear();
            }

            return written;
        }
    }

    /// <summary>The number of the next movement.</summary>
    public long Next => Last + 1;

    /// <summary>The number of the last movement.</summary>
    public long Last => written.Ledger.Movements.Count + waiting.Count;

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

        waiting.Add(new Movement(Next, date, from, to, amount, reason, payday));
        return Last;
    }

    /// <summary>Adds movements as they are.</summary>
    public void Add(IEnumerable<Movement> movements) => waiting.AddRange(movements);

    /// <summary>Changes the records.</summary>
    public void Record(Func<WeekRecords, WeekRecords> change) => written = written with { Weeks = change(written.Weeks) };
}
