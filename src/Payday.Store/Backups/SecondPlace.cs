using System.Text;

namespace Payday.Store.Backups;

/// <summary>The folder outside the data folder to which backups go too: a mounted disk, say.</summary>
internal static class SecondPlace
{
    /// <summary>The folder, or null where none was named.</summary>
    public static string? Of(StoreFolder folder)
    {
        try
        {
            string path = File.ReadAllText(folder.SecondPlace).Trim();
            return Path.IsPathRooted(path) && !path.Any(char.IsControl) ? path : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Names it; null for none.</summary>
    public static void Set(StoreFolder folder, string? path)
    {
        if (path is null)
        {
            File.Delete(folder.SecondPlace);
            FolderSync.Of(folder.Path);
            return;
        }

        using FileStream file = PrivateFile.Open(folder.SecondPlace, FileShare.None);
        file.SetLength(0);
        file.Write(Encoding.UTF8.GetBytes(path + "\n"));
        DiskSync.Of(file);
        FolderSync.Of(folder.Path);
    }
}
