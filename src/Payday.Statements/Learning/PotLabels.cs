using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Statements.Lines;
using Payday.Statements.Taking;
using Payday.Statements.Texts;

namespace Payday.Statements.Learning;

/// <summary>The pots that a household's own decisions give to lines of the bank: its rules, what such lines became before, its card purchases.</summary>
/// <remarks>
/// By a purchase a line is of a pot where all words of the purchase stand in it and all such purchases were for one pot: no guess
/// where the household decided both ways.
/// </remarks>
public sealed class PotLabels
{
    private readonly Book book;
    private readonly PartyHabits habits;
    private readonly List<(List<string> Words, string Pot)> purchases = [];
    private readonly Dictionary<(string Words, string Mandate), string?> found = [];

    /// <summary>Learns from a book.</summary>
    public PotLabels(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        this.book = book;
        habits = new PartyHabits(book);
        var pots = book.Household.Pots.ToDictionary(pot => pot.Id, pot => pot.Name);
        foreach (CardPurchase purchase in book.Weeks.StandingPurchases)
        {
            if (purchase.PotId is { } id && pots.TryGetValue(id, out string? name) && LineWords.Of(purchase.What) is { Count: > 0 } words)
            {
                purchases.Add((words, name));
            }
        }
    }

    /// <summary>The pot of a line; null where it isn't known for sure.</summary>
    public string? Of(StatementLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        (string, string) key = ($"{line.Party} {line.Text} {line.Amount.IsPositive}", PartyHabits.MandateOf(line));
        if (!found.TryGetValue(key, out string? pot))
        {
            LineTarget? target = RuleMatch.Of(book.Weeks.StatementRules, line)?.Target ?? habits.Of(line)?.Target;
            pot = found[key] = target is null ? ByPurchases(line) : NameOf(target);
        }

        return pot;
    }

    private string? NameOf(LineTarget target) =>
        book.Household.Pots.FirstOrDefault(pot => target.Use == LineUse.For && MoveEnds.OfPot(pot) == target.End)?.Name;

    private string? ByPurchases(StatementLine line)
    {
        HashSet<string> words = [.. LineWords.Of(line.Party, line.Text)];
        string[] pots = [.. purchases.Where(one => one.Words.TrueForAll(words.Contains)).Select(one => one.Pot).Distinct(StringComparer.Ordinal)];
        return pots is [var only] ? only : null;
    }
}
