using BenchmarkDotNet.Attributes;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Faults;
using Payday.Store;
using Payday.Store.Folders;

namespace Payday.Benchmarks.Store;

/// <summary>Opening and reading a store that has been lived in for years, and one change of it, synced to disk.</summary>
/// <remarks>The same of 30 years, published ahead of time, is measured by <c>tests/Payday.Faults -- live</c> and <c>-- growth</c>.</remarks>
public class StoreBenchmark
{
    private const int WeeksAYear = 52;

    private string path = "";
    private BookStore? store;
    private Movement? next;
    private Book? book;

    /// <summary>How long it was lived in, paid every week.</summary>
    [Params(1, 3)]
    public int Years { get; set; }

    [GlobalSetup(Target = nameof(OpenAndRead))]
    public void Live()
    {
        path = Directory.CreateTempSubdirectory("payday-benchmark-").FullName;
        using (BookStore lived = BookStore.Open(new StoreFolder(path)))
        {
            LongLife.Live(lived, Years * WeeksAYear);
        }

        // The first to read it leaves the snapshot.
        OpenAndRead();
    }

    [GlobalSetup(Target = nameof(Change))]
    public void Open()
    {
        Live();
        store = BookStore.Open(new StoreFolder(path));
        book = store.Load()!;
        next = book.Ledger.Movements[^1];
    }

    [GlobalCleanup]
    public void Remove()
    {
        store?.Dispose();
        Directory.Delete(path, recursive: true);
    }

    [Benchmark]
    public Book? OpenAndRead()
    {
        using BookStore opened = BookStore.Open(new StoreFolder(path));
        return opened.Load();
    }

    [Benchmark]
    public long Change()
    {
        // There and back, so that all balances stay.
        next = next! with { From = next.To, To = next.From };
        Book after = book! with { Ledger = book.Ledger.Add([next]) };
        store!.Save(book, after);
        book = after;
        return store.LastChange;
    }
}
