using System.Collections.Immutable;
using System.Diagnostics;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Store;

namespace Payday.Faults;

/// <summary>How long opening, loading and storing take in stores of growing size.</summary>
internal static class Growth
{
    public static bool Run()
    {
        Console.WriteLine("| movements | open ms | load ms | change ms | journal MB | database MB |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- |");
        foreach (int size in (int[])[10_000, 50_000, 100_000, 200_000])
        {
            using var scratch = new Scratch();
            using (BookStore store = BookStore.Open(scratch.Folder))
            {
                Life.Of(store);
                Movement like = store.Load()!.Ledger.Movements[0];
                for (int left = size; left > 0; left -= 5_000)
                {
                    store.Save(new BookChange { Movements = [.. Enumerable.Repeat(like with { Amount = Money.FromMinorUnits(1, like.Amount.Currency) }, 5_000)] });
                }
            }

            long start = Stopwatch.GetTimestamp();
            using BookStore grown = BookStore.Open(scratch.Folder);
            double open = Since(start);
            start = Stopwatch.GetTimestamp();
            Movement one = grown.Load()!.Ledger.Movements[^1];
            double load = Since(start);
            start = Stopwatch.GetTimestamp();
            for (int i = 0; i < 20; i++)
            {
                grown.Save(new BookChange { Movements = ImmutableArray.Create(one) });
            }

            Console.WriteLine($"| {size} | {open:0} | {load:0} | {Since(start) / 20:0.0} | {Megabytes(grown.Folder.Journal)} | {Megabytes(grown.Folder.Database)} |");
        }

        return true;
    }

    private static double Since(long start) => Stopwatch.GetElapsedTime(start).TotalMilliseconds;

    private static string Megabytes(string path) => $"{new FileInfo(path).Length / 1e6:0.0}";
}
