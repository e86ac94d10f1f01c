using Payday.Core.Faults;
using Payday.Text;
using Payday.Texts;

namespace Payday.Files;

/// <summary>The path of a file as a person types it on a screen: <c>~/</c> is the home folder, and the beginning of a name is enough where only one file has it.</summary>
internal static class TypedPath
{
    private const int MostNamed = 6;

    // More names than a person keeps in a folder; looked at once, as they are typed.
    private const int MostLooked = 2_000;

    /// <summary>The file that is meant; or what there is, where that isn't clear.</summary>
    public static Result<string> Of(string typed)
    {
        string text = typed.Trim();
        string path = text.StartsWith("~/", StringComparison.Ordinal)
            ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), text[2..])
            : Path.GetFullPath(text.Length == 0 ? "." : text);
        bool isFolder = text.Length == 0 || text.EndsWith('/') || Directory.Exists(path);
        if (!isFolder && File.Exists(path))
        {
            return Result.Of(path);
        }

        string folder = isFolder ? path : Path.GetDirectoryName(path) ?? "/";
        string begins = isFolder ? "" : Path.GetFileName(path);
        string[] names = Names(folder, begins);
        return names.Length == 1 ? Result.Of(Path.Combine(folder, names[0]))
            : names.Length == 0 ? Result.Refused<string>(new ReadingFault.NotThere(CleanText.OneLine(text.Length == 0 ? folder : text)))
            : Result.Refused<string>(new ReadingFault.Several(CleanText.OneLine(text.Length == 0 ? folder : text), [.. names.Take(MostNamed).Select(CleanText.OneLine)], Math.Max(0, names.Length - MostNamed)));
    }

    // Files alone, those that begin with a point left out.
    private static string[] Names(string folder, string begins)
    {
        try
        {
            return
            [
                .. new DirectoryInfo(folder).EnumerateFiles().Take(MostLooked).Select(file => file.Name)
                    .Where(name => !name.StartsWith('.') && name.StartsWith(begins, StringComparison.Ordinal))
                    .Order(StringComparer.Ordinal),
            ];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return [];
        }
    }
}
