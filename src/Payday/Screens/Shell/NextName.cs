namespace Payday.Screens.Shell;

/// <summary>Going to a name by its first letter.</summary>
internal static class NextName
{
    /// <summary>The place of the next name that begins with a text, after a place and round from the first; that place where there is none.</summary>
    public static int From(IReadOnlyList<string> names, int after, string text) => Enumerable.Range(1, names.Count)
        .Select(step => (after + step) % names.Count)
        .FirstOrDefault(place => names[place].StartsWith(text, StringComparison.OrdinalIgnoreCase), after);
}
