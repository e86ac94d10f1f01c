using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Cards;

/// <summary>What a purchase is for, as an answer names it: a pot, or several with their amounts.</summary>
internal static class PotChoices
{
    /// <summary>The pots and the buffer.</summary>
    public static NamedChoice<PotId?> Of(Book book) =>
        new([.. book.Household.Pots.Select(pot => (CleanText.OneLine(pot.Name), (PotId?)pot.Id)), (Name(book, null), null)]);

    /// <summary>What a pot is called in an answer.</summary>
    public static string Name(Book book, PotId? pot) => CleanText.OneLine(WeekText.PotName(book, pot));

    /// <summary>Writes parts so that <see cref="Read"/> reads them.</summary>
    /// <param name="book">The book.</param>
    /// <param name="parts">One at least; a part whose amount is null has the rest.</param>
    /// <param name="style">How the household writes numbers.</param>
    public static string Written(Book book, ImmutableArray<SaidPart> parts, NumberStyle style) =>
        string.Join("; ", parts.Select(part => Name(book, part.PotId) + (part.Amount is { } amount ? $"={amount.ToString(style)}" : "")));

    /// <summary>Reads <c>Food</c>, or <c>Food=40; Fares</c>: a pot without an amount has the rest, its amount is null.</summary>
    /// <remarks>A semicolon stands between pots, as an amount may have a comma.</remarks>
    /// <param name="book">The book.</param>
    /// <param name="text">The answer.</param>
    /// <param name="style">How the household writes numbers.</param>
    /// <param name="parts">What was read, one part at least where nothing is wrong.</param>
    /// <returns>What is wrong, one sentence; or null.</returns>
    public static string? Read(Book book, string text, NumberStyle style, out ImmutableArray<(PotId? PotId, Money? Amount)> parts)
    {
        NamedChoice<PotId?> pots = Of(book);
        string? fault = pots.Find(text.Trim(), out PotId? whole);
        parts = [(whole, null)];
        if (fault is null || !text.Contains('=', StringComparison.Ordinal))
        {
            return fault;
        }

        parts = [];
        foreach (string part in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            int at = part.LastIndexOf('=');
            if (pots.Find(at < 0 ? part : part[..at].Trim(), out PotId? pot) is { } unknown)
            {
                return unknown;
            }

            if (at < 0)
            {
                parts = parts.Add((pot, null));
                continue;
            }

            Result<Money> amount = Money.ParseSum(part[(at + 1)..], book.Household.Currency, style);
            if (!amount.Ok)
            {
                return FaultTexts.Of(amount.Fault, style);
            }

            parts = parts.Add((pot, amount.Value));
        }

        return null;
    }
}
