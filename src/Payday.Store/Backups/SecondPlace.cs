using System.Text;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Backups;

/// <summary>The folder outside the data folder to which backups go too: a mounted disk, say.</summary>
internal static class SecondPlace
{
    // PATH_MAX of Linux, several times over.
    private const int LongestPath = 64 * 1024;

    /// <summary>The folder exactly as it was named, blanks at its ends too; null where none was named.</summary>
    public static string? Of(StoreFolder folder)
    {
        try
        {
            FileFacts facts = FileFacts.Of(folder.SecondPlace);
            if (!StrangeFiles.IsFile(facts.Kind) || facts.Length > LongestPath)
            {
                return null;
            }

            string text = File.ReadAllText(folder.SecondPlace);
            string path = text.EndsWith('\n') ? text[..^1] : text;
            return Path.IsPathRooted(path) ? path : null;
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
