using Payday.Core.Households;

namespace Payday.Core.Weeks;

/// <summary>A pot guessed for a purchase.</summary>
/// <param name="PotId">The pot, or null for the buffer.</param>
/// <param name="LikeNumber">The number of the earlier purchase that it is like.</param>
public sealed record PotGuess(string? PotId, long LikeNumber)
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
        HashSet<string> words = Words(what);
        HashSet<string> pots = [.. book.Household.Pots.Select(pot => pot.Id)];
        return book.Weeks.StandingPurchases
            .Where(purchase => purchase.PotId is null || pots.Contains(purchase.PotId))
            .Select(purchase => (purchase, Theirs: Words(purchase.What)))
            .Select(pair => (pair.purchase, Shared: pair.Theirs.Count(words.Contains), All: pair.Theirs.Union(words).Count()))
            .Where(pair => pair.Shared > 0)
            .OrderByDescending(pair => (decimal)pair.Shared / pair.All)
            .ThenByDescending(pair => pair.purchase.Number)
            .Select(pair => new PotGuess(pair.purchase.PotId, pair.purchase.Number))
            .FirstOrDefault();
    }

    private static HashSet<string> Words(string text)
    {
        string letters = string.Concat(text.Select(c => char.IsLetter(c) ? char.ToUpperInvariant(c) : ' '));
        return [.. letters.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word.Length > 1)];
    }
}
