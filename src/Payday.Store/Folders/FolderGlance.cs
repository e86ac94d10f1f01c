using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>What a folder that another process has open looks like from outside: cheap enough to be asked every few seconds.</summary>
/// <param name="IsFree">Whether nobody has it any more.</param>
/// <param name="Holder">Who has it, or had it last.</param>
/// <param name="Journal">The journal, which is longer or another one once more is stored.</param>
public sealed record FolderGlance(bool IsFree, FolderHolder Holder, FileFacts Journal)
{
    /// <summary>Looks at a folder; it never fails, as what can't be seen is told by opening it.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="before">What was seen last; null for nothing.</param>
    public static FolderGlance Of(StoreFolder folder, FolderGlance? before)
    {
        ArgumentNullException.ThrowIfNull(folder);
        FolderHolder holder = FolderLock.Holder(folder);

        // Whether a lock is free is only known by taking it. Once it was, it is not taken again before somebody left a name:
        // in that moment another process would be refused.
        bool isFree = before is { IsFree: true } && before.Holder == holder || FolderLock.IsFree(folder);
        return new FolderGlance(isFree, holder, FileFacts.Of(folder.Journal));
    }
}
