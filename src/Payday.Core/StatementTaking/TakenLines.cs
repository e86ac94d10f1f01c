using System.Collections.Immutable;
using Payday.Core.Books;

namespace Payday.Core.StatementTaking;

/// <summary>The lines of the bank's that a book knows by the statements that were taken.</summary>
public static class TakenLines
{
    /// <summary>Each line once, by its day: one that was left and taken later as it is now.</summary>
    public static ImmutableArray<TakenLine> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var known = new List<TakenLine>();
        foreach (TakenLine line in book.Weeks.StandingTakings.SelectMany(taking => taking.Lines))
        {
            if (line.WasLeft && known.FindIndex(other => other.IsLeft && IsSame(other, line)) is >= 0 and var at)
            {
                known.RemoveAt(at);
            }

            known.Add(line);
        }

        return [.. known.OrderBy(line => line.Date)];
    }

    /// <summary>The statements that were taken, by their days.</summary>
    public static ImmutableArray<TakenStatement> Statements(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.Weeks.StandingTakings.SelectMany(taking => taking.Statements).OrderBy(one => one.From).ThenBy(one => one.To)];
    }

    private static bool IsSame(TakenLine one, TakenLine other) =>
        (one.Date, one.Amount, one.Party, one.Text) == (other.Date, other.Amount, other.Party, other.Text);
}
