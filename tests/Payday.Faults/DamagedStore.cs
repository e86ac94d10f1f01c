using Payday.Store;
using Payday.Store.Databases;
using Payday.Store.Edits;
using Payday.Store.Folders;
using Payday.Store.Snapshots;

namespace Payday.Faults;

/// <summary>The files of a store with some damage.</summary>
/// <param name="Files">The files.</param>
/// <param name="What">What was done to which.</param>
/// <param name="Row">The same in fewer words, to be counted together.</param>
/// <param name="IsBoth">Whether both database (or its log) and journal were hit: then nothing vouches for either.</param>
/// <param name="IsOfBefore">Whether what is left of both is what was there at some earlier time.</param>
internal sealed record DamagedStore(IReadOnlyDictionary<string, byte[]> Files, string What, string Row, bool IsBoth, bool IsOfBefore)
{
    private const int Changes = 14;
    private const string Database = "payday.db";
    private const string Log = "payday-log.db";
    private const string Journal = "payday.journal";
    private const string Snapshot = "payday.snapshot";

    // Some changes of this small store: so it has a snapshot, behind the journal at times, and now and then a new one.
    private static readonly SnapshotWish OftenAndSmall = new(1, 8 * 1024);

    /// <summary>Whether a change is made before the store is checked.</summary>
    public bool GoesOn { get; private init; }

    /// <summary>Whether there is a copy of database, log or journal that Payday did not make.</summary>
    public bool HasForeignCopy => Files.Keys.Any(name => name.Contains(" (2)", StringComparison.Ordinal) && !name.StartsWith("backups", StringComparison.Ordinal) && (name.EndsWith(".db", StringComparison.Ordinal) || name.EndsWith(".journal", StringComparison.Ordinal)));

    /// <summary>Lives a while.</summary>
    public static Lived Live(Scratch scratch)
    {
        StoreFolder folder = scratch.Folder with { Snapshots = OftenAndSmall };
        var ages = new List<Dictionary<string, byte[]>>();
        var books = new List<Digest>();
        Dictionary<string, byte[]> killed = [];
        for (int i = 0; i < Changes; i++)
        {
            using (BookStore store = BookStore.Open(folder))
            {
                Life life = Life.Of(store);
                LogFile.Synced = _ => killed = scratch.Take();
                life.Step();
                LogFile.Synced = null;
                books.Add(BookDigest.Of(store.Load()));
                if (books[^1] != store.LastDigest)
                {
                    throw new InvalidOperationException("A book that was loaded is not the one that was stored.");
                }
            }

            ages.Add(scratch.Take());
        }

        return new Lived(folder, ages[..^1], ages[^1], killed, [.. books], books[^1]);
    }

    /// <summary>One with damage of a random kind to random files.</summary>
    public static DamagedStore Of(Random random, Lived lived)
    {
        Dictionary<string, byte[]> whole = random.Next(2) == 0 ? lived.Closed : lived.Killed;
        var files = new Dictionary<string, byte[]>(whole, StringComparer.Ordinal);
        string[] chosen = Choose(random, files);
        var hit = new HashSet<string>(StringComparer.Ordinal);
        List<string> told = [];
        foreach (string name in chosen.Where(files.ContainsKey))
        {
            (string what, string[] names) = Damage.Do(random, files, lived.Ages, name);
            told.Add($"{Part(name)} {what}");
            hit.UnionWith(names);
        }

        bool isBoth = hit.Contains(Journal) && (hit.Contains(Database) || hit.Contains(Log));
        bool isLogLost = whole.TryGetValue(Log, out byte[]? log) && files.GetValueOrDefault(Log) != log;
        bool isOfBefore = IsOld(Journal) && (isLogLost ? !hit.Contains(Database) || IsOld(Database) : !whole.ContainsKey(Log) && IsOld(Database));
        string row = isOfBefore ? "whole folder of before" : isBoth ? "database and journal at once" : chosen.Length > 1 ? "several, of these two at most one" : told[0];
        return new DamagedStore(files, string.Join(" + ", told), row, isBoth, isOfBefore) { GoesOn = random.Next(4) == 0 };

        bool IsOld(string name) => files.TryGetValue(name, out byte[]? now) && lived.Ages.Any(age => age.TryGetValue(name, out byte[]? old) && old == now);
    }

    private static string[] Choose(Random random, Dictionary<string, byte[]> files)
    {
        string[] database = files.TryGetValue(Log, out byte[]? log) && log.Length > 0 ? [Database, Log] : [Database];
        string[] beside = [.. files.Keys.Where(name => name != Journal && !database.Contains(name)).Order(StringComparer.Ordinal)];
        return random.Next(12) switch
        {
            0 or 1 => [One(database), Journal],
            2 => [One([.. database, Journal]), One(beside)],
            3 => [One(beside), One(beside)],
            4 => [One([.. database, Journal]), One(beside), One(beside)],
            5 or 6 => [Journal],
            7 or 8 => [One(database)],
            9 => [Snapshot],
            _ => [One(beside)],
        };

        string One(string[] names) => names[random.Next(names.Length)];
    }

    private static string Part(string name) => name switch
    {
        Database => "database",
        Log => "log",
        Journal => "journal",
        Snapshot => "snapshot",
        "payday.holder" => "holder",
        "payday.lock" => "lock",
        _ => "backup",
    };

    /// <summary>A store that was lived in.</summary>
    /// <param name="Folder">Where.</param>
    /// <param name="Ages">Its files after each change but the last, each time closed.</param>
    /// <param name="Closed">Its files after the last one, closed.</param>
    /// <param name="Killed">The same, of a program that was killed once the log was synced, and before the pages were written.</param>
    /// <param name="Older">The digests of the books after each change.</param>
    /// <param name="Sound">The last of them.</param>
    public sealed record Lived(
        StoreFolder Folder,
        List<Dictionary<string, byte[]>> Ages,
        Dictionary<string, byte[]> Closed,
        Dictionary<string, byte[]> Killed,
        HashSet<Digest> Older,
        Digest Sound);
}
