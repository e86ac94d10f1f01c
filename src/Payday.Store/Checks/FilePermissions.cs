using System.Collections.Immutable;

namespace Payday.Store.Checks;

/// <summary>Who may read what is stored: its owner alone.</summary>
internal static class FilePermissions
{
    private const UnixFileMode Others =
        UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    /// <summary>The folder and the files in it that others may read or write.</summary>
    public static ImmutableArray<string> Loose(StoreFolder folder) => Directory.Exists(folder.Path)
        ? [.. Directory.EnumerateFileSystemEntries(folder.Path, "*", SearchOption.AllDirectories).Prepend(folder.Path).Where(IsLoose)]
        : [];

    /// <summary>Whether others may enter a folder or see what is in it. Where they can't, nothing in it is open to them.</summary>
    public static bool IsOpen(string folder) => IsLoose(folder);

    /// <summary>Takes them from the others.</summary>
    public static IEnumerable<string> Close(StoreFolder folder)
    {
        foreach (string path in Loose(folder))
        {
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(path, File.GetUnixFileMode(path) & ~Others);
            }

            yield return $"{path} is now readable by you alone.";
        }
    }

    private static bool IsLoose(string path) => !OperatingSystem.IsWindows() && (File.GetUnixFileMode(path) & Others) != 0;
}
