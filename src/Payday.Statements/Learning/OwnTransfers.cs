using System.Collections.Immutable;
using NodaTime;
using Payday.Statements.Lines;

namespace Payday.Statements.Learning;

/// <summary>Lines that only move money between the accounts that are read: neither income nor spending.</summary>
internal static class OwnTransfers
{
    // A transfer reaches the other account within a working day or two, over a weekend within five.
    private const int MostDays = 5;

    /// <summary>The histories without such lines.</summary>
    /// <remarks>
    /// A line is one where it names another of the accounts, or where a card's account has the same amount the other way within five
    /// days: what pays a card's bill isn't spent a second time. Each line of a card answers one line.
    /// </remarks>
    public static ImmutableArray<AccountHistory> TakenOut(ImmutableArray<AccountHistory> histories)
    {
        var own = new HashSet<StatementLine>(ReferenceEqualityComparer.Instance);
        var accounts = histories.Select(history => history.Account).Where(account => account.Length > 0).ToHashSet(StringComparer.OrdinalIgnoreCase);
        own.UnionWith(histories.SelectMany(history => history.Lines.Where(line => accounts.Contains(line.PartyAccount) && line.PartyAccount != history.Account)));
        foreach (AccountHistory card in histories.Where(history => history.IsCard))
        {
            foreach (StatementLine paid in card.Lines.Where(line => line.Amount.IsPositive))
            {
                if (histories.Where(other => !other.IsCard && other.Currency == card.Currency)
                    .SelectMany(other => other.Lines)
                    .Where(line => !own.Contains(line) && line.Amount == -paid.Amount && Math.Abs(Period.DaysBetween(line.Date, paid.Date)) <= MostDays)
                    .MinBy(line => Math.Abs(Period.DaysBetween(line.Date, paid.Date))) is { } answer)
                {
                    own.Add(paid);
                    own.Add(answer);
                }
            }
        }

        return [.. histories.Select(history => history with { Lines = history.Lines.RemoveAll(own.Contains) })];
    }
}
