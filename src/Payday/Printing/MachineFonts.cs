using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace Payday.Printing;

/// <summary>The fonts of the machine, for signs that the fonts of every PDF reader lack.</summary>
/// <remarks>
/// Only TrueType files, and only scripts whose letters stand one by one from left to right: others would be put together
/// wrong, which is worse than a sentence that says so.
/// </remarks>
/// <param name="folders">Where they are, looked through with all folders in them.</param>
internal sealed class MachineFonts(params IReadOnlyList<string> folders)
{
    // Enough for any machine, and quick on those with thousands of them.
    private const int MostFiles = 400;
    private const long LargestFile = 20_000_000;

    private const int MostSigns = 500;

    // Several papers may be drawn at a time.
    private readonly ConcurrentDictionary<string, MachineFont?> known = new(StringComparer.Ordinal);

    /// <summary>Those of the system and of the person.</summary>
    public static MachineFonts OfSystem() => new(
        "/usr/share/fonts",
        "/usr/local/share/fonts",
        "/Library/Fonts",
        "/System/Library/Fonts",
        Environment.GetFolderPath(Environment.SpecialFolder.Fonts),
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "fonts"));

    /// <summary>The font that has the most of some signs; null where none has any.</summary>
    public MachineFont? For(ImmutableArray<char> signs)
    {
        char[] simple = [.. signs.Where(StandsAlone).Order().Take(MostSigns)];
        if (simple.Length == 0)
        {
            return null;
        }

        return known.GetOrAdd(new string(simple), _ => Best(simple));
    }

    private MachineFont? Best(char[] signs)
    {
        MachineFont? found = null;
        foreach (string file in Files())
        {
            if (Read(file, signs) is { Count: > 0 } font && font.Count > (found?.Count ?? 0))
            {
                found = font;
                if (found.Count == signs.Length)
                {
                    break;
                }
            }
        }

        return found;
    }

    // Fixed widths first: their letters fill their columns.
    private IEnumerable<string> Files() => folders
        .Where(Path.IsPathFullyQualified)
        .SelectMany(folder => Directory.Exists(folder)
            ? Directory.EnumerateFiles(folder, "*.ttf", new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 4, IgnoreInaccessible = true, MatchCasing = MatchCasing.CaseInsensitive })
            : [])
        .Take(MostFiles)
        .OrderBy(file => Path.GetFileName(file).Contains("Mono", StringComparison.OrdinalIgnoreCase) ? 0 : 1)
        .ThenBy(file => file.Length)
        .ThenBy(file => file, StringComparer.Ordinal);

    // A font that is damaged, or that the library can't read, is passed over.
    private static MachineFont? Read(string path, char[] signs)
    {
        try
        {
            return new FileInfo(path).Length <= LargestFile ? MachineFont.Read(File.ReadAllBytes(path), signs) : null;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return null;
        }
    }

    private static bool StandsAlone(char sign) => sign switch
    {
        < '\u0300' => true,
        < '\u0370' => false, // marks that go over a letter
        < '\u0590' => true, // Greek, Cyrillic, Armenian
        < '\u10A0' => false, // from Hebrew to Burmese: right to left, or put together
        < '\u1200' => true, // Georgian, Hangul letters
        < '\u1E00' => false,
        < '\uD800' => true, // Latin and Greek with marks, signs, kana, Chinese, Hangul
        < '\uF900' => false, // halves of a sign, private use
        < '\uFB00' => true,
        < '\uFF00' => false,
        _ => true,
    };
}
