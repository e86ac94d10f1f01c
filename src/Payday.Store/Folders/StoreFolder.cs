using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>The files of a data folder.</summary>
/// <param name="Path">The folder.</param>
public sealed record StoreFolder(string Path)
{
    /// <summary>The database.</summary>
    public string Database => In("payday.db");

    /// <summary>The file whose lock says that a process writes. It stays, empty, so that its lock is always the same one.</summary>
    public string Lock => In("payday.lock");

    /// <summary>The journal: every change, a line each.</summary>
    public string Journal => In("payday.journal");

    /// <summary>Where backups are.</summary>
    public string Backups => In("backups");

    /// <summary>Holds the path of the folder to which backups go too.</summary>
    internal string SecondPlace => In("payday.backup-to");

    /// <summary>A household that is being set up for the first time; there until it is begun.</summary>
    internal string Start => In("start.json");

    /// <summary>The same while it is being written; it takes its own name once it is whole.</summary>
    internal string UnfinishedStart => In("start.json.new");

    /// <summary>Where damaged files are kept that others took the place of.</summary>
    public string Aside => In("aside");

    /// <summary>Whether a store has been made here.</summary>
    /// <remarks>A log, a journal or backups alone are one too: its database is lost, and opening mends it or says so.</remarks>
    public bool HasBook => File.Exists(Database) || File.Exists(DatabaseLog) || File.Exists(Journal) || Directory.Exists(Backups);

    /// <summary>What is stored as of a change some time ago, for quick reading; made anew when it is missing.</summary>
    internal string Snapshot => In("payday.snapshot");

    /// <summary>The snapshot while it is being made; it takes its own name once it is whole.</summary>
    internal string UnfinishedSnapshot => In("payday-new.snapshot");

    /// <summary>The journal while it is being made; it takes its own name once it is whole.</summary>
    internal string UnfinishedJournal => In("payday-new.journal");

    /// <summary>The database while it is being made; it takes its own name once it is whole.</summary>
    internal string Unfinished => In("payday-new.db");

    /// <summary>Who holds the lock, in words; there while it is held.</summary>
    internal string Holder => In("payday.holder");

    /// <summary>All files that Payday has in the folder itself, whether they are there or not.</summary>
    internal IEnumerable<string> Files =>
        [Lock, Holder, Database, DatabaseLog, Journal, Snapshot, SecondPlace, Unfinished, In("payday-new-log.db"), UnfinishedJournal, UnfinishedSnapshot, Start, UnfinishedStart];

    private string DatabaseLog => In("payday-log.db");

    /// <summary>Why nothing can be seen in it; null where it can be looked into, or where there is no such folder yet.</summary>
    public FolderFault? Hindrance => (FileFacts.Behind(Path).Kind, FileFacts.Behind(Database).Kind) switch
    {
        (FileKind.None, _) => null,
        (FileKind.File, _) => new FolderFault.NoFolder(Path, FileKind.File),
        (FileKind.Pipe or FileKind.Socket or FileKind.Device, _) => new FolderFault.NothingToLookInto(Path),
        (FileKind.Blocked, _) => new FolderFault.Blocked(Path),
        (FileKind.Closed, _) or (_, FileKind.Closed) => new FolderFault.Closed(Path),
        _ => null,
    };

    /// <summary>
    /// The folder to use where none is named: <c>payday</c> in the XDG data folder
    /// (XDG Base Directory Specification: <c>$XDG_DATA_HOME</c>, which must be absolute, else <c>~/.local/share</c>).
    /// </summary>
    /// <exception cref="StoreException">There is no such place, or it is another user's.</exception>
    public static StoreFolder Default() => DefaultPlace.Find();

    /// <summary>Whether a folder is this one or in it, by whatever path: through links, or names that only look different.</summary>
    /// <param name="folder">The folder, which is there.</param>
    public bool Holds(string folder)
    {
        string[] own = [Path, Backups, Aside];
        for (string? above = System.IO.Path.GetFullPath(folder); above is not null; above = System.IO.Path.GetDirectoryName(above))
        {
            if (own.Any(one => FileFacts.AreSame(above, one)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What says the time that journal lines, backups and the holder of the lock are told to be of.</summary>
    public TimeProvider Clock { get; internal init; } = TimeProvider.System;

    /// <summary>When a snapshot is kept; less than usual where a small store is to have one.</summary>
    internal SnapshotWish Snapshots { get; init; } = SnapshotWish.Usual;

    /// <summary>Makes the folder, for its owner alone; one that is there keeps its permissions.</summary>
    internal void Make()
    {
        if (FileFacts.Behind(Path).Kind is not (FileKind.None or FileKind.Blocked or FileKind.Folder or FileKind.Unknown or FileKind.Closed) and var kind)
        {
            throw new StoreException(new FolderFault.NoFolder(Path, kind));
        }

        if (FileFacts.Of(Path).Kind == FileKind.Link && !Directory.Exists(Path))
        {
            throw new StoreException(new FolderFault.LinkToNothing(Path));
        }

        PrivateFolder.Make(Path);
    }

    private string In(string name) => System.IO.Path.Combine(Path, name);
}
