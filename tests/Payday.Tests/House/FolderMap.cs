namespace Payday.Tests.House;

/// <summary>The map of the house in DEVELOPERS.md: the folders of each part, from the bottom up.</summary>
internal static class FolderMap
{
    /// <summary>The folders of a part in the order of the map; the part itself is ".".</summary>
    /// <param name="part">Its folder, such as <c>src/Payday.Core</c>.</param>
    public static IReadOnlyList<string> Of(string part)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Repository.Root, "DEVELOPERS.md"));
        int heading = Array.IndexOf(lines, $"### `{part}`");
        Assert.True(heading >= 0, $"DEVELOPERS.md has no map of {part}.");
        return
        [
            .. lines.Skip(heading + 1)
                .TakeWhile(line => !line.StartsWith('#'))
                .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
                .SelectMany(line => line.Split('|')[1].Split('`').Where((_, i) => i % 2 == 1)),
        ];
    }
}
