namespace Payday.Texts;

/// <summary>What somebody may have meant who wrote a name that there isn't; offered, never taken.</summary>
internal static class Misspelling
{
    // Words of up to five letters one slip, of up to eight two, longer ones three.
    private const int LettersPerSlip = 3;
    private const int MostSlips = 3;

    /// <summary>The names nearest to what was written: those that begin so, else those with the fewest slips.</summary>
    /// <returns>In the order in which they are known; none where all are too far off.</returns>
    public static string[] Near(string written, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(written);
        string[] names = [.. known.Distinct()];
        string given = written.Trim();
        string[] begin = given.Length == 0 ? [] : [.. names.Where(name => name.StartsWith(given, StringComparison.OrdinalIgnoreCase))];
        if (begin.Length > 0)
        {
            return begin;
        }

        (string Name, int Slips)[] near = [.. names.Select(name => (name, Slips(given.ToUpperInvariant(), name.ToUpperInvariant()))).Where(one => one.Item2 <= Allowed(given))];
        return near.Length == 0 ? [] : [.. near.Where(one => one.Slips == near.Min(other => other.Slips)).Select(one => one.Name)];
    }

    /// <summary>A sentence that offers them, with a blank before it; empty where there is nothing to offer.</summary>
    public static string Offer(string written, IEnumerable<string> known) =>
        Near(written, known) is { Length: > 0 } near ? " " + Said(near) : "";

    /// <summary>A sentence that offers some names.</summary>
    public static string Said(IEnumerable<string> names) => $"Did you mean {string.Join(" or ", names.Select(name => $"\"{name}\""))}?";

    private static int Allowed(string written) => Math.Clamp(written.Length / LettersPerSlip, 1, MostSlips);

    // Optimal string alignment: letters left out, put in, taken for others, and two neighbours swapped, one slip each
    // (Damerau 1964; the table after Wagner and Fischer 1974).
    private static int Slips(string one, string other)
    {
        int[,] slips = new int[one.Length + 1, other.Length + 1];
        for (int i = 0; i <= one.Length; i++)
        {
            for (int j = 0; j <= other.Length; j++)
            {
                slips[i, j] = i == 0 || j == 0 ? i + j : Math.Min(
                    Math.Min(slips[i - 1, j], slips[i, j - 1]) + 1,
                    slips[i - 1, j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                {
                    slips[i, j] = Math.Min(slips[i, j], slips[i - 2, j - 2] + 1);
                }
            }
        }

        return slips[one.Length, other.Length];
    }
}
