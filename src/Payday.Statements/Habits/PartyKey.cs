using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Habits;

/// <summary>Who is on the other side of a line: mandate or creditor, else account, else the words of its name.</summary>
internal static class PartyKey
{
    private const int MostWords = 2;

    /// <summary>The key; empty where nothing says who it is.</summary>
    public static string Of(StatementLine line)
    {
        if (line.Mandate.Length > 0)
        {
            return "M " + line.Mandate;
        }

        if (line.PartyAccount.Length > 0)
        {
            return "A " + line.PartyAccount;
        }

        List<string> words = LineWords.Of(line.Party.Length > 0 ? line.Party : line.Text);
        return string.Join(' ', words.Take(MostWords));
    }

    /// <summary>The name to show: the commonest among the lines.</summary>
    public static string NameOf(IEnumerable<StatementLine> lines) =>
        lines.Select(line => line.Party.Length > 0 ? line.Party : line.Text)
            .CountBy(name => name, StringComparer.Ordinal)
            .OrderByDescending(name => name.Value)
            .ThenBy(name => name.Key.Length)
            .First().Key;
}
