using System.Globalization;
using System.Text;

namespace Payday.Core.Drafts;

/// <summary>The id of a source, bill, debt or pot: what the ledger calls it, whatever its name becomes.</summary>
public static class ItemId
{
    private const int LongestBase = 50;

    /// <summary>Whether it is made of lower-case ASCII letters and digits, in groups joined by single hyphens.</summary>
    public static bool IsValid(string id) =>
        id.Length is >= 1 and <= HouseholdLimits.LongestId && id.Split('-').All(group => group.Length > 0 && group.All(IsPlain));

    /// <summary>An id after a name, different from those taken; it joins them.</summary>
    /// <param name="name">Any name.</param>
    /// <param name="noun">What to call it where the name has no plain letter or digit.</param>
    /// <param name="taken">The ids there are.</param>
    public static string From(string name, string noun, HashSet<string> taken)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(taken);
        var plain = new StringBuilder();
        foreach (char c in name.ToLowerInvariant())
        {
            if (IsPlain(c))
            {
                plain.Append(c);
            }
            else if (plain.Length > 0 && plain[^1] != '-')
            {
                plain.Append('-');
            }
        }

        string stem = plain.ToString(0, Math.Min(plain.Length, LongestBase)).Trim('-');
        stem = stem.Length == 0 ? noun : stem;
        string id = stem;
        for (int next = 2; !taken.Add(id); next++)
        {
            id = string.Create(CultureInfo.InvariantCulture, $"{stem}-{next}");
        }

        return id;
    }

    private static bool IsPlain(char c) => c is (>= 'a' and <= 'z') or (>= '0' and <= '9');
}
