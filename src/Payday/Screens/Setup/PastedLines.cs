using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using Payday.Core.Drafts;
using Payday.Core.ItemLines;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Text;

namespace Payday.Screens.Setup;

/// <summary>Lines that are pasted where a household is entered.</summary>
internal static class PastedLines
{
    /// <summary>What is said where a list of lines is full.</summary>
    public static string Full => string.Create(CultureInfo.InvariantCulture, $"There is room for {HouseholdLimits.MostItems} lines: take these first, or forget them with Del.");

    /// <summary>Keeps the lines of a text for their lists, to be taken there: those under a heading such as <c>Pots</c> for that list.</summary>
    /// <param name="work">The household.</param>
    /// <param name="text">The text.</param>
    /// <param name="first">The list of lines before any heading.</param>
    /// <returns>What became of it, a sentence.</returns>
    public static string Add(SetupWork work, string text, ItemSection first)
    {
        ImmutableArray<(ItemSection Section, string Line)> pasted = ItemSections.Of(text, first);
        if (pasted.IsEmpty)
        {
            return "There was no line in it.";
        }

        BegunItems begun = work.Begun;
        var told = new List<string>();
        foreach (SetupList list in SetupList.All)
        {
            string[] own = [.. pasted.Where(line => line.Section == list.Section).Select(line => line.Line)];
            ImmutableArray<string> lines = [.. list.Lines(begun), .. own];
            if (lines.Length > HouseholdLimits.MostItems)
            {
                return $"{Full} Nothing of what was pasted was kept.";
            }

            begun = own.Length == 0 ? begun : list.WithLines(begun, lines);
            if (own.Length > 0)
            {
                told.Add($"{"line".ToQuantity(own.Length)} in {list.Title}");
            }
        }

        work.KeepBegun(begun);
        return $"Pasted: {told.InWords()}. Nothing is taken yet.";
    }
}
