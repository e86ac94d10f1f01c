using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Databases;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Faults;

/// <summary>Cuts the power, in simulation, at each moment of a closing.</summary>
/// <remarks>
/// A closing writes in four stretches, each ended by a sync: the journal's line, the database's log, the database's
/// pages, and the emptying of the log. What is synced is there after a cut; of what is not, any part may be, in any
/// order. So each stretch is tried with each prefix, with each single piece missing, with each piece alone, and with
/// random parts; a piece is what disks write whole, 512 bytes of the journal and a page of the database.
/// </remarks>
internal static class PowerCuts
{
    /// <summary>How many bytes of the database a disk writes whole, as LiteDB does.</summary>
    public const int Page = 8192;

    private const int Sector = 512;
    private const int RandomParts = 200;
    private const string Data = "payday.db";
    private const string Log = "payday-log.db";
    private const string Journal = "payday.journal";

    public static bool Run(int seed)
    {
        var tally = new Tally();
        using var scratch = new Scratch();
        (Dictionary<string, byte[]> before, byte[] log, Dictionary<string, byte[]> after) = Closing(scratch);
        Digest old = JournalScan.Of(before[Journal]).Last!.Digest;
        Digest closed = JournalScan.Of(after[Journal]).Last!.Digest;
        var random = new Random(seed);

        // Never acknowledged: the payday may be closed or not.
        foreach (byte[] journal in Parts(random, before[Journal], after[Journal], Sector))
        {
            Try(tally, "journal being written", scratch, With(before, (Journal, journal)), [old, closed]);
        }

        // The journal is synced: from here on the payday is closed.
        Dictionary<string, byte[]> told = With(before, (Journal, after[Journal]));
        foreach (byte[] part in Parts(random, [], log, Page))
        {
            Try(tally, "log being written", scratch, With(told, (Log, part)), [closed]);
        }

        foreach (byte[] data in Parts(random, before[Data], after[Data], Page))
        {
            Try(tally, "pages being written", scratch, With(told, (Log, log), (Data, data)), [closed]);
        }

        foreach (byte[] part in Parts(random, [], log, Page))
        {
            Try(tally, "log being emptied", scratch, With(told, (Log, part), (Data, after[Data])), [closed]);
        }

        Try(tally, "closed", scratch, after, [closed]);
        LostPages.Run(tally, random);
        bool isSeen = LostNames.Run(tally, random);
        return tally.Print("power cuts") & isSeen;
    }

    private static (Dictionary<string, byte[]> Before, byte[] Log, Dictionary<string, byte[]> After) Closing(Scratch scratch)
    {
        for (int i = 0; i < 3; i++)
        {
            using BookStore store = BookStore.Open(scratch.Folder);
            Life.Of(store);
            if (i > 0)
            {
                Life.Of(store).Step();
            }
        }

        Dictionary<string, byte[]> before = scratch.Take();
        byte[] log = [];
        using (BookStore store = BookStore.Open(scratch.Folder))
        {
            Life life = Life.Of(store);
            LogFile.Synced = path => log = File.ReadAllBytes(path);
            life.Step();
            LogFile.Synced = null;
        }

        return (before, log, scratch.Take());
    }

    /// <summary>What may be on the disk of a file that was being turned from one content into another.</summary>
    /// <param name="random">What chooses parts beside the plain ones.</param>
    /// <param name="from">The one.</param>
    /// <param name="to">The other.</param>
    /// <param name="piece">How many bytes a disk writes whole.</param>
    /// <param name="randomParts">How many.</param>
    public static IEnumerable<byte[]> Parts(Random random, byte[] from, byte[] to, int piece, int randomParts = RandomParts)
    {
        int[] changed = [.. Enumerable.Range(0, (Math.Max(from.Length, to.Length) + piece - 1) / piece).Where(i => !Piece(from, i, piece).SequenceEqual(Piece(to, i, piece)))];
        for (int i = 0; i <= changed.Length; i++)
        {
            yield return Mixed(from, to, piece, [.. changed.Take(i)]);
        }

        foreach (int one in changed)
        {
            yield return Mixed(from, to, piece, [.. changed.Where(other => other != one)]);
            yield return Mixed(from, to, piece, [one]);
        }

        for (int i = 0; i < randomParts; i++)
        {
            yield return Mixed(from, to, piece, [.. changed.Where(_ => random.Next(2) == 0)]);
        }
    }

    /// <summary>A file of which some pieces are those of another.</summary>
    public static byte[] Mixed(byte[] from, byte[] to, int piece, HashSet<int> written)
    {
        // A file is as long as the last piece that was written made it; what was skipped reads as zeros.
        int length = written.Count == 0 ? from.Length : Math.Max(from.Length, Math.Min(to.Length, (written.Max() + 1) * piece));
        byte[] mixed = new byte[length];
        for (int i = 0; i * piece < length; i++)
        {
            Piece(written.Contains(i) ? to : from, i, piece)[..Math.Min(piece, length - (i * piece))].CopyTo(mixed.AsSpan(i * piece));
        }

        return mixed;
    }

    private static Span<byte> Piece(byte[] bytes, int number, int piece)
    {
        byte[] one = new byte[piece];
        int at = number * piece;
        if (at < bytes.Length)
        {
            bytes.AsSpan(at, Math.Min(piece, bytes.Length - at)).CopyTo(one);
        }

        return one;
    }

    private static Dictionary<string, byte[]> With(Dictionary<string, byte[]> files, params (string Name, byte[] Bytes)[] other)
    {
        var with = new Dictionary<string, byte[]>(files, StringComparer.Ordinal);
        foreach ((string name, byte[] bytes) in other)
        {
            with[name] = bytes;
        }

        return with;
    }

    /// <summary>Opens what a cut may have left.</summary>
    /// <param name="tally">Where the outcome goes.</param>
    /// <param name="what">What was under way.</param>
    /// <param name="scratch">Where to put the files.</param>
    /// <param name="files">What is on the disk.</param>
    /// <param name="allowed">What the book may be; a refusal where one of them is none at all.</param>
    public static void Try(Tally tally, string what, Scratch scratch, IReadOnlyDictionary<string, byte[]> files, Digest?[] allowed)
    {
        scratch.Put(files);
        try
        {
            bool said;
            using (BookStore store = BookStore.Open(scratch.Folder))
            {
                store.Load();
                said = store.Told().Length > 0;
            }

            Digest found = DatabaseState.Read(scratch.Folder) is DatabaseState.Sound state ? state.Content.Digest : default;
            CheckReport report = StoreCheck.Run(scratch.Folder);
            Finding? wrong = report.Findings.FirstOrDefault(finding => finding.Part != CheckPart.Files);
            tally.Add(what, !allowed.Contains(found) ? "LOST" : wrong is not null ? "WRONG" : said ? "mended" : "same", $"{wrong}");
        }
        catch (StoreException fault)
        {
            tally.Add(what, allowed.Contains(null) ? "refused" : "LOST", fault.Said());
        }
        catch (Exception fault)
        {
            tally.Add(what, "CRASH", fault.ToString());
        }
    }
}
