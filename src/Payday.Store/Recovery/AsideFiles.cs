using System.Globalization;
using Payday.Store.Databases;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>Keeps what is damaged: nothing of a person's is ever deleted because it looks wrong.</summary>
internal static class AsideFiles
{
    /// <summary>Moves the database aside, both its files.</summary>
    /// <returns>Whether there was anything.</returns>
    public static bool MoveDatabase(StoreFolder folder)
    {
        var files = new DatabaseFiles(folder.Database);
        bool isAny = Keep(folder, files.Log, File.Move) | Keep(folder, files.Data, File.Move);
        FolderSync.Of(folder.Path);
        return isAny;
    }

    /// <summary>Keeps a copy of the journal as it is.</summary>
    public static void CopyJournal(StoreFolder folder) => Keep(folder, folder.Journal, Copy);

    /// <summary>The journals kept aside, newest first: some damaged, and those that were there before a store was put back.</summary>
    public static IEnumerable<string> Journals(StoreFolder folder) => Directory.Exists(folder.Aside)
        ? Directory.EnumerateFileSystemEntries(folder.Aside, "*-" + Path.GetFileName(folder.Journal)).OrderDescending(StringComparer.Ordinal)
        : [];

    /// <summary>Whether a journal kept aside has a line.</summary>
    public static bool Hold(StoreFolder folder, JournalLine line) => Journals(folder).Any(path => Has(path, line));

    private static bool Has(string path, JournalLine line)
    {
        try
        {
            JournalScan scan = JournalScan.Read(path);
            return scan.Lines.Concat(scan.Loose).Any(one => one.Sha == line.Sha);
        }
        catch (Exception fault) when (fault is StoreException or IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool Keep(StoreFolder folder, string path, Action<string, string> how)
    {
        if (FileFacts.Of(path).IsNothing)
        {
            return false;
        }

        PrivateFolder.Make(folder.Aside);
        string stamp = folder.Clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture);
        string name = Path.GetFileName(path);
        string target = Path.Combine(folder.Aside, $"{stamp}-{name}");
        for (int i = 2; !FileFacts.Of(target).IsNothing; i++)
        {
            target = Path.Combine(folder.Aside, string.Create(CultureInfo.InvariantCulture, $"{stamp}-{i}-{name}"));
        }

        how(path, target);

        // Before its old place is given up: a rename from folder to folder is two changes to a disk.
        FolderSync.Of(folder.Aside);
        return true;
    }

    private static void Copy(string path, string target)
    {
        File.Copy(path, target);
        using FileStream copy = PrivateFile.Open(target, FileShare.None);
        DiskSync.Of(copy);
    }
}
