using System.Collections.Immutable;

namespace Payday.Core.ItemLines;

/// <summary>Parts a text into the lines of a household's lists: a line such as <c>Bills</c> or <c>Pots:</c> says what those below it are.</summary>
public static class ItemSections
{
    private static readonly ImmutableDictionary<string, ItemSection> Headings = ImmutableDictionary.CreateRange(
        StringComparer.OrdinalIgnoreCase,
        [
            KeyValuePair.Create("income", ItemSection.Sources),
            KeyValuePair.Create("incomes", ItemSection.Sources),
            KeyValuePair.Create("income source", ItemSection.Sources),
            KeyValuePair.Create("income sources", ItemSection.Sources),
            KeyValuePair.Create("sources", ItemSection.Sources),
            KeyValuePair.Create("pay", ItemSection.Sources),
            KeyValuePair.Create("bill", ItemSection.Bills),
            KeyValuePair.Create("bills", ItemSection.Bills),
            KeyValuePair.Create("debt", ItemSection.Debts),
            KeyValuePair.Create("debts", ItemSection.Debts),
            KeyValuePair.Create("pot", ItemSection.Pots),
            KeyValuePair.Create("pots", ItemSection.Pots),
        ]);

    /// <summary>The lines in their order, each with the list that it is for; empty lines and headings are left out, and marks of a list before a line.</summary>
    /// <param name="text">The text; lines end as any system ends them.</param>
    /// <param name="first">The list of lines before any heading.</param>
    public static ImmutableArray<(ItemSection Section, string Line)> Of(string text, ItemSection first)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = ImmutableArray.CreateBuilder<(ItemSection, string)>();
        ItemSection section = first;
        foreach (string raw in text.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            string line = Bare(raw);
            if (Headings.TryGetValue(line.TrimEnd(':', ' '), out ItemSection named))
            {
                section = named;
            }
            else if (line.Length > 0)
            {
                lines.Add((section, line));
            }
        }

        return lines.ToImmutable();
    }

    private static string Bare(string line) =>
        line.Length > 1 && line[0] is '-' or '*' or '•' or '#' && line[1] == ' ' ? line[1..].TrimStart() : line == "-" ? "" : line;
}
