using Payday.Store;
using Payday.Store.Backups;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Restores;

namespace Payday.Faults;

/// <summary>Cuts the power, in simulation, while names are made, renamed and deleted.</summary>
/// <remarks>
/// A name is on the disk for certain once its folder was synced; before, any of the names that changed since may be
/// there or not, in any combination. The bytes of a file are taken as synced, which <see cref="PowerCuts"/> tries. To
/// show that it would see syncs that are missing, all are left out from each on: then something must be lost somewhere.
/// </remarks>
internal static class LostNames
{
    private const int RandomParts = 60;

    /// <summary>Tries each piece of work; returns whether leaving syncs out was seen.</summary>
    public static bool Run(Tally tally, Random random)
    {
        (string What, int Changes, Action<StoreFolder> Damage, Func<StoreFolder, Digest> Work, bool MayRefuse)[] works =
        [
            ("names: first change", 0, _ => { }, Change, false),
            ("names: closing with its backup", 3, _ => { }, Change, false),
            ("names: database rebuilt", 5, folder => File.WriteAllBytes(folder.Database, new byte[100]), Opened, false),
            ("names: journal begun anew", 3, folder => File.Delete(folder.Journal), Opened, false),
            ("names: put back to a backup", 6, _ => { }, Restored, true),
        ];
        int seen = 0;
        int syncs = 0;
        foreach (var work in works)
        {
            int count = Try(tally, random, work.What, work.Changes, work.Damage, work.Work, work.MayRefuse, leftOut: -1);
            for (int leftOut = 0; leftOut < count; leftOut++, syncs++)
            {
                var without = new Tally { IsQuiet = true };
                Try(without, random, work.What, work.Changes, work.Damage, work.Work, work.MayRefuse, leftOut);
                seen += without.IsSound ? 0 : 1;
            }
        }

        Console.WriteLine($"Of {syncs} syncs of a folder, {seen} lose something where they and all after them are left out.");
        return seen > 0;
    }

    private static int Try(
        Tally tally, Random random, string what, int changes, Action<StoreFolder> damage, Func<StoreFolder, Digest> work, bool mayRefuse, int leftOut)
    {
        using var scratch = new Scratch();
        for (int i = 0; i < changes; i++)
        {
            using BookStore store = BookStore.Open(scratch.Folder);
            Life.Next(store);
        }

        Digest before = JournalScan.Read(scratch.Folder.Journal).Last?.Digest ?? default;
        damage(scratch.Folder);
        FolderImage disk = FolderImage.Of(scratch.Root);
        List<(FolderImage Disk, FolderImage Memory)> moments = [];
        FolderSync.Syncing = folder =>
        {
            FolderImage memory = FolderImage.Of(scratch.Root);
            moments.Add((disk, memory));
            string synced = Path.GetRelativePath(scratch.Root, folder);
            disk = leftOut >= 0 && moments.Count > leftOut ? disk : disk.With(synced == "." ? "" : synced, memory);
        };
        Digest after = work(scratch.Folder);
        FolderSync.Syncing = null;
        using var tried = new Scratch();
        foreach ((FolderImage then, FolderImage memory) in moments)
        {
            Digest?[] allowed = mayRefuse ? [before, after, null] : [before, after];
            Each(random, then, memory, files => PowerCuts.Try(tally, what, tried, files, allowed));
        }

        Each(random, disk, FolderImage.Of(scratch.Root), files => PowerCuts.Try(tally, what + ", told", tried, files, [after]));
        return moments.Count;
    }

    private static void Each(Random random, FolderImage disk, FolderImage memory, Action<Dictionary<string, byte[]>> look)
    {
        string[] changed = disk.Changed(memory);
        IEnumerable<string[]> parts = changed.Length <= 6
            ? Enumerable.Range(0, 1 << changed.Length).Select(bits => changed.Where((_, i) => (bits >> i & 1) == 1).ToArray())
            : Enumerable.Range(0, RandomParts).Select(_ => changed.Where(_ => random.Next(2) == 0).ToArray()).Append([]).Append(changed);
        foreach (string[] part in parts)
        {
            look(disk.Files(memory, part).Where(file => file.Key.StartsWith("data/", StringComparison.Ordinal)).ToDictionary(file => file.Key["data/".Length..], file => file.Value));
        }
    }

    private static Digest Change(StoreFolder folder)
    {
        using BookStore store = BookStore.Open(folder);
        Life.Next(store);
        return store.LastDigest;
    }

    private static Digest Opened(StoreFolder folder)
    {
        using BookStore store = BookStore.Open(folder);
        store.Load();
        return store.LastDigest;
    }

    private static Digest Restored(StoreFolder folder)
    {
        string backup = BackupFiles.List(folder.Backups)[0].Path;
        using (Restoring restoring = Restoring.Begin(folder))
        {
            restoring.Put(restoring.Find(backup)!);
        }

        return JournalScan.Read(folder.Journal).Last!.Digest;
    }
}
