using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Why there is no data folder where none is named. One of the nested cases.</summary>
public abstract record DefaultPlaceFault : StoreFault
{
    private DefaultPlaceFault()
    {
    }

    /// <summary>It, or what it would be in, is another user's.</summary>
    /// <param name="Path">Which of the two.</param>
    public sealed record OfAnotherUser(string Path) : DefaultPlaceFault;

    /// <summary>The variable that names a person's own folder is not set.</summary>
    /// <param name="Variable">Its name.</param>
    public sealed record NotSet(string Variable) : DefaultPlaceFault;

    /// <summary>It names no full path.</summary>
    /// <param name="Variable">Its name.</param>
    /// <param name="Path">What it says.</param>
    public sealed record NoFullPath(string Variable, string Path) : DefaultPlaceFault;

    /// <summary>What it names can't be used.</summary>
    /// <param name="Variable">Its name.</param>
    /// <param name="Path">What it says.</param>
    /// <param name="Kind">What is there: nothing, something closed, or no folder.</param>
    public sealed record NotUsable(string Variable, string Path, FileKind Kind) : DefaultPlaceFault;
}
