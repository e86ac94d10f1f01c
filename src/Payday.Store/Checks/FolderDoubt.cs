using System.Collections.Immutable;
using Payday.Store.Files;

namespace Payday.Store.Checks;

/// <summary>What about a folder may harm what is stored there, and what was done about it. One of the nested cases.</summary>
/// <param name="Path">The folder or file.</param>
public abstract record FolderDoubt(string Path) : StoreFault
{
    /// <summary>Other users of the machine can look into it.</summary>
    public sealed record OpenToOthers(string Path) : FolderDoubt(Path);

    /// <summary>Other users of the machine can't look into it any more.</summary>
    public sealed record ClosedToOthers(string Path) : FolderDoubt(Path);

    /// <summary>Nobody but its owner and the group that shares it can look into it any more.</summary>
    public sealed record ClosedToStrangers(string Path) : FolderDoubt(Path);

    /// <summary>It is on a drive that other machines can reach.</summary>
    /// <param name="Path">The folder.</param>
    /// <param name="Kind">The name of its file system.</param>
    public sealed record OnSharedDrive(string Path, string Kind) : FolderDoubt(Path);

    /// <summary>It has copies of its files that the program did not make.</summary>
    /// <param name="Path">The folder.</param>
    /// <param name="Names">Their names.</param>
    public sealed record HasForeignCopies(string Path, ImmutableArray<string> Names) : FolderDoubt(Path);
}
