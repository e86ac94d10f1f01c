namespace Payday.Store.Files;

/// <summary>Why no folder can be made at a place. One of the nested cases.</summary>
/// <param name="Path">The place.</param>
public abstract record PlaceFault(string Path) : StoreFault
{
    /// <summary>A link is there that leads to nothing.</summary>
    public sealed record LinkToNothing(string Path) : PlaceFault(Path);

    /// <summary>Something else is there.</summary>
    /// <param name="Path">The place.</param>
    /// <param name="Kind">What it is.</param>
    public sealed record NoFolder(string Path, FileKind Kind) : PlaceFault(Path);
}
