namespace Payday.Store.Files;

/// <summary>What a name in a folder stands for.</summary>
public enum FileKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A file.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A symbolic link, whatever it points to, if anything.</summary>
    Link,

    /// <summary>A named pipe: opening it waits for somebody at its other end.</summary>
    Pipe,

    /// <summary>A socket.</summary>
    Socket,

    /// <summary>A device: reading it may never end.</summary>
    Device,

    /// <summary>The system doesn't say; opening it tells more.</summary>
    Unknown,

    /// <summary>Nothing, as something on the way to it is no folder, or its links go round.</summary>
    Blocked,

    /// <summary>The system doesn't let this person look.</summary>
    Closed,
}
