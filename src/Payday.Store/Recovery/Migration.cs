using System.Collections.Immutable;
using System.Globalization;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>Makes a store from before the journal one of this version.</summary>
internal sealed class Migration : IMending
{
    private readonly StoreFolder folder;
    private readonly JournalScan journal;
    private readonly DatabaseState.Sound old;

    private Migration(StoreFolder folder, JournalScan journal, DatabaseState.Sound old) => (this.folder, this.journal, this.old) = (folder, journal, old);

    /// <summary>Decides whether it can be done.</summary>
    /// <exception cref="StoreException">What is in it doesn't add up, or a journal is there that tells something else.</exception>
    public static IMending Of(StoreFolder folder, JournalScan journal, DatabaseState.Sound old)
    {
        bool isKnown = journal.IsWhole && journal.Lines.Any(line => line.Digest == old.Content.Digest);
        if (isKnown && journal.Last!.Digest != old.Content.Digest)
        {
            return new Rebuilding(folder, journal, new DatabaseFault.OldCopy(folder.Database));
        }

        if (!isKnown && !journal.Lines.IsEmpty)
        {
            throw Mending.Undecided(new DatabaseFault.FromBeforeTheJournal(folder.Database, old.Version), journal);
        }

        // Nothing here proves that a store of those versions is undamaged; what doesn't add up must not become its journal.
        ContentBook.Of(folder, old.Content);
        return new Migration(folder, journal, old);
    }

    /// <summary>Copies the database to the backups, begins the journal with all that is in it, and then sets the version.</summary>
    /// <inheritdoc/>
    public ImmutableArray<StoreFault> Do()
    {
        if (journal.IsWhole && journal.Last?.Digest == old.Content.Digest)
        {
            return Marked(folder, journal.Last);
        }

        AsideFiles.CopyJournal(folder);
        string copy = Copy(folder, old.Version);
        ImmutableArray<JournalLine> lines = JournalStart.Lines(old.Content, folder.Clock, BookName.New());
        JournalStart.Write(folder, lines);
        Marked(folder, lines.LastOrDefault());
        return [new MendingNote.BroughtOver(old.Version, StoreVersion.Current, copy)];
    }

    private static ImmutableArray<StoreFault> Marked(StoreFolder folder, JournalLine? last)
    {
        using BookDatabase database = BookDatabase.Open(folder);
        database.Mark(last);
        return [];
    }

    private static string Copy(StoreFolder folder, int version)
    {
        PrivateFolder.Make(folder.Backups);
        string stamp = folder.Clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        string path = Path.Combine(folder.Backups, string.Create(CultureInfo.InvariantCulture, $"payday-{stamp}-version-{version}.db"));
        using FileStream copy = PrivateFile.Open(path, FileShare.None);
        using FileStream database = File.OpenRead(folder.Database);
        database.CopyTo(copy);
        copy.SetLength(copy.Position);
        DiskSync.Of(copy);
        FolderSync.Of(folder.Backups);
        return path;
    }
}
