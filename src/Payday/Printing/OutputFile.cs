using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Printing;

/// <summary>Writes a file whole or not at all, readable by its owner alone.</summary>
public static class OutputFile
{
    // Numbers of Linux and other Unixes, where the runtime passes them on.
    private const int NoSpaceLeft = 28;
    private const int ReadOnlyFileSystem = 30;

    /// <summary>Writes a file beside its final place, then moves it there.</summary>
    /// <param name="path">Where to; relative to the current folder.</param>
    /// <param name="content">All of the file.</param>
    /// <param name="replace">Whether a file that is already there may be replaced.</param>
    /// <returns>The full path, or what hindered it; then nothing has changed.</returns>
    public static Read<string> Write(string path, ReadOnlySpan<byte> content, bool replace)
    {
        if (string.IsNullOrWhiteSpace(path) || path.Any(char.IsControl))
        {
            return Read.Refused<string>("A file name is missing or holds control characters; give a plain one.");
        }

        string full = Path.GetFullPath(path);
        string shown = CleanText.OneLine(full);
        if (Hindrance(full, shown, replace) is { } hindrance)
        {
            return Read.Refused<string>(hindrance);
        }

        string temporary = Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetRandomFileName()}");
        try
        {
            WriteNew(temporary, content);
            File.Move(temporary, full, replace);
            return Read.Of(full);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            Discard(temporary);
            return Read.Refused<string>(Reason(fault, full, shown, replace));
        }
    }

    private static string? Hindrance(string full, string shown, bool replace)
    {
        string? folder = Path.GetDirectoryName(full);
        return folder switch
        {
            _ when Directory.Exists(full) => $"{shown} is a folder; give the name of a file in it.",
            null => $"{shown} is no file name; give one.",
            _ when !Directory.Exists(folder) => $"There is no folder {CleanText.OneLine(folder)}; make it first or choose another.",

            // Moving a file there would put it in the device's place.
            _ when full.StartsWith("/dev/", StringComparison.Ordinal) => $"{shown} is a device; give the name of a file.",
            _ when !replace && Path.Exists(full) => AlreadyThere(shown),
            _ => null,
        };
    }

    private static void WriteNew(string path, ReadOnlySpan<byte> content)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using var file = new FileStream(path, options);
        file.Write(content);
        file.Flush(flushToDisk: true);
    }

    private static void Discard(string temporary)
    {
        try
        {
            File.Delete(temporary);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The first fault is the one to report; what is left is an unfinished hidden file.
        }
    }

    private static string Reason(Exception fault, string full, string shown, bool replace) => fault switch
    {
        UnauthorizedAccessException => $"{shown} can't be written, for lack of permission; choose another folder.",
        PathTooLongException => $"The name {shown} is too long; give a shorter one.",
        { HResult: NoSpaceLeft } => $"{shown} can't be written, as the disk is full; make room or choose another.",
        { HResult: ReadOnlyFileSystem } => $"{shown} can't be written, as that disk is read-only; choose another folder.",
        _ when !replace && Path.Exists(full) => AlreadyThere(shown),
        _ => $"{shown} can't be written: {CleanText.OneLine(fault.Message)}",
    };

    private static string AlreadyThere(string shown) => $"{shown} is already there; give another name, or say that it may be replaced.";
}
