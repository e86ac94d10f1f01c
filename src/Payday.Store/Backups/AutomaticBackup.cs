using System.Collections.Immutable;
using Payday.Store.Snapshots;

namespace Payday.Store.Backups;

/// <summary>The backup before a payday is closed. It warns and never stands in the way.</summary>
internal static class AutomaticBackup
{
    /// <summary>Makes a backup in the data folder, and in the second place where one was named.</summary>
    /// <param name="folder">The store.</param>
    /// <param name="upTo">How far the journal is copied.</param>
    /// <returns>What could not be done, a sentence each.</returns>
    public static ImmutableArray<string> Make(StoreFolder folder, JournalPlace upTo)
    {
        var warnings = ImmutableArray.CreateBuilder<string>();
        Try(warnings, folder, upTo, folder.Backups, () => PrivateFolder.Make(folder.Backups));
        if (SecondPlace.Of(folder) is { } second)
        {
            Try(warnings, folder, upTo, second, () => { });
        }

        return warnings.ToImmutable();
    }

    private static void Try(ImmutableArray<string>.Builder warnings, StoreFolder folder, JournalPlace upTo, string into, Action prepare)
    {
        try
        {
            prepare();
            BackupFiles.Make(folder, into, upTo);
            foreach (BackupFile file in BackupLadder.Beyond(BackupFiles.List(into)))
            {
                File.Delete(file.Path);
            }
        }
        catch (StoreException fault)
        {
            warnings.Add(fault.Message);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            warnings.Add(BackupFaults.Sentence(into, fault));
        }
    }
}
