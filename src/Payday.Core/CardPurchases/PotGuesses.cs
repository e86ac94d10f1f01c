using Payday.Core.Books;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>Guesses the pots of many purchases from those that a book has.</summary>
internal sealed class PotGuesses
{
    private readonly (CardPurchase Purchase, HashSet<string> Words)[] known;
    private readonly Dictionary<string, PotGuess?> made = new(StringComparer.Ordinal);

    public PotGuesses(Book book)
    {
        HashSet<PotId> pots = [.. book.Household.Pots.Select(pot => pot.Id)];
        known =
        [
            .. book.Weeks.StandingPurchases
                .Where(purchase => purchase is { Amount.IsPositive: true, Whole: null } && (purchase.PotId is not { } pot || pots.Contains(pot)))
                .Select(purchase => (purchase, Words(purchase.What))),
        ];
    }

    /// <summary>The words of a text: runs of two or more letters, whatever their case.</summary>
    public static HashSet<string> Words(string text)
    {
        string letters = string.Concat(text.Select(c => char.IsLetter(c) ? char.ToUpperInvariant(c) : ' '));
        return [.. letters.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word.Length > 1)];
    }

    /// <summary>Whether two texts name the same shop: the same words, or where there are none the same text.</summary>
    public static bool AreOfOneShop(string left, string right) => Words(left) is { Count: > 0 } words
        ? words.SetEquals(Words(right))
        : string.Equals(left.Trim(), right.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc cref="PotGuess.For"/>
    public PotGuess? For(string what)
    {
        if (!made.TryGetValue(what, out PotGuess? guess))
        {
            HashSet<string> words = Words(what);
            guess = made[what] = known
                .Select(pair => (pair.Purchase, Shared: pair.Words.Count(words.Contains), All: pair.Words.Count))
                .Where(pair => pair.Shared > 0)
                .OrderByDescending(pair => (decimal)pair.Shared / (pair.All + words.Count - pair.Shared))
                .ThenByDescending(pair => pair.Purchase.Number)
                .Select(pair => new PotGuess(pair.Purchase.PotId, pair.Purchase.Number))
                .FirstOrDefault();
        }

        return guess;
    }
}
