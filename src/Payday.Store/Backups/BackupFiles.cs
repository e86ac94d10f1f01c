using System.Collections.Immutable;
using System.IO.Compression;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Backups;

/// <summary>Makes backups and reads them.</summary>
internal static class BackupFiles
{
    private const int Piece = 1 << 20;

    /// <summary>What has the name of a backup in a folder, newest first; some may be no files at all, which is found out before they are opened.</summary>
    public static ImmutableArray<BackupFile> List(string path) => Directory.Exists(path)
        ? [.. Directory.GetFileSystemEntries(path).Select(BackupFile.Of).OfType<BackupFile>().OrderByDescending(file => file.Made).ThenByDescending(file => file.Number)]
        : [];

    /// <summary>The backup that goes furthest, or null.</summary>
    public static BackupFile? Newest(StoreFolder folder) => List(folder.Backups).MaxBy(file => file.Number);

    /// <summary>A backup that goes on from a line that the store ends with, so that the store seems to be an old copy; or null.</summary>
    public static BackupFile? GoingOn(StoreFolder folder, JournalLine? last) => List(folder.Backups)
        .Where(file => file.Number > (last?.Number ?? 0) && !file.IsOfAnother(last?.Book ?? BookName.None))
        .OrderByDescending(file => file.Number)
        .FirstOrDefault(file => TryRead(file.Path) is { } scan && (last is null || scan.Lines.Any(line => line.Sha == last.Sha)));

    /// <summary>The lines of each sound backup, those that go furthest first.</summary>
    public static IEnumerable<ImmutableArray<JournalLine>> Lines(StoreFolder folder) =>
        List(folder.Backups).OrderByDescending(file => file.Number).Select(file => TryRead(file.Path)).OfType<JournalScan>().Select(scan => scan.Lines);

    /// <summary>Copies a journal into a folder, and reads the copy again.</summary>
    /// <param name="folder">The store.</param>
    /// <param name="journal">Its journal, as far as it is to be copied.</param>
    /// <param name="into">The folder to copy to, which is there.</param>
    /// <param name="isHandMade">Whether a person asked for it, so that it is never thinned out.</param>
    /// <returns>The backup; the one made last where nothing changed since.</returns>
    /// <exception cref="StoreException">The journal is damaged, or the copy is not what was copied.</exception>
    /// <exception cref="IOException">It can't be written.</exception>
    public static BackupFile Make(StoreFolder folder, JournalScan journal, string into, bool isHandMade)
    {
        if (!journal.IsWhole || journal.Last is not { } last)
        {
            throw new StoreException(journal.Length == 0
                ? new BackupFault.NothingYet(folder.Path)
                : new BackupFault.JournalDamaged(folder.Journal, journal.Last?.Mark));
        }

        if (List(into).FirstOrDefault(file => !file.IsOfAnother(last.Book)) is { } newest
            && newest.Number == last.Number && (newest.IsHandMade || !isHandMade) && TryRead(newest.Path)?.Last?.Sha == last.Sha)
        {
            return newest;
        }

        BackupFile made = Free(folder.Clock.GetUtcNow().UtcDateTime, into, last, isHandMade);
        string unfinished = made.Path + ".new";
        try
        {
            Pack(journal, unfinished);
            if (TryRead(unfinished)?.Last?.Sha != last.Sha)
            {
                throw new StoreException(new BackupFault.ComesBackDifferent(into));
            }

            File.Move(unfinished, made.Path, overwrite: false);
            FolderSync.Of(into);
        }
        finally
        {
            Discard(unfinished);
        }

        return made;
    }

    /// <summary>Reads a backup; null where it is not whole, or unpacks to more than any journal has.</summary>
    /// <exception cref="StoreException">It is of a newer version.</exception>
    public static JournalScan? TryRead(string path) => (Read(path) as BackupReading.Sound)?.Journal;

    /// <summary>Reads a backup, wherever it is.</summary>
    /// <returns>It, or what is wrong with it.</returns>
    /// <exception cref="StoreException">It is of a newer version.</exception>
    public static BackupReading Read(string path)
    {
        FileFacts facts = FileFacts.Behind(path);
        if (!StrangeFiles.IsFile(facts.Kind))
        {
            return new BackupReading.Unfit(new BackupUnfit.NoFile(facts.Kind));
        }

        try
        {
            return Unpacked(path) is { } bytes
                ? JournalScan.Of(bytes) is { IsWhole: true, Last: not null } scan ? new BackupReading.Sound(scan) : new BackupReading.Unfit(new BackupUnfit.Damaged())
                : new BackupReading.Unfit(new BackupUnfit.TooLarge(JournalScan.MostBytes));
        }
        catch (Exception fault) when (fault is InvalidDataException or IOException or UnauthorizedAccessException)
        {
            return new BackupReading.Unfit(facts.IsNothing ? new BackupUnfit.NotThere() : new BackupUnfit.Damaged());
        }
    }

    // Null where it is no journal for its size. What is packed can come to a thousand times its bytes, so that is
    // seen while it grows: nearly all such files are one endless line.
    private static ReadOnlyMemory<byte>? Unpacked(string path)
    {
        using var bytes = new MemoryStream();
        using var packed = new GZipStream(File.OpenRead(path), CompressionMode.Decompress);
        byte[] piece = new byte[Piece];
        long lineStart = 0;
        for (int read = packed.Read(piece); read > 0; read = packed.Read(piece))
        {
            int lineEnd = piece.AsSpan(0, read).LastIndexOf((byte)'\n');
            lineStart = lineEnd < 0 ? lineStart : bytes.Length + lineEnd + 1;
            bytes.Write(piece, 0, read);
            if (bytes.Length > JournalScan.MostBytes || bytes.Length - lineStart > JournalLine.Longest)
            {
                return null;
            }
        }

        return bytes.GetBuffer().AsMemory(0, (int)bytes.Length);
    }

    // Names go by the second, and what is there is never written over.
    private static BackupFile Free(DateTime now, string into, JournalLine last, bool isHandMade)
    {
        for (DateTime made = now; ; made = made.AddSeconds(1))
        {
            BackupFile file = BackupFile.In(into, made, last.Number, BookName.Short(last.Book), isHandMade);
            if (FileFacts.Of(file.Path).IsNothing)
            {
                return file;
            }
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
