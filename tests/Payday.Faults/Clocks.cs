using Payday.Store;
using Payday.Store.Backups;
using Payday.Store.Checks;
using Payday.Store.Databases;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Folders;

namespace Payday.Faults;

/// <summary>Sets the clock back and forth between changes: by a second, a day, ten years, to before 1970.</summary>
/// <remarks>The clock is one that the store is given, not the system's: files keep their own times, which nothing of Payday reads.</remarks>
internal static class Clocks
{
    private const int Changes = 24;

    public static bool Run(int lives, int seed)
    {
        var random = new Random(seed);
        var tally = new Tally();
        for (int life = 0; life < lives; life++)
        {
            using var scratch = new Scratch();
            var clock = new SetClock();
            StoreFolder folder = scratch.Folder with { Clock = clock };
            Digest last = default;
            string said = "";
            for (int i = 0; i < Changes; i++)
            {
                clock.Now = Jump(random, clock.Now);
                using BookStore store = BookStore.Open(folder);
                Life.Next(store);
                last = store.LastDigest;
                said += string.Join(' ', store.Told());
            }

            tally.Add("clock set at random", Outcome(folder, last, said, out string detail), $"seed {seed}, life {life}: {detail}");
            tally.Add("the same, rebuilt", Rebuilt(folder, last, out detail), $"seed {seed}, life {life}: {detail}");
        }

        return tally.Print("clocks");
    }

    private static string Outcome(StoreFolder folder, Digest last, string said, out string detail)
    {
        using (BookStore store = BookStore.Open(folder))
        {
            store.Load();
            said += string.Join(' ', store.Told());
            if (store.LastDigest != last)
            {
                detail = said;
                return "LOST";
            }
        }

        // The backup before the last closing is there whatever its date.
        long furthest = BackupFiles.List(folder.Backups).Max(file => file.Number);
        detail = $"{said} {string.Join(' ', StoreCheck.Run(folder).Findings)} backup up to {furthest}";
        return detail == $"  backup up to {Changes - 3}" ? "same" : "WRONG";
    }

    private static string Rebuilt(StoreFolder folder, Digest last, out string detail)
    {
        new DatabaseFiles(folder.Database).Delete();
        using BookStore store = BookStore.Open(folder);
        detail = string.Join(' ', store.Told());
        return store.Load() is not null && store.LastDigest == last ? "mended" : "LOST";
    }

    private static DateTimeOffset Jump(Random random, DateTimeOffset now) => random.Next(6) switch
    {
        0 => now.AddSeconds(-1),
        1 => now.AddDays(-random.Next(1, 40)),
        2 => new DateTimeOffset(1969, 12, 31, 23, 59, 0, TimeSpan.Zero).AddDays(random.Next(20_000)),
        3 => now.AddYears(random.Next(1, 10)),
        4 => now,
        _ => now.AddDays(14),
    };

    private sealed class SetClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 3, 6, 10, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
