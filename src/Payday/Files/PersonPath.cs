using Payday.Store.Files;

namespace Payday.Files;

/// <summary>Paths as a person writes them.</summary>
internal static class PersonPath
{
    private const int MostFiles = 200;

    /// <summary>The full path; <c>~</c> at its beginning is the person's own folder.</summary>
    /// <param name="text">What was typed, with something in it.</param>
    public static string Full(string text)
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        string path = text.Trim();
        return path == "~" ? home : path.StartsWith("~/", StringComparison.Ordinal) ? Path.Combine(home, path[2..]) : Path.GetFullPath(path);
    }

    /// <summary>The file of a path, or the files of a folder by their names, hidden ones left out; at most 200.</summary>
    /// <remarks>What can't be looked into is given as it is: reading it says what is in the way.</remarks>
    public static IReadOnlyList<string> Files(string path)
    {
        try
        {
            return FileFacts.Behind(path).Kind == FileKind.Folder
                ? [.. Directory.EnumerateFiles(path).Where(file => Path.GetFileName(file) is not ['.', ..]).Order(StringComparer.Ordinal).Take(MostFiles)]
                : [path];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [path];
        }
    }
}
