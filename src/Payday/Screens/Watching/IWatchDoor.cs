using Payday.Screens.Shell;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Screens.Watching;

/// <summary>What looking at a data folder that another process has open needs of the outside.</summary>
internal interface IWatchDoor
{
    /// <summary>The folder that is looked at; null where it is none of the disk's.</summary>
    StoreFolder? Folder { get; }

    /// <summary>
    /// Reads the book as it is stored now. Where nobody has the folder any more, it is held from here on, until it is given
    /// back, so that the offer to open it stands.
    /// </summary>
    /// <exception cref="StoreException">It can't be read.</exception>
    Seen Peek();

    /// <summary>A glance from outside, which costs next to nothing and never fails.</summary>
    /// <param name="before">The one before; null for none.</param>
    FolderGlance Glance(FolderGlance? before);

    /// <summary>The book of the folder that is held, for changes.</summary>
    BookSession Open();

    /// <summary>Holds the folder no more.</summary>
    void GiveBack();
}
