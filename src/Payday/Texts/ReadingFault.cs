using System.Collections.Immutable;
using Payday.Store.Files;

namespace Payday.Texts;

/// <summary>Why a file that a person named can't be read. One of the nested cases.</summary>
/// <param name="Shown">What to call it, fit to be shown.</param>
internal abstract record ReadingFault(string Shown) : EdgeFault
{
    /// <summary>It is a folder.</summary>
    public sealed record IsFolder(string Shown) : ReadingFault(Shown);

    /// <summary>It is a device, or a pipe or socket: reading it might never end.</summary>
    /// <param name="Shown">What to call it.</param>
    /// <param name="IsDevice">Whether it is a device.</param>
    public sealed record NeverEnds(string Shown, bool IsDevice) : ReadingFault(Shown);

    /// <summary>There is none.</summary>
    public sealed record NotThere(string Shown) : ReadingFault(Shown);

    /// <summary>Several files begin so.</summary>
    /// <param name="Shown">What was typed.</param>
    /// <param name="Names">Some of their names.</param>
    /// <param name="More">How many more there are.</param>
    public sealed record Several(string Shown, ImmutableArray<string> Names, int More) : ReadingFault(Shown);

    /// <summary>The permissions don't allow it.</summary>
    public sealed record Denied(string Shown) : ReadingFault(Shown);

    /// <summary>The system doesn't let it be read.</summary>
    /// <param name="Shown">What to call it.</param>
    /// <param name="Trouble">Why.</param>
    public sealed record Failed(string Shown, Trouble Trouble) : ReadingFault(Shown);

    /// <summary>It is larger than any right one.</summary>
    /// <param name="Shown">What to call it.</param>
    /// <param name="Most">The most bytes.</param>
    public sealed record TooLarge(string Shown, int Most) : ReadingFault(Shown);

    /// <summary>It is no text in UTF-8.</summary>
    public sealed record NoText(string Shown) : ReadingFault(Shown);
}
