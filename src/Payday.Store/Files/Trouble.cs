namespace Payday.Store.Files;

/// <summary>Why the system doesn't let a file or folder be read, made or written, as far as it says.</summary>
public enum Trouble
{
    /// <summary>It failed, and no more is known.</summary>
    Failed,

    /// <summary>The permissions don't allow it.</summary>
    Denied,

    /// <summary>It is not there, or its folder isn't.</summary>
    Missing,

    /// <summary>A part of its path is no folder.</summary>
    Blocked,

    /// <summary>Its name, or the whole path, is too long.</summary>
    TooLong,

    /// <summary>A folder is in its place.</summary>
    IsFolder,

    /// <summary>Something of that name is there.</summary>
    IsThere,

    /// <summary>Another program keeps it for itself.</summary>
    InUse,

    /// <summary>The disk is full, or the part of it that this person may use.</summary>
    Full,

    /// <summary>The disk can only be read.</summary>
    ReadOnly,

    /// <summary>Nobody reads what is written.</summary>
    Unread,
}
