using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>That the files of a folder are not those any more that Payday has open.</summary>
/// <remarks>
/// A program that syncs a folder puts a file in the place of another, and the one that is open goes on without a name:
/// what is written to it is gone with the last one who has it open.
/// </remarks>
internal static class FolderChanged
{
    /// <summary>The refusal.</summary>
    /// <param name="path">The file that is another one.</param>
    /// <param name="isWritten">Whether this was seen only after the change was written, so that it may be in one of the files.</param>
    public static StoreException Fault(string path, bool isWritten) => new(new FolderFault.Replaced(path, isWritten));
}
