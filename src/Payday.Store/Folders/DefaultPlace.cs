using System.Runtime.InteropServices;
using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Finds the data folder where none is named, and never makes do with another, such as the current one.</summary>
internal static partial class DefaultPlace
{
    private const string HomeVariable = "HOME";

    /// <summary>The folder; it need not be there yet.</summary>
    /// <exception cref="StoreException">The environment names no place that can be used.</exception>
    public static StoreFolder Find()
    {
        string data = DataHome();
        var folder = new StoreFolder(Path.Combine(data, "payday"));
        foreach (string path in new[] { NearestThere(data), folder.Path })
        {
            // Run with another's environment, as sudo may do, it would leave files there that their owner can't open - or
            // folders on the way, where the first data folder of that home is made.
            if (!OperatingSystem.IsWindows() && FileFacts.Behind(path).Owner is { } owner && owner != CurrentUser())
            {
                throw new StoreException(new DefaultPlaceFault.OfAnotherUser(path));
            }
        }

        return folder;
    }

    // The folder that is there, and in which the others on the way would be made. What XDG_DATA_HOME names may well be
    // missing in a folder that is everybody's, such as one for temporary files.
    private static string NearestThere(string data)
    {
        string? home = HomeOf(data);
        string path = data;
        while (home is not null && path != home && FileFacts.Behind(path).Kind == FileKind.None)
        {
            path = Path.GetDirectoryName(path)!;
        }

        return path;
    }

    private static string? HomeOf(string data) => Path.GetDirectoryName(Path.GetDirectoryName(data)) is { } home && data == Path.Combine(home, ".local", "share") ? home : null;

    private static string DataHome()
    {
        const string variable = "XDG_DATA_HOME";
        string? named = Environment.GetEnvironmentVariable(variable);

        // One that is not absolute counts as not set (the specification, "Environment variables"). One that is missing is made.
        return string.IsNullOrEmpty(named) || !Path.IsPathFullyQualified(named) ? InHome()
            : FileFacts.Behind(named).Kind == FileKind.None ? named
            : Usable(variable, named);
    }

    private static string InHome()
    {
        string home = Home();
        string data = Path.Combine(home, ".local", "share");
        return FileFacts.Behind(data).Kind == FileKind.Closed ? throw new StoreException(new DefaultPlaceFault.NotUsable(HomeVariable, home, FileKind.Closed)) : data;
    }

    private static string Home()
    {
        string? home = OperatingSystem.IsWindows()
            ? Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)
            : Environment.GetEnvironmentVariable(HomeVariable);
        return string.IsNullOrEmpty(home) ? throw new StoreException(new DefaultPlaceFault.NotSet(HomeVariable))
            : !Path.IsPathFullyQualified(home) ? throw new StoreException(new DefaultPlaceFault.NoFullPath(HomeVariable, home))
            : Usable(HomeVariable, home);
    }

    private static string Usable(string variable, string path) => FileFacts.Behind(path).Kind is var kind && kind == FileKind.Folder
        ? path
        : throw new StoreException(new DefaultPlaceFault.NotUsable(variable, path, kind));

    [LibraryImport("libc", EntryPoint = "geteuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial uint CurrentUser();
}
