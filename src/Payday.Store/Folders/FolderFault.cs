using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Why a data folder can't be used, or not just now. One of the nested cases.</summary>
/// <param name="Path">The folder, or what in it is in the way.</param>
public abstract record FolderFault(string Path) : StoreFault
{
    /// <summary>The permissions of the folder or its files don't allow it; nothing was changed.</summary>
    /// <param name="Path">The folder.</param>
    /// <param name="Action">What was tried.</param>
    public sealed record Denied(string Path, StoreAction Action) : FolderFault(Path);

    /// <summary>Its path can't be one of a folder.</summary>
    public sealed record CantBeMade(string Path) : FolderFault(Path);

    /// <summary>Something else is in its place.</summary>
    /// <param name="Path">The folder.</param>
    /// <param name="Kind">What it is.</param>
    public sealed record NoFolder(string Path, FileKind Kind) : FolderFault(Path);

    /// <summary>In its place is a link that leads to nothing.</summary>
    public sealed record LinkToNothing(string Path) : FolderFault(Path);

    /// <summary>Something that nothing can be looked for in is in its place.</summary>
    public sealed record NothingToLookInto(string Path) : FolderFault(Path);

    /// <summary>A part of its path is no folder.</summary>
    public sealed record Blocked(string Path) : FolderFault(Path);

    /// <summary>This person may not look into it.</summary>
    public sealed record Closed(string Path) : FolderFault(Path);

    /// <summary>Its disk is full; nothing was changed.</summary>
    public sealed record DiskFull(string Path) : FolderFault(Path);

    /// <summary>Its disk is read-only; nothing was changed.</summary>
    public sealed record DiskReadOnly(string Path) : FolderFault(Path);

    /// <summary>Its disk failed; nothing was changed.</summary>
    /// <param name="Path">The folder.</param>
    /// <param name="Action">What was tried.</param>
    public sealed record DiskFailed(string Path, StoreAction Action) : FolderFault(Path);

    /// <summary>Its disk failed amid a change: it may be stored or not.</summary>
    public sealed record DiskFailedAmid(string Path) : FolderFault(Path);

    /// <summary>A change could not be stored; nothing was changed.</summary>
    public sealed record NotStored(string Path) : FolderFault(Path);

    /// <summary>Another process has it open, so that a look is all there is.</summary>
    /// <param name="Path">The folder.</param>
    /// <param name="Holder">Who has it.</param>
    public sealed record Taken(string Path, FolderHolder Holder) : FolderFault(Path);

    /// <summary>Locks on its files have no effect; nothing was changed.</summary>
    public sealed record NoLocks(string Path) : FolderFault(Path);

    /// <summary>What was in it is gone while it was looked at.</summary>
    public sealed record HouseholdGone(string Path) : FolderFault(Path);

    /// <summary>A newer version of the program wrote it; nothing was changed.</summary>
    public sealed record Newer(string Path) : FolderFault(Path);

    /// <summary>Something that is no file stands in the place of one; nothing was changed.</summary>
    /// <param name="Path">The place.</param>
    /// <param name="Kind">What it is.</param>
    public sealed record Strange(string Path, FileKind Kind) : FolderFault(Path);

    /// <summary>A file is not the one any more that is open.</summary>
    /// <param name="Path">The file.</param>
    /// <param name="IsWritten">Whether this was seen only after a change was written, so that it may be in one of the files.</param>
    public sealed record Replaced(string Path, bool IsWritten) : FolderFault(Path);
}
