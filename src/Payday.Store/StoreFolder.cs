namespace Payday.Store;

/// <summary>The files of a data folder.</summary>
/// <param name="Path">The folder.</param>
public sealed record StoreFolder(string Path)
{
    /// <summary>The database.</summary>
    public string Database => System.IO.Path.Combine(Path, "payday.db");

    /// <summary>The file whose lock says that a process writes.</summary>
    public string Lock => System.IO.Path.Combine(Path, "payday.lock");

    /// <summary>Whether a household has been stored here.</summary>
    public bool HasBook => File.Exists(Database);

    /// <summary>
    /// The folder to use where none is named: <c>payday</c> in the XDG data folder
    /// (XDG Base Directory Specification: <c>$XDG_DATA_HOME</c>, which must be absolute, else <c>~/.local/share</c>).
    /// </summary>
    public static StoreFolder Default()
    {
        string? data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
        if (string.IsNullOrEmpty(data) || !System.IO.Path.IsPathRooted(data))
        {
            data = System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "share");
        }

        return new StoreFolder(System.IO.Path.Combine(data, "payday"));
    }
}
