using System.Globalization;
using Payday.Core.Drafts;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Learning;

/// <summary>What to call the other side of lines: its name as a person would write it, without the bank's numbers.</summary>
internal static class PartyName
{
    private const int MostWords = 5;

    // Shorter ones in capitals are mostly abbreviations.
    private const int LongestAbbreviation = 3;

    /// <summary>The commonest name among lines, at most as long as a name of a household's item; empty where none says one.</summary>
    public static string Of(IEnumerable<StatementLine> lines) => lines
        .Select(Of)
        .Where(name => name.Length > 0)
        .GroupBy(name => name, StringComparer.OrdinalIgnoreCase)
        .OrderByDescending(name => name.Count())
        .ThenBy(name => name.Key.Length)
        .ThenBy(name => name.Key, StringComparer.Ordinal)
        .Select(name => name.Order(StringComparer.Ordinal).Last())
        .FirstOrDefault("");

    private static string Of(StatementLine line)
    {
        string[] words = (line.Party.Length > 0 ? line.Party : line.Text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string[] named = [.. words.Where(word => !word.Any(char.IsDigit) && word.Any(char.IsLetter))];

        // What a bank puts before a name that stands in the text: of a party's own name nothing is left out.
        string[] kept = line.Party.Length > 0 ? named : [.. named.SkipWhile(LineWords.IsIdle)];
        kept = kept.Length > 0 ? kept : named.Length > 0 ? named : words;
        bool isShouted = kept.All(word => !word.Any(char.IsLower));
        string name = string.Join(' ', kept.Take(MostWords).Select(word => isShouted ? Spoken(word) : word));
        return new StringInfo(name).LengthInTextElements <= HouseholdLimits.LongestName && name.Length <= HouseholdLimits.LongestName
            ? name
            : name[..HouseholdLimits.LongestName].TrimEnd();
    }

    private static string Spoken(string word) => word.Length <= LongestAbbreviation ? word : word[0] + word[1..].ToLowerInvariant();
}
