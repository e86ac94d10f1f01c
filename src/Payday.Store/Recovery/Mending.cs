using System.Collections.Immutable;
using System.Globalization;
using Payday.Store.Backups;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>Brings database and journal of a folder back together, each from the other, or says why it can't be decided.</summary>
/// <remarks>
/// A change is synced to the journal first, to the database second, and acknowledged third. So a line that the
/// database has was acknowledged or about to be, and a last line that is not whole was never acknowledged where a
/// sound database doesn't have it. Whatever is taken from its place is kept in <see cref="StoreFolder.Aside"/>.
/// </remarks>
internal static class Mending
{
    /// <summary>Mends a folder whose lock is held. Killed at any moment, it begins anew the next time.</summary>
    /// <returns>What was wrong and was done, a sentence each; none where there was nothing to tell.</returns>
    /// <exception cref="StoreException">It can't be decided, or not be done; nothing was changed.</exception>
    public static ImmutableArray<string> Mend(StoreFolder folder)
    {
        JournalScan journal = JournalScan.Read(folder.Journal);
        return DatabaseState.Read(folder) switch
        {
            DatabaseState.Sound { Version: < Schema.FirstWithJournal } old => Migration.CarryForward(folder, journal, old),
            DatabaseState.Sound sound => new JournalMending(folder, journal, sound).Mend(),
            DatabaseState.Damaged damaged when journal.Length == 0 && BackupFiles.List(folder.Backups).IsEmpty =>
                throw new StoreException(damaged.Refusal) { IsDamage = true },
            DatabaseState.Damaged damaged => Rebuild(folder, journal, damaged.Reason),
            _ => journal.Length > 0 || BackupFiles.List(folder.Backups).Length > 0
                ? Rebuild(folder, journal, $"{folder.Database} is missing.")
                : Begin(folder),
        };
    }

    /// <summary>Makes the database anew, where it fails although it could be read; the journal is whole then.</summary>
    public static ImmutableArray<string> Rebuild(StoreFolder folder) =>
        Rebuild(folder, JournalScan.Read(folder.Journal), $"{folder.Database} is damaged.");

    /// <summary>Makes the database anew from the journal.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="journal">Its journal.</param>
    /// <param name="reason">What is wrong with the database.</param>
    public static ImmutableArray<string> Rebuild(StoreFolder folder, JournalScan journal, string reason)
    {
        if (journal.Length == 0)
        {
            throw new StoreException($"{reason} There is no journal to rebuild it from, but there are backups: see payday restore. Nothing was changed.") { IsDamage = true };
        }

        if (!journal.IsWhole)
        {
            throw Undecided(folder, reason, journal);
        }

        // A backup that goes on from where the journal ends: then the journal is an old copy.
        if (BackupFiles.GoingOn(folder, journal.Last) is { } backup)
        {
            throw Undecided(folder, reason, journal, $" A backup goes on to change {backup.Number}.");
        }

        BookContent content;
        try
        {
            content = journal.Content();
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            throw Undecided(folder, reason, journal);
        }

        string kept = AsideFiles.MoveDatabase(folder) ? $" What was there is kept in {folder.Aside}." : "";
        BookDatabase.Create(folder, content, journal.Last);
        return [string.Create(CultureInfo.InvariantCulture, $"{reason} It was rebuilt from the journal, up to {journal.Last}; nothing is lost.{kept}")];
    }

    /// <summary>That a person has to choose.</summary>
    public static StoreException Undecided(StoreFolder folder, string reason, JournalScan journal, string more = "")
    {
        string told = journal.Last is null ? "none of it can be read" : $"it is sound up to {journal.Last}";
        string damage = journal.IsWhole ? "" : $" and damaged after that, {journal.Length - journal.SoundLength} bytes";
        return new StoreException(
            $"{reason} The journal can't settle it: {told}{damage}.{more} Nothing was changed; look at what there is with payday restore, and choose.") { IsDamage = true };
    }

    private static ImmutableArray<string> Begin(StoreFolder folder)
    {
        BookDatabase.Create(folder, new BookContent(), null);
        return [];
    }
}
