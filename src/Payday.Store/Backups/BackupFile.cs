using System.Globalization;

namespace Payday.Store.Backups;

/// <summary>A backup: the whole journal, packed, under a name that says when it was made and how far it goes.</summary>
/// <param name="Path">The file.</param>
/// <param name="Made">When, in UTC, as the clock had it.</param>
/// <param name="Number">The number of its last change.</param>
public sealed record BackupFile(string Path, DateTime Made, long Number)
{
    private const string Stamp = "yyyyMMdd'T'HHmmss'Z'";
    private const string Begins = "payday-";
    private const string Ends = ".journal.gz";

    /// <summary>The name of a backup made at a time.</summary>
    public static string NameOf(DateTime made, long number) =>
        $"{Begins}{made.ToString(Stamp, CultureInfo.InvariantCulture)}-{number.ToString(CultureInfo.InvariantCulture)}{Ends}";

    /// <summary>A file as a backup; null where its name is not that of one.</summary>
    public static BackupFile? Of(string path)
    {
        string name = System.IO.Path.GetFileName(path);
        if (!name.StartsWith(Begins, StringComparison.Ordinal) || !name.EndsWith(Ends, StringComparison.Ordinal))
        {
            return null;
        }

        string[] parts = name[Begins.Length..^Ends.Length].Split('-');
        return parts.Length == 2
            && DateTime.TryParseExact(parts[0], Stamp, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out DateTime made)
            && long.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out long number)
            ? new BackupFile(path, made, number)
            : null;
    }
}
