using Payday.Store.Files;

namespace Payday.Texts;

/// <summary>Why a file can't be written where a person wants it; nothing has changed. One of the nested cases.</summary>
/// <param name="Shown">Its path, fit to be shown.</param>
internal abstract record WritingFault(string Shown) : EdgeFault
{
    /// <summary>There is no name, or one that can't be shown.</summary>
    public sealed record NoPlainName() : WritingFault("");

    /// <summary>A folder is there.</summary>
    public sealed record IsFolder(string Shown) : WritingFault(Shown);

    /// <summary>It names no file.</summary>
    public sealed record NoFileName(string Shown) : WritingFault(Shown);

    /// <summary>The folder for it is not there.</summary>
    /// <param name="Shown">The folder.</param>
    public sealed record NoFolder(string Shown) : WritingFault(Shown);

    /// <summary>A folder for it can't be made.</summary>
    /// <param name="Shown">The folder.</param>
    /// <param name="Trouble">Why.</param>
    public sealed record FolderNotMade(string Shown, Trouble Trouble) : WritingFault(Shown);

    /// <summary>A device is there.</summary>
    public sealed record IsDevice(string Shown) : WritingFault(Shown);

    /// <summary>A pipe or socket is there.</summary>
    public sealed record IsPipe(string Shown) : WritingFault(Shown);

    /// <summary>It is among the program's own files.</summary>
    public sealed record AmongOurs(string Shown) : WritingFault(Shown);

    /// <summary>The system doesn't let it be written.</summary>
    /// <param name="Shown">Its path.</param>
    /// <param name="Trouble">Why.</param>
    public sealed record Failed(string Shown, Trouble Trouble) : WritingFault(Shown);
}
