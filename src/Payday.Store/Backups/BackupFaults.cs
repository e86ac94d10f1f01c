using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Backups;

/// <summary>Why a backup could not be written, for the person.</summary>
internal static class BackupFaults
{
    /// <summary>Refuses a place for backups that is there and is no folder.</summary>
    /// <exception cref="StoreException">It is none.</exception>
    public static void RefuseNoFolder(string into)
    {
        if (!Directory.Exists(into) && FileFacts.Of(into).Kind is not (FileKind.None or FileKind.Blocked or FileKind.Unknown or FileKind.Closed) and var kind)
        {
            throw new StoreException(kind == FileKind.Link
                ? $"{into} is a link to something that is not there, so there is no backup in it. What you enter is stored all the same."
                : $"{into} is {FileNouns.Of(kind)}, not a folder, so there is no backup in it. Move it away; what you enter is stored all the same.");
        }
    }

    public static string Sentence(string into, Exception fault) => fault switch
    {
        DirectoryNotFoundException => $"{into} is not there, so there is no backup in it. Is its disk plugged in? What you enter is stored all the same.",
        UnauthorizedAccessException => $"Payday may not write in {into}, so there is no backup in it. Change its permissions, or choose another folder.",
        IOException { HResult: 28 or 122 or 69 or unchecked((int)0x80070070) } => $"The disk of {into} is full, so there is no backup in it. Free some room there.",
        _ => $"The disk of {into} failed, so there is no backup in it. Check that disk.",
    };
}
