using System.Runtime.InteropServices;
using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Finds the data folder where none is named, and never makes do with another, such as the current one.</summary>
internal static partial class DefaultPlace
{
    private const string Or = "name a folder with --data.";

    /// <summary>The folder; it need not be there yet.</summary>
    /// <exception cref="StoreException">The environment names no place that can be used.</exception>
    public static StoreFolder Find()
    {
        string data = DataHome();
        var folder = new StoreFolder(Path.Combine(data, "payday"));
        foreach (string path in new[] { data, folder.Path })
        {
            // Run with another's environment, as sudo may do, it would leave files there that their owner can't open.
            if (!OperatingSystem.IsWindows() && FileFacts.Behind(path).Owner is { } owner && owner != CurrentUser())
            {
                throw new StoreException($"{path} belongs to another user of this machine, so it is left alone. Run Payday as that user, or {Or}");
            }
        }

        return folder;
    }

    private static string DataHome()
    {
        const string variable = "XDG_DATA_HOME";
        string? named = Environment.GetEnvironmentVariable(variable);

        // One that is not absolute counts as not set (the specification, "Environment variables"). One that is missing is made.
        return string.IsNullOrEmpty(named) || !Path.IsPathFullyQualified(named) ? Path.Combine(Home(), ".local", "share")
            : FileFacts.Behind(named).Kind == FileKind.None ? named
            : Usable(variable, named);
    }

    private static string Home()
    {
        const string variable = "HOME";
        string? home = OperatingSystem.IsWindows()
            ? Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)
            : Environment.GetEnvironmentVariable(variable);
        return string.IsNullOrEmpty(home) ? throw new StoreException($"{variable} is not set, so there is no place for your data. Set it, or {Or}")
            : !Path.IsPathFullyQualified(home) ? throw new StoreException($"{variable} is {home}, which is no full path. Set it right, or {Or}")
            : Usable(variable, home);
    }

    private static string Usable(string variable, string path) => FileFacts.Behind(path).Kind switch
    {
        FileKind.Folder => path,
        FileKind.None => throw new StoreException($"{variable} is {path}, which is not there. Set it right, or {Or}"),
        FileKind.Closed => throw new StoreException($"{variable} is {path}, which you may not look into. Change its permissions, or {Or}"),
        _ => throw new StoreException($"{variable} is {path}, which is no folder. Set it right, or {Or}"),
    };

    [LibraryImport("libc", EntryPoint = "geteuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial uint CurrentUser();
}
