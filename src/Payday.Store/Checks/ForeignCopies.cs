using Payday.Store.Folders;

namespace Payday.Store.Checks;

/// <summary>Copies of database or journal beside them, as programs leave that sync a folder which changed on two machines at once.</summary>
internal static class ForeignCopies
{
    // All that Payday itself puts beside its lock.
    private static readonly HashSet<string> Ours = new(StringComparer.Ordinal)
    {
        "payday.db", "payday-log.db", "payday-new.db", "payday-new-log.db", "payday.journal", "payday-new.journal",
    };

    /// <summary>The names of the copies in a folder, in order.</summary>
    public static IEnumerable<string> In(StoreFolder folder) =>
        Directory.EnumerateFiles(folder.Path, "*payday*").Select(path => Path.GetFileName(path)).Where(IsCopy).Order(StringComparer.Ordinal);

    /// <summary>Whether a name is that of a database or journal with something put before, into or after it.</summary>
    public static bool IsCopy(string name) =>
        !Ours.Contains(name) && (name.Contains(".db", StringComparison.OrdinalIgnoreCase) || name.Contains(".journal", StringComparison.OrdinalIgnoreCase));
}
