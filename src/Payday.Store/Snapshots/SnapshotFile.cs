using System.IO.Hashing;
using Payday.Core.Amounts;
using Payday.Store.Contents;
using Payday.Store.Documents;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Snapshots;

/// <summary>The file of a snapshot.</summary>
/// <remarks>
/// A name and the version, the place in the journal, the household, all texts, then the records of each kind, and at
/// the end a hash of all that: XXH128, which finds damage and takes a thirtieth of the time of a SHA-256. Which fields a record has is not in it: another version passes it over.
/// </remarks>
internal static class SnapshotFile
{
    // Changes with the fields of any record and with how they are packed.
    private const int Version = (StoreVersion.Current * 1_000) + 7;

    private const int HashLength = 16;

    private static ReadOnlySpan<byte> Name => "Payday snapshot\n"u8;

    /// <summary>Reads the snapshot of a folder.</summary>
    /// <returns>It; null where there is none that is whole and of this version.</returns>
    public static Snapshot? TryRead(StoreFolder folder)
    {
        byte[] bytes;
        FileFacts facts = FileFacts.Of(folder.Snapshot);
        if (!StrangeFiles.IsFile(facts.Kind) || facts.Length > JournalScan.MostBytes)
        {
            return null;
        }

        try
        {
            bytes = File.ReadAllBytes(folder.Snapshot);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }

        int end = bytes.Length - HashLength;
        try
        {
            return end > Name.Length && bytes.AsSpan().StartsWith(Name) && XxHash128.Hash(bytes.AsSpan(0, end)).AsSpan().SequenceEqual(bytes.AsSpan(end))
                ? Read(bytes)
                : null;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            // Whole, and of a program that took another household for sound.
            return null;
        }
    }

    /// <summary>What is stored now, where another process may be at it.</summary>
    /// <returns>The records; null where there is no snapshot, or the journal doesn't go on from it to a whole line.</returns>
    public static StoredRecords? TryLook(StoreFolder folder)
    {
        if (!File.Exists(folder.Journal) || TryRead(folder) is not { } snapshot)
        {
            return null;
        }

        using JournalFile? journal = JournalFile.OpenToLook(folder.Journal);
        return journal is null ? null : snapshot.CarriedOn(journal);
    }

    /// <summary>Writes a snapshot in the place of the one before, if it can be written: the store is whole without it.</summary>
    public static void TryWrite(StoreFolder folder, Snapshot snapshot)
    {
        try
        {
            Write(folder, snapshot);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The next one to open the store tries again.
        }
    }

    /// <summary>All of a snapshot but its hash: the same bytes for the same records at the same place.</summary>
    public static byte[] Packed(Snapshot snapshot)
    {
        // The texts are known once all is written, and are needed before any of it is read.
        var texts = new TextTable();
        byte[][] columns = [.. snapshot.Records.Columns.Select(column => Packed(column, texts))];

        using var whole = new MemoryStream();
        var to = new BinaryWriter(whole);
        to.Write(Name);
        to.Write7BitEncodedInt(Version);
        to.Write7BitEncodedInt64(snapshot.Place.Number);
        to.Write(snapshot.Place.Sha);
        to.Write7BitEncodedInt64(snapshot.Place.Offset);
        to.Write(snapshot.Records.Household.Record);
        byte[] digest = new byte[Digest.Length];
        snapshot.Records.Household.Digest.CopyTo(digest);
        to.Write(digest);
        to.Write7BitEncodedInt(texts.All.Count);
        foreach (string text in texts.All)
        {
            to.Write(text);
        }

        foreach (byte[] column in columns)
        {
            to.Write7BitEncodedInt(column.Length);
            to.Write(column);
        }

        return whole.ToArray();
    }

    private static byte[] Packed(IColumn column, TextTable texts)
    {
        using var bytes = new MemoryStream();
        column.Write(new PackedWriter(new BinaryWriter(bytes), texts));
        return bytes.ToArray();
    }

    private static void Write(StoreFolder folder, Snapshot snapshot)
    {
        byte[] bytes = Packed(snapshot);
        using (FileStream file = PrivateFile.Open(folder.UnfinishedSnapshot, FileShare.None))
        {
            file.SetLength(0);
            file.Write(bytes);
            file.Write(XxHash128.Hash(bytes));
        }

        // Not synced: half of it after a power cut is a snapshot that is not whole.
        File.Move(folder.UnfinishedSnapshot, folder.Snapshot, overwrite: true);
    }

    private static Snapshot? Read(byte[] bytes)
    {
        var from = new PackedBytes(bytes, Name.Length);
        if (from.Count() != Version)
        {
            return null;
        }

        var place = new JournalPlace(from.Number(), from.Text(), from.Number());
        string household = from.Text();
        Digest digest = Digest.From(from.Span(Digest.Length));
        IReadOnlyList<string> texts = from.Texts();

        Currency currency = HouseholdDocument.To(household).Currency;
        var records = new StoredRecords(new(household, digest), currency);
        var parts = new List<(IColumn Column, PackedBytes Bytes)>();
        foreach (IColumn column in records.Columns)
        {
            int length = from.Count();
            parts.Add((column, new PackedBytes(bytes, from.Position)));
            from.Span(length);
        }

        // Side by side: of a long life this is most of the time that opening takes.
        Parallel.ForEach(parts, part => part.Column.Read(new PackedReader(part.Bytes, texts, currency)));
        return new Snapshot(place, records);
    }
}
