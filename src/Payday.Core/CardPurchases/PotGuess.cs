using Payday.Core.Books;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>A pot guessed for a purchase.</summary>
/// <param name="PotId">The pot, or null for the buffer.</param>
/// <param name="LikeNumber">The number of the earlier purchase that it is like.</param>
public sealed record PotGuess(PotId? PotId, long LikeNumber)
{
    /// <summary>
    /// The pot of the earlier purchase whose words are most like these; the latest of equals. Null where no word of two
    /// or more letters is shared, or the pot is gone.
    /// </summary>
    /// <remarks>
    /// Words are runs of letters; numbers such as those of a card or a branch say nothing. Likeness is the number of
    /// shared words over the number of all (common practice for comparing sets of words).
    /// </remarks>
    public static PotGuess? For(Book book, string what)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(what);
        return new PotGuesses(book).For(what);
    }
}
