using Payday.Store.Files;

namespace Payday.Texts;

/// <summary>What to call what stands in the place of a file.</summary>
internal static class FileNouns
{
    /// <summary>What something is, e.g. <c>a named pipe</c>.</summary>
    public static string Of(FileKind kind) => kind switch
    {
        FileKind.Folder => "a folder",
        FileKind.Link => "a link",
        FileKind.Pipe => "a named pipe",
        FileKind.Socket => "a socket",
        FileKind.Device => "a device",
        _ => "a file",
    };
}
