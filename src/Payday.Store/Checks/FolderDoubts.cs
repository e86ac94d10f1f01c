using System.Collections.Immutable;
using Payday.Store.Folders;

namespace Payday.Store.Checks;

/// <summary>What about a folder may harm what is stored there, although it can be used: told at each opening, a sentence or two each.</summary>
internal static class FolderDoubts
{
    /// <summary>The doubts; none where the system gives no answer, as they are advice and stand in nobody's way.</summary>
    public static ImmutableArray<string> Of(StoreFolder folder)
    {
        try
        {
            return [.. Eyes(folder), .. Machines(folder), .. Copies(folder)];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static IEnumerable<string> Eyes(StoreFolder folder) => FilePermissions.IsOpen(folder.Path)
        ? [$"Other users of this machine can look into {folder.Path}. Close it to them with payday check --mend."]
        : [];

    private static IEnumerable<string> Machines(StoreFolder folder) => SharedDrive.KindOf(folder.Path) is { } kind
        ? [$"{folder.Path} is on a drive that other machines can reach ({kind}). Payday can't be sure to see another machine that has it open: use it from one machine at a time, or choose a folder on a local disk with --data."]
        : [];

    private static IEnumerable<string> Copies(StoreFolder folder)
    {
        string[] foreign = [.. ForeignCopies.In(folder)];
        return foreign.Length == 0
            ? []
            : [$"{folder.Path} has copies of its files that Payday did not make: {string.Join(", ", foreign)}. If you did not either, the folder is synced between machines, and what was entered on another one may be in them alone. Stop that syncing, put such a copy as payday.journal or payday.db into an empty folder to look at it with --data, then move it away."];
    }
}
