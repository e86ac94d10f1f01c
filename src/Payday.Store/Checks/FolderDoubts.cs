using System.Collections.Immutable;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Checks;

/// <summary>What about a folder may harm what is stored there, although it can be used: told at each opening.</summary>
internal static class FolderDoubts
{
    /// <summary>The doubts; none where the system gives no answer, as they are advice and stand in nobody's way.</summary>
    public static ImmutableArray<StoreFault> Of(StoreFolder folder)
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

    private static IEnumerable<StoreFault> Eyes(StoreFolder folder) => FilePermissions.IsOpen(folder.Path)
        ? [new FolderDoubt.OpenToOthers(folder.Path)]
        : [];

    private static IEnumerable<StoreFault> Machines(StoreFolder folder) => SharedDrive.KindOf(folder.Path) is { } kind
        ? [new FolderDoubt.OnSharedDrive(folder.Path, kind)]
        : [];

    private static IEnumerable<StoreFault> Copies(StoreFolder folder)
    {
        string[] foreign = [.. ForeignCopies.In(folder)];
        return foreign.Length == 0
            ? []
            : [new FolderDoubt.HasForeignCopies(folder.Path, [.. foreign])];
    }
}
