using Payday.Store;
using Payday.Store.Databases;
using Payday.Store.Edits;
using Payday.Store.Folders;

namespace Payday.Faults;

/// <summary>Cuts the power, in simulation, where the disk never got the database's pages although it was asked to, and the program went on.</summary>
/// <remarks>
/// LiteDB syncs its pages itself and is not told when that fails; disks that lie about it are no other. So after
/// several further changes each page may be as it was at any of those moments, and so may the log, while the journal,
/// whose sync is ours, is whole. Each older moment of the pages is tried with each of the log, each two moments of the
/// pages mixed, and pages of any moments. With a snapshot opening reads none of the documents, so a change is
/// made on top of such pages too before they are checked.
/// </remarks>
internal static class LostPages
{
    private const int Before = 3;
    private const int Later = 6;
    private const int RandomParts = 12;
    private const int RandomMixes = 60;
    private const string Data = "payday.db";
    private const string Log = "payday-log.db";

    public static void Run(Tally tally, Random random)
    {
        Run(tally, random, "pages lost", SnapshotWish.Usual);
        Run(tally, random, "pages lost, with a snapshot", new SnapshotWish(1, 8 * 1024));
    }

    private static void Run(Tally tally, Random random, string what, SnapshotWish snapshots)
    {
        using var scratch = new Scratch();
        StoreFolder folder = scratch.Folder with { Snapshots = snapshots };
        (List<byte[]> pages, List<byte[]> logs, Dictionary<string, byte[]> last, Digest sound) = Live(scratch, folder);
        void Try(string how, byte[] data, byte[] log)
        {
            var files = new Dictionary<string, byte[]>(last, StringComparer.Ordinal) { [Data] = data, [Log] = log };
            scratch.Put(files);
            (string outcome, string detail) = new Opening(folder, sound) { GoesOn = random.Next(2) == 0 }.Try();
            tally.Add($"{what}: {how}", outcome == "refused" ? "LOST" : outcome, detail);
        }

        // The log as it was emptied, and as it was before each emptying.
        byte[][] anyLog = [[], .. logs];
        foreach (byte[] data in pages)
        {
            foreach (byte[] log in anyLog)
            {
                Try("of one moment", data, log);
            }
        }

        for (int i = 0; i < pages.Count - 1; i++)
        {
            foreach (byte[] mixed in PowerCuts.Parts(random, pages[i], pages[^1], PowerCuts.Page, RandomParts))
            {
                Try("of two moments", mixed, anyLog[random.Next(anyLog.Length)]);
            }
        }

        for (int i = 0; i < RandomMixes; i++)
        {
            byte[] mixed = pages.Aggregate((all, later) => PowerCuts.Mixed(all, later, PowerCuts.Page, [.. Enumerable.Range(0, later.Length / PowerCuts.Page).Where(_ => random.Next(2) == 0)]));
            Try("of any moments", mixed, anyLog[random.Next(anyLog.Length)]);
        }
    }

    // One process: pages and log after each change, and all files at the end.
    private static (List<byte[]> Pages, List<byte[]> Logs, Dictionary<string, byte[]> Last, Digest Sound) Live(Scratch scratch, StoreFolder folder)
    {
        for (int i = 0; i < Before; i++)
        {
            using BookStore before = BookStore.Open(folder);
            Life.Next(before);
        }

        List<byte[]> pages = [scratch.Take()[Data]];
        List<byte[]> logs = [];
        using BookStore store = BookStore.Open(folder);
        Life life = Life.Of(store);
        for (int i = 0; i < Later; i++)
        {
            LogFile.Synced = path => logs.Add(File.ReadAllBytes(path));
            life.Step();
            LogFile.Synced = null;
            pages.Add(scratch.Take()[Data]);
        }

        store.FinishBackups();
        return (pages, logs, scratch.Take(), store.LastDigest);
    }
}
