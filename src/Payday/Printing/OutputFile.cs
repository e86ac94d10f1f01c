using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Text;
using Payday.Texts;

namespace Payday.Printing;

/// <summary>Writes files whole or not at all, readable by their owner alone, and never among the store's own.</summary>
internal static class OutputFile
{
    /// <summary>Writes a file beside its final place, then moves it there.</summary>
    /// <param name="own">The data folder, in which nothing is written; null where there is none.</param>
    /// <param name="path">Where to; relative to the current folder.</param>
    /// <param name="content">All of the file.</param>
    /// <param name="replace">Whether a file that is already there may be replaced.</param>
    /// <returns>The full path, or what hindered it; then nothing has changed.</returns>
    public static Result<string> Write(StoreFolder? own, string path, byte[] content, bool replace)
    {
        Result<ImmutableArray<string>> written = WriteAll(own, [(path, content)], replace);
        return written.Ok ? Result.Of(written.Value[0]) : Result.Refused<string>(written.Fault);
    }

    /// <summary>Writes several files, all or none.</summary>
    /// <inheritdoc cref="Write"/>
    /// <param name="own">The data folder, in which nothing is written; null where there is none.</param>
    /// <param name="files">Where to, and all of each file.</param>
    /// <param name="replace">Whether files that are already there may be replaced.</param>
    /// <returns>The full paths, or what hindered one of them; then all is as it was.</returns>
    public static Result<ImmutableArray<string>> WriteAll(StoreFolder? own, IReadOnlyList<(string Path, byte[] Content)> files, bool replace)
    {
        ArgumentNullException.ThrowIfNull(files);
        if (files.Any(file => string.IsNullOrWhiteSpace(file.Path) || file.Path.Any(char.IsControl)))
        {
            return Result.Refused<ImmutableArray<string>>(new WritingFault.NoPlainName());
        }

        NewFile[] all = [.. files.Select(file => new NewFile(Path.GetFullPath(file.Path), file.Content))];
        if (all.Select(file => Hindrance(own, file, replace)).FirstOrDefault(fault => fault is not null) is { } hindrance)
        {
            return Result.Refused<ImmutableArray<string>>(hindrance);
        }

        NewFile now = all[0];
        try
        {
            foreach (NewFile file in all)
            {
                now = file;
                WriteNew(file.Beside, file.Content);
            }

            foreach (NewFile file in all)
            {
                now = file;
                file.Place(replace);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            foreach (NewFile file in all.Reverse())
            {
                file.TakeBack();
            }

            return Result.Refused<ImmutableArray<string>>(Reason(fault, now, replace));
        }

        foreach (NewFile file in all)
        {
            file.Settle();
        }

        return Result.Of(all.Select(file => file.Path).ToImmutableArray());
    }

    private static Fault? Hindrance(StoreFolder? own, NewFile file, bool replace)
    {
        string? folder = Path.GetDirectoryName(file.Path);
        string shown = file.Shown;
        return FileFacts.Behind(file.Path).Kind switch
        {
            FileKind.Folder => new WritingFault.IsFolder(shown),
            _ when folder is null => new WritingFault.NoFileName(shown),
            _ when !Directory.Exists(folder) => new WritingFault.NoFolder(CleanText.OneLine(folder)),

            // Moving a file there would put it in its place.
            FileKind.Device => new WritingFault.IsDevice(shown),
            FileKind.Pipe or FileKind.Socket => new WritingFault.IsPipe(shown),
            _ when own?.Holds(folder) == true => new WritingFault.AmongOurs(shown),
            _ when !replace && IsThere(file.Path) => new FileThere(shown),
            _ => null,
        };
    }

    // Also a link that leads nowhere.
    private static bool IsThere(string path) => Path.Exists(path) || new FileInfo(path).LinkTarget is not null;

    private static void WriteNew(string path, byte[] content)
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

    private static Fault Reason(Exception fault, NewFile file, bool replace) =>
        Troubles.Of(fault) is var trouble && trouble is Trouble.Failed or Trouble.IsThere && !replace && IsThere(file.Path)
            ? new FileThere(file.Shown)
            : new WritingFault.Failed(file.Shown, trouble);
}
