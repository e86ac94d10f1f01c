using System.Runtime.InteropServices;
using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Finds the data folder where none is named, and never makes do with another, such as the current one.</summary>
internal static partial class DefaultPlace
{
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
                throw new StoreException(new DefaultPlaceFault.OfAnotherUser(path));
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
        return string.IsNullOrEmpty(home) ? throw new StoreException(new DefaultPlaceFault.NotSet(variable))
            : !Path.IsPathFullyQualified(home) ? throw new StoreException(new DefaultPlaceFault.NoFullPath(variable, home))
            : Usable(variable, home);
    }

    private static string Usable(string variable, string path) => FileFacts.Behind(path).Kind is var kind && kind == FileKind.Folder
        ? path
        : throw new StoreException(new DefaultPlaceFault.NotUsable(variable, path, kind));

    [LibraryImport("libc", EntryPoint = "geteuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial uint CurrentUser();
}
