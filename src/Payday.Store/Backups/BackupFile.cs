using System.Globalization;
using Payday.Store.Journals;

namespace Payday.Store.Backups;

/// <summary>A backup: the whole journal, packed, under a name that says when it was made, how far it goes, of which book it is and who wanted it.</summary>
/// <remarks><c>payday-20260306T101112Z-12-0123ab.journal.gz</c>; one that a person asked for ends in <c>-kept.journal.gz</c>. Those of before books had names say neither.</remarks>
/// <param name="Path">The file.</param>
/// <param name="Made">When, in UTC, as the clock had it.</param>
/// <param name="Number">The number of its last change.</param>
public sealed record BackupFile(string Path, DateTime Made, long Number)
{
    /// <summary>What the name of each backup ends in.</summary>
    public const string Ends = ".journal.gz";

    private const string Stamp = "yyyyMMdd'T'HHmmss'Z'";
    private const string Begins = "payday-";
    private const string Kept = "kept";

    /// <summary>The beginning of the name of the book it says it is of; empty where it says none.</summary>
    public string Book { get; init; } = "";

    /// <summary>Whether a person asked for it.</summary>
    public bool IsHandMade { get; init; }

    /// <summary>A backup as it would be made in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="made">When, in UTC.</param>
    /// <param name="number">The number of its last change.</param>
    /// <param name="book">The beginning of the book's name, or empty.</param>
    /// <param name="isHandMade">Whether a person asks for it.</param>
    public static BackupFile In(string folder, DateTime made, long number, string book, bool isHandMade)
    {
        string[] parts =
        [
            made.ToString(Stamp, CultureInfo.InvariantCulture),
            number.ToString(CultureInfo.InvariantCulture),
            .. book.Length > 0 ? [book] : Array.Empty<string>(),
            .. isHandMade ? [Kept] : Array.Empty<string>(),
        ];
        return new BackupFile(System.IO.Path.Combine(folder, Begins + string.Join('-', parts) + Ends), made, number) { Book = book, IsHandMade = isHandMade };
    }

    /// <summary>A file as a backup; null where its name is not that of one.</summary>
    public static BackupFile? Of(string path)
    {
        string name = System.IO.Path.GetFileName(path);
        if (!name.StartsWith(Begins, StringComparison.Ordinal) || !name.EndsWith(Ends, StringComparison.Ordinal))
        {
            return null;
        }

        string[] parts = name[Begins.Length..^Ends.Length].Split('-');
        bool isHandMade = parts[^1] == Kept;
        string[] rest = parts[..^(isHandMade ? 1 : 0)];
        return rest.Length is 2 or 3
            && DateTime.TryParseExact(rest[0], Stamp, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out DateTime made)
            && long.TryParse(rest[1], NumberStyles.None, CultureInfo.InvariantCulture, out long number)
            && (rest.Length == 2 || BookName.IsShort(rest[2]))
            ? new BackupFile(path, made, number) { Book = rest.Length == 3 ? rest[2] : "", IsHandMade = isHandMade }
            : null;
    }

    /// <summary>Whether it says that it is of another book than this.</summary>
    /// <param name="book">The whole name of the book; empty where it has none.</param>
    internal bool IsOfAnother(string book) => BookName.Differ(Book, BookName.Short(book));
}
