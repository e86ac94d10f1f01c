using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Learning;

/// <summary>The pots that a household's own card purchases give to lines of the bank.</summary>
/// <remarks>
/// A line is of a pot where all words of a purchase stand in it and all such purchases were for one pot: what the household decided,
/// and no guess where it decided both ways.
/// </remarks>
public sealed class PotLabels
{
    private readonly List<(List<string> Words, string Pot)> known;
    private readonly Dictionary<string, string?> found = new(StringComparer.Ordinal);

    /// <summary>Learns from a book.</summary>
    public PotLabels(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var pots = book.Household.Pots.ToDictionary(pot => pot.Id, pot => pot.Name);
        known = [];
        foreach (CardPurchase purchase in book.Weeks.StandingPurchases)
        {
            if (purchase.PotId is { } id && pots.TryGetValue(id, out string? name) && LineWords.Of(purchase.What) is { Count: > 0 } words)
            {
                known.Add((words, name));
            }
        }
    }

    /// <summary>The pot of a line; null where it isn't known for sure.</summary>
    public string? Of(StatementLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        string text = $"{line.Party} {line.Text}";
        if (!found.TryGetValue(text, out string? pot))
        {
            HashSet<string> words = [.. LineWords.Of(line.Party, line.Text)];
            string[] pots = [.. known.Where(one => one.Words.All(words.Contains)).Select(one => one.Pot).Distinct(StringComparer.Ordinal)];
            pot = found[text] = pots is [var only] ? only : null;
        }

        return pot;
    }
}
