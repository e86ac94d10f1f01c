using System.Collections.Immutable;
using System.IO.Compression;
using Payday.Store.Journals;
using Payday.Store.Snapshots;

namespace Payday.Store.Backups;

/// <summary>Makes backups and reads them.</summary>
internal static class BackupFiles
{
    // A household paid every week for 30 years has 69 MB; a packed file can be made to hold thousands of times its size.
    private const int MostUnpacked = 400_000_000;
    private const int Piece = 1 << 16;

    /// <summary>The backups in a folder, newest first.</summary>
    public static ImmutableArray<BackupFile> List(string path) => Directory.Exists(path)
        ? [.. Directory.GetFiles(path).Select(BackupFile.Of).OfType<BackupFile>().OrderByDescending(file => file.Made).ThenByDescending(file => file.Number)]
        : [];

    /// <summary>The backup that goes furthest, or null.</summary>
    public static BackupFile? Newest(StoreFolder folder) => List(folder.Backups).MaxBy(file => file.Number);

    /// <summary>A backup that goes on from a line that the store ends with, so that the store seems to be an old copy; or null.</summary>
    public static BackupFile? GoingOn(StoreFolder folder, JournalLine? last) =>
        Newest(folder) is { } newest && newest.Number > (last?.Number ?? 0)
        && TryRead(newest.Path) is { } scan && (last is null || scan.Lines.Any(line => line.Sha == last.Sha))
            ? newest
            : null;

    /// <summary>The lines of each sound backup, those that go furthest first.</summary>
    public static IEnumerable<ImmutableArray<JournalLine>> Lines(StoreFolder folder) =>
        List(folder.Backups).OrderByDescending(file => file.Number).Select(file => TryRead(file.Path)).OfType<JournalScan>().Select(scan => scan.Lines);

    /// <summary>Copies a journal into a folder, and reads the copy again.</summary>
    /// <param name="folder">The store.</param>
    /// <param name="into">The folder to copy to, which is there.</param>
    /// <param name="upTo">How far it is copied; whole where not said.</param>
    /// <returns>The backup; the one made last where nothing changed since.</returns>
    /// <exception cref="StoreException">The journal is damaged, or the copy is not what was copied.</exception>
    /// <exception cref="IOException">It can't be written.</exception>
    public static BackupFile Make(StoreFolder folder, string into, JournalPlace? upTo = null)
    {
        JournalScan journal = JournalScan.Read(folder.Journal, upTo?.Offset);
        if (!journal.IsWhole || journal.Last is not { } last)
        {
            throw new StoreException(journal.Length == 0
                ? $"There is nothing in {folder.Path} to back up yet."
                : $"{folder.Journal} is damaged after {End(journal)}, so no backup was made. Run payday check.");
        }

        if (List(into) is [{ } newest, ..] && newest.Number == last.Number && TryRead(newest.Path)?.Last?.Sha == last.Sha)
        {
            return newest;
        }

        DateTime made = folder.Clock.GetUtcNow().UtcDateTime;
        string path = Path.Combine(into, BackupFile.NameOf(made, last.Number));
        string unfinished = path + ".new";
        try
        {
            Pack(journal, unfinished);
            if (TryRead(unfinished)?.Last?.Sha != last.Sha)
            {
                throw new StoreException($"What was written to {into} is not what comes back from there, so there is no backup. Check that disk.");
            }

            File.Move(unfinished, path, overwrite: true);
            FolderSync.Of(into);
        }
        finally
        {
            Discard(unfinished);
        }

        return new BackupFile(path, made, last.Number);

        static string End(JournalScan scan) => scan.Last?.ToString() ?? "nothing";
    }

    /// <summary>Reads a backup; null where it is not whole, or unpacks to more than any journal has.</summary>
    /// <param name="path">The file.</param>
    /// <param name="most">The most bytes that it may unpack to.</param>
    /// <exception cref="StoreException">It is of a newer version.</exception>
    public static JournalScan? TryRead(string path, int most = MostUnpacked)
    {
        try
        {
            using var bytes = new MemoryStream();
            using (var packed = new GZipStream(File.OpenRead(path), CompressionMode.Decompress))
            {
                byte[] piece = new byte[Piece];
                while (packed.Read(piece) is > 0 and var read)
                {
                    bytes.Write(piece, 0, read);
                    if (bytes.Length > most)
                    {
                        return null;
                    }
                }
            }

            JournalScan scan = JournalScan.Of(bytes.GetBuffer().AsMemory(0, (int)bytes.Length));
            return scan.IsWhole && scan.Last is not null ? scan : null;
        }
        catch (Exception fault) when (fault is InvalidDataException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static void Pack(JournalScan journal, string path)
    {
        using FileStream file = PrivateFile.Open(path, FileShare.None);
        file.SetLength(0);
        using (var packed = new GZipStream(file, CompressionLevel.Fastest, leaveOpen: true))
        {
            foreach (JournalLine line in journal.Lines)
            {
                packed.Write(line.Text.Span);
                packed.WriteByte((byte)'\n');
            }
        }

        DiskSync.Of(file);
    }

    private static void Discard(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The fault that led here is the one to tell; an unfinished copy has a name that is no backup's.
        }
    }
}
