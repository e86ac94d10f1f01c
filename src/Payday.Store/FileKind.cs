namespace Payday.Store;

/// <summary>What there is at a path, links followed.</summary>
public enum FileKind
{
    /// <summary>Nothing, or a link that leads nowhere.</summary>
    Missing,

    /// <summary>A file with content.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A pipe or socket: opening it waits for another process.</summary>
    Pipe,

    /// <summary>A device, which may have no end.</summary>
    Device,

    /// <summary>Something on the way to it is no folder.</summary>
    Blocked,

    /// <summary>The system doesn't let this person look.</summary>
    Closed,
}
