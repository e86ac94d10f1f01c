using Payday.Store.Files;

namespace Payday.Store.Starts;

/// <summary>What is in the way of a household that is begun. One of the nested cases.</summary>
/// <param name="Path">The file that keeps it.</param>
public abstract record StartFault(string Path) : StoreFault
{
    /// <summary>It can't be taken up; nothing was changed.</summary>
    public sealed record Unreadable(string Path) : StartFault(Path);

    /// <summary>What was entered last is not kept.</summary>
    /// <param name="Path">The file that keeps it.</param>
    /// <param name="Trouble">Why.</param>
    public sealed record NotKept(string Path, Trouble Trouble) : StartFault(Path);
}
