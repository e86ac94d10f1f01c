using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Store;
using Payday.Store.Changes;
using Payday.Store.Folders;

namespace Payday.Faults;

/// <summary>How long opening, reading and storing take in stores of growing age.</summary>
internal static class Growth
{
    private const int WeeksAYear = 52;
    private const int Times = 9;
    private const int HowMany = 10;

    /// <summary>Makes a store of an age in a folder.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="years">The age.</param>
    /// <param name="last">The payday that was closed last, so that what the program says of today is what it says to such a household; null for any.</param>
    public static bool Make(string path, int years, LocalDate? last = null)
    {
        using BookStore store = BookStore.Open(new StoreFolder(path));
        long start = Stopwatch.GetTimestamp();
        Book book = LongLife.Live(store, years * WeeksAYear, last?.PlusWeeks(1 - (years * WeeksAYear)));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{years} years: {book.Ledger.Movements.Count} movements, {store.LastChange} changes, {Since(start) / 1000:0} s."));
        return true;
    }

    /// <summary>Measures the stores of some folders, each opening in a process of its own, as it is with the program.</summary>
    public static bool Measure(IEnumerable<string> paths)
    {
        Console.WriteLine("| paydays | movements | records | open and read, ms | the same without a snapshot | first change, ms | later ones | journal MB | database MB | snapshot MB |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (string path in paths)
        {
            var folder = new StoreFolder(path);
            File.Delete(folder.Snapshot);
            string[] whole = Process(path);
            string[][] opened = [.. Enumerable.Range(0, Times).Select(_ => Process(path))];
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {whole[0]} | {Median(opened, 1):0} | {whole[1]} | {Median(opened, 2):0.0} | {Median(opened, 3):0.0} | {Megabytes(folder.Journal)} | {Megabytes(folder.Database)} | {Megabytes(folder.Snapshot)} |"));
        }

        return true;
    }

    /// <summary>Opens a store, reads it and changes it, and says how long each took.</summary>
    public static bool Open(string path)
    {
        long start = Stopwatch.GetTimestamp();
        using BookStore store = BookStore.Open(new StoreFolder(path));
        Book book = store.Load()!;
        double opened = Since(start);
        double[] changes = Changes(store, book.Ledger.Movements[^1]);
        int records = book.Ledger.Movements.Count + book.Closed.Length + book.Weeks.Fills.Length + book.Weeks.Purchases.Count + book.Weeks.Counts.Count;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{book.Closed.Length} | {book.Ledger.Movements.Count} | {records};{opened:0.0};{changes[0]:0.00};{changes.Skip(1).Order().ElementAt(HowMany / 2):0.00}"));
        return true;
    }

    private static string[] Process(string path)
    {
        using Process opening = System.Diagnostics.Process.Start(new ProcessStartInfo(Environment.ProcessPath!) { ArgumentList = { "open", path }, RedirectStandardOutput = true })!;
        return opening.StandardOutput.ReadToEnd().Trim().Split(';');
    }

    private static double Median(string[][] lines, int field) =>
        lines.Select(line => double.Parse(line[field], CultureInfo.InvariantCulture)).Order().ElementAt(lines.Length / 2);

    // There and back as often, so that all balances stay.
    private static double[] Changes(BookStore store, Movement like) => [.. Enumerable.Range(0, HowMany).Select(i =>
    {
        Movement movement = i % 2 == 0 ? like : like with { From = like.To, To = like.From };
        long start = Stopwatch.GetTimestamp();
        store.Save(new BookChange { Movements = ImmutableArray.Create(movement) });
        return Since(start);
    })];

    private static double Since(long start) => Stopwatch.GetElapsedTime(start).TotalMilliseconds;

    private static string Megabytes(string path) => File.Exists(path) ? $"{new FileInfo(path).Length / 1e6:0.0}" : "-";
}
