using System.Diagnostics;
using System.Globalization;

namespace Payday.Faults;

/// <summary>The names below a folder, each with the file that it stands for and what is in that.</summary>
/// <param name="Entries">By path: the number of the file (inode) and its bytes; a folder has none.</param>
internal sealed record FolderImage(IReadOnlyDictionary<string, (long File, byte[]? Bytes)> Entries)
{
    /// <summary>Reads what is there; lock and holder, which carry nothing, are left out.</summary>
    public static FolderImage Of(string root) => LiveFolder.Read(() => Read(root));

    /// <summary>The image once the names in one folder are those of another image.</summary>
    public FolderImage With(string folder, FolderImage synced) => new(Entries
        .Where(entry => Path.GetDirectoryName(entry.Key) != folder)
        .Concat(synced.Entries.Where(entry => Path.GetDirectoryName(entry.Key) == folder))
        .ToDictionary(StringComparer.Ordinal));

    /// <summary>The names that stand for another file here than there, or are only in one of the two.</summary>
    public string[] Changed(FolderImage other) =>
        [.. Entries.Keys.Union(other.Entries.Keys).Where(name => FileOf(name) != other.FileOf(name)).Order(StringComparer.Ordinal)];

    /// <summary>The files that are there once some names are those of another image, and each file holds what it last did.</summary>
    public Dictionary<string, byte[]> Files(FolderImage later, IEnumerable<string> taken)
    {
        HashSet<string> fromLater = new(taken, StringComparer.Ordinal);
        Dictionary<string, (long File, byte[]? Bytes)> names = Entries.Keys.Union(later.Entries.Keys)
            .Select(name => (Name: name, Image: fromLater.Contains(name) ? later : this))
            .Where(entry => entry.Image.Entries.ContainsKey(entry.Name))
            .ToDictionary(entry => entry.Name, entry => later.Now(entry.Image.Entries[entry.Name]), StringComparer.Ordinal);
        return names
            .Where(entry => entry.Value.Bytes is not null && HasFolder(names, entry.Key))
            .ToDictionary(entry => entry.Key, entry => entry.Value.Bytes!, StringComparer.Ordinal);
    }

    private static bool HasFolder(Dictionary<string, (long File, byte[]? Bytes)> names, string name) =>
        Path.GetDirectoryName(name) is not { Length: > 0 } folder || (names.ContainsKey(folder) && HasFolder(names, folder));

    private static FolderImage Read(string root)
    {
        using Process find = Process.Start(new ProcessStartInfo("find", [root, "-mindepth", "1", "-printf", @"%i %y %P\n"]) { RedirectStandardOutput = true })!;
        string[] lines = find.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        find.WaitForExit();
        return new FolderImage(lines
            .Select(line => line.Split(' ', 3))
            .Where(parts => !parts[2].EndsWith("payday.lock", StringComparison.Ordinal) && !parts[2].EndsWith("payday.holder", StringComparison.Ordinal))
            .ToDictionary(
                parts => parts[2],
                parts => (long.Parse(parts[0], CultureInfo.InvariantCulture), parts[1] == "d" ? null : Bytes(Path.Combine(root, parts[2]))),
                StringComparer.Ordinal));
    }

    private static byte[] Bytes(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        byte[] bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    private long? FileOf(string name) => Entries.TryGetValue(name, out (long File, byte[]? Bytes) entry) ? entry.File : null;

    // A file that was written to is what it is now under whatever name, for its bytes were synced with it.
    private (long File, byte[]? Bytes) Now((long File, byte[]? Bytes) entry) =>
        Entries.Values.FirstOrDefault(one => one.File == entry.File) is { File: not 0 } now ? now : entry;
}
