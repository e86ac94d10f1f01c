using System.Diagnostics;
using System.Globalization;
using Payday.Core.Books;
using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;

namespace Payday.Faults;

/// <summary>Two processes on one folder: the second is told who has it since when and may look; a killed one leaves it free; two that take turns lose nothing.</summary>
internal static class Neighbours
{
    private const int TurnsEach = 20;

    public static bool Run(int rounds)
    {
        var tally = new Tally();
        for (int i = 0; i < rounds; i++)
        {
            using var scratch = new Scratch();
            using (BookStore store = BookStore.Open(scratch.Folder))
            {
                Life.Next(store);
            }

            BesideOne(tally, scratch.Folder);
            InTurn(tally, scratch.Folder);
        }

        return tally.Print("two processes");
    }

    /// <summary>The process that has the folder: it says so, and keeps it until it is killed.</summary>
    public static bool Hold(string path)
    {
        using BookStore store = BookStore.Open(new StoreFolder(path));
        Console.WriteLine("open");
        Console.ReadLine();
        return true;
    }

    /// <summary>The process that takes turns: each change opens the store anew, again and again where another has it.</summary>
    public static bool TakeTurns(string path)
    {
        for (int left = TurnsEach; left > 0;)
        {
            try
            {
                using BookStore store = BookStore.Open(new StoreFolder(path));
                Life.Next(store);
                Console.WriteLine(store.LastChange.ToString(CultureInfo.InvariantCulture));
                left--;
            }
            catch (StoreException fault) when (fault.Fault is FolderFault.Taken)
            {
                Thread.Sleep(1);
            }
        }

        return true;
    }

    private static void BesideOne(Tally tally, StoreFolder folder)
    {
        string stored;
        using (BookStore store = BookStore.Open(folder))
        {
            stored = Text(store.Load()!);
        }

        using Process holder = Start("hold", folder);
        holder.StandardOutput.ReadLine();
        string expected = string.Create(CultureInfo.InvariantCulture, $"Another Payday has {folder.Path} open (process {holder.Id}, since ");
        try
        {
            BookStore.Open(folder).Dispose();
            tally.Add("second opening", "WRONG", "it was let in");
        }
        catch (StoreException fault)
        {
            tally.Add("second opening", fault.Fault is FolderFault.Taken && fault.Said().StartsWith(expected, StringComparison.Ordinal) ? "refused" : "WRONG", fault.Said());
        }

        BookPeek look = BookStore.Peek(folder);
        tally.Add("a look beside the first", look.Book is { } seen && Text(seen) == stored && look.Holder.Process == holder.Id ? "same" : "WRONG", look.Holder.ToString());
        holder.Kill();
        holder.WaitForExit();
        using BookStore free = BookStore.Open(folder);
        tally.Add("opening after the first was killed", Text(free.Load()!) == stored && free.Told().Length == 0 ? "same" : "WRONG", string.Join(' ', free.Told()));
    }

    private static void InTurn(Tally tally, StoreFolder folder)
    {
        long before;
        using (BookStore store = BookStore.Open(folder))
        {
            before = store.LastChange;
        }

        Process[] both = [Start("turns", folder), Start("turns", folder)];
        string[] said = [.. both.Select(process => process.StandardOutput.ReadToEndAsync()).ToArray().SelectMany(task => task.Result.Split('\n', StringSplitOptions.RemoveEmptyEntries))];
        foreach (Process process in both)
        {
            process.WaitForExit();
            process.Dispose();
        }

        // Each number was acknowledged to one of them alone.
        IEnumerable<string> wanted = Enumerable.Range(1, 2 * TurnsEach).Select(i => (before + i).ToString(CultureInfo.InvariantCulture));
        bool isAll = said.Order(StringComparer.Ordinal).SequenceEqual(wanted.Order(StringComparer.Ordinal));
        CheckReport report = StoreCheck.Run(folder);
        tally.Add(
            "two that take turns",
            isAll && report.Changes == before + (2 * TurnsEach) && report.Findings.IsEmpty ? "same" : "LOST",
            $"{said.Length} acknowledged, {report.Changes - before} stored {string.Join(' ', report.Findings.Select(one => one.Said()))}");
    }

    private static string Text(Book book) => HouseholdFile.Write(book.Household) + string.Join('\n', book.Ledger.Movements);

    private static Process Start(string work, StoreFolder folder) => Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [work, folder.Path])
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
    })!;
}
