using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Turns what the system and the database throw into a plain sentence, and what to do, for the person.</summary>
internal static class StoreFaults
{
    /// <summary>Does the work; a fault of disk or database comes out as a <see cref="StoreException"/>.</summary>
    /// <param name="folder">The folder the work is on.</param>
    /// <param name="action">What is tried.</param>
    /// <param name="work">The work.</param>
    public static T Explained<T>(StoreFolder folder, StoreAction action, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception fault) when (Sentence(folder, action, fault) is { } sentence)
        {
            throw new StoreException(sentence, fault);
        }
    }

    /// <summary>What to tell the person; null where the fault is explained already.</summary>
    public static string? Sentence(StoreFolder folder, StoreAction action, Exception fault) => fault switch
    {
        StoreException => null,
        UnauthorizedAccessException =>
            $"Payday may not {Verb(action)} in {folder.Path}. Nothing was changed; change the permissions of the folder and its files, or choose another folder with --data.",
        PathTooLongException or DirectoryNotFoundException =>
            $"{folder.Path} can't be made a folder. Choose another with --data.",
        EndOfStreamException => Damaged(folder),
        IOException io => OfDisk(folder, action, io),
        _ when action == StoreAction.Write =>
            $"What you entered could not be stored in {folder.Path}. Nothing was changed; close Payday, open it again and look before you enter it once more.",

        // What is read comes from a file, and a damaged one makes the database trip in any way there is.
        _ => Damaged(folder),
    };

    /// <summary>That the database is damaged.</summary>
    public static string Damaged(StoreFolder folder) =>
        $"{folder.Database} is damaged. Nothing was changed; keep a copy of the folder, then put back a copy from before.";

    /// <summary>The same, to be thrown.</summary>
    public static StoreException Damage(StoreFolder folder) => new(Damaged(folder)) { IsDamage = true };

    /// <summary>Whether a fault met in reading a database means that the database is damaged, and not that the system is in the way.</summary>
    public static bool IsDamage(Exception fault) => fault switch
    {
        StoreException store => store.IsDamage,
        EndOfStreamException => true,
        UnauthorizedAccessException or IOException or OutOfMemoryException => false,
        _ => true,
    };

    private static string OfDisk(StoreFolder folder, StoreAction action, IOException fault) => fault.HResult switch
    {
        // ENOSPC, EDQUOT on Linux and macOS; ERROR_DISK_FULL.
        28 or 122 or 69 or unchecked((int)0x80070070) =>
            $"The disk that holds {folder.Path} is full. Nothing was changed; free some room and try again.",

        // EROFS; ERROR_WRITE_PROTECT.
        30 or unchecked((int)0x80070013) =>
            $"The disk that holds {folder.Path} is read-only. Nothing was changed; make it writable, or choose a folder on another with --data.",

        // ENOTDIR, ELOOP.
        20 or 40 => $"{folder.Path} can't be made a folder. Choose another with --data.",
        _ => $"The disk that holds {folder.Path} failed when Payday tried to {Verb(action)} there. Nothing was changed; check the disk and try again.",
    };

    private static string Verb(StoreAction action) => action switch
    {
        StoreAction.Open => "open its files",
        StoreAction.Read => "read",
        _ => "write",
    };
}

/// <summary>What is tried on a folder.</summary>
internal enum StoreAction
{
    /// <summary>Opening, and making what is missing.</summary>
    Open,

    /// <summary>Reading.</summary>
    Read,

    /// <summary>Writing.</summary>
    Write,
}
