using Payday.Core.Amounts;
using Payday.Core.Books;

namespace Payday.Core.Fills;

/// <summary>Whether the bank has yet to give the notes of the last closed payday.</summary>
public static class ToFetch
{
    /// <summary>What the slip of the last closed payday asks for, as long as nothing shows that it was fetched; null where it asks for nothing.</summary>
    /// <remarks>
    /// Nobody says "I was at the bank": a fill of that payday that is done or skipped by a person, or notes given otherwise than asked for, show it.
    /// Common practice, no source.
    /// </remarks>
    public static Money? Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.LastClosed is not { Withdraw.IsEmpty: false } closed || book.Weeks.ReceivedOn(closed.Payday) is not null)
        {
            return null;
        }

        FillKey[] marked = [.. closed.Parts
            .Where(part => book.Weeks.MarksOf(part.PotId)[closed.Payday, part.Week] is not null)
            .Select(part => new FillKey(closed.Payday, part.Week, part.PotId))];
        return marked.Length == 0 || marked.All(AssumedFills.Of(book).Select(part => part.Key).Contains)
            ? closed.Withdraw.Worth(book.Household.Currency)
            : null;
    }
}
