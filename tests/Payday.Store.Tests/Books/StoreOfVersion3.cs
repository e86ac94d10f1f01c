using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

/// <summary>
/// A store as a program left it whose hashes were OpenSSL's: journal, database and a backup of the demo household
/// after its first payday and a card purchase, three changes.
/// </summary>
internal static class StoreOfVersion3
{
    private const string Journal = "version-3.journal.gz";

    /// <summary>Puts it in a folder.</summary>
    public static void CopyTo(StoreFolder folder)
    {
        folder.Make();
        KeptFile.Unpack(Journal, folder.Journal);
        KeptFile.Unpack("version-3.db.gz", folder.Database);
    }

    /// <summary>Puts its backup in a folder.</summary>
    /// <returns>The backup's path.</returns>
    public static string CopyBackupTo(StoreFolder folder)
    {
        Directory.CreateDirectory(folder.Backups);
        string backup = Path.Combine(folder.Backups, "payday-20261128T003908Z-3.journal.gz");
        File.Copy(KeptFile.PathOf(Journal), backup);
        return backup;
    }
}
