using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Store;

namespace Payday.Faults;

/// <summary>How long opening, reading and storing take in stores of growing age.</summary>
internal static class Growth
{
    private const int WeeksAYear = 52;
    private const int Times = 9;
    private const int Changes = 10;

    /// <summary>Makes a store of an age in a folder.</summary>
    public static bool Make(string path, int years)
    {
        using BookStore store = BookStore.Open(new StoreFolder(path));
        long start = Stopwatch.GetTimestamp();
        Book book = LongLife.Live(store, years * WeeksAYear);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{years} years: {book.Ledger.Movements.Count} movements, {store.LastChange} changes, {Since(start) / 1000:0} s."));
        return true;
    }

    /// <summary>Measures the stores of some folders.</summary>
    public static bool Measure(IEnumerable<string> paths)
    {
        Console.WriteLine("| paydays | movements | records | open and read, ms | the same without a snapshot | change, ms | journal MB | database MB | snapshot MB |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (string path in paths)
        {
            var folder = new StoreFolder(path);
            File.Delete(folder.Snapshot);
            double whole = Opened(folder, out Book book, out double _);
            double[] opened = [.. Enumerable.Range(0, Times).Select(_ => Opened(folder, out book, out double _)).Order()];
            Opened(folder, out book, out double change);
            int records = book.Ledger.Movements.Count + book.Closed.Length + book.Weeks.Fills.Length + book.Weeks.Purchases.Length + book.Weeks.Counts.Length;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {book.Closed.Length} | {book.Ledger.Movements.Count} | {records} | {opened[Times / 2]:0} | {whole:0} | {change:0.0} | {Megabytes(folder.Journal)} | {Megabytes(folder.Database)} | {Megabytes(folder.Snapshot)} |"));
        }

        return true;
    }

    private static double Opened(StoreFolder folder, out Book book, out double change)
    {
        long start = Stopwatch.GetTimestamp();
        using BookStore store = BookStore.Open(folder);
        book = store.Load()!;
        double opened = Since(start);
        change = Change(store, book.Ledger.Movements[^1]);
        return opened;
    }

    // There and back as often, so that all balances stay.
    private static double Change(BookStore store, Movement like)
    {
        double[] times = [.. Enumerable.Range(0, Changes).Select(i =>
        {
            Movement movement = i % 2 == 0 ? like : like with { From = like.To, To = like.From };
            long start = Stopwatch.GetTimestamp();
            store.Save(new BookChange { Movements = ImmutableArray.Create(movement) });
            return Since(start);
        }).Order()];
        return times[Changes / 2];
    }

    private static double Since(long start) => Stopwatch.GetElapsedTime(start).TotalMilliseconds;

    private static string Megabytes(string path) => File.Exists(path) ? $"{new FileInfo(path).Length / 1e6:0.0}" : "-";
}
