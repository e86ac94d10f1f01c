using System.Text;
using Payday.Core.Books;
using Payday.Store;
using Payday.Store.Databases;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Faults.Programs;

/// <summary>A store before the program works on it, and what has become of it when that was killed.</summary>
/// <param name="Book">The book; null where there is none yet.</param>
/// <param name="Last">The last line of the journal.</param>
internal sealed record KilledStore(Book? Book, JournalLine? Last)
{
    /// <summary>How many changes it has.</summary>
    public long Changes => Last?.Number ?? 0;

    /// <summary>Reads it.</summary>
    public static KilledStore Of(StoreFolder folder)
    {
        if (!folder.HasBook)
        {
            return new KilledStore(null, null);
        }

        using BookStore store = BookStore.Open(folder);
        return new KilledStore(store.Load(), JournalScan.Read(folder.Journal).Last);
    }

    /// <summary>Where the kill fell, as the files tell it that nobody has opened since.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="acknowledged">How many changes were acknowledged.</param>
    public string PhaseOf(StoreFolder folder, int acknowledged)
    {
        if (!File.Exists(folder.Database))
        {
            return "while the store was made";
        }

        JournalScan journal = JournalScan.Read(folder.Journal);
        if (!journal.IsWhole)
        {
            return "with half a line in the journal";
        }

        var files = new DatabaseFiles(folder.Database);
        byte[] sha = Encoding.UTF8.GetBytes(journal.Last?.Sha ?? JournalLine.Nothing);
        bool isUnopened = !File.Exists(folder.Holder);
        return (journal.Last?.Number ?? 0) == Changes + acknowledged
            ? isUnopened ? "outside the store" : "between changes"
            : Bytes(files.Data).AsSpan().IndexOf(sha) >= 0
                ? files.LogLength > 0 ? "while pages were written" : "when all was stored and nothing told"
                : Bytes(files.Log).AsSpan().IndexOf(sha) >= 0 ? "when the log had it, not the pages" : "when the journal alone had it";
    }

    /// <summary>Lets the program open and check what is there, and holds it against what was acknowledged.</summary>
    /// <param name="scratch">Where the store is.</param>
    /// <param name="fewest">How many more changes there must be.</param>
    /// <param name="most">How many there may be.</param>
    /// <param name="missing">What a book lacks that was acknowledged; null for nothing.</param>
    public (string Outcome, string Detail) Look(Scratch scratch, int fewest, int most, Func<Book?, string?> missing)
    {
        string[] data = ["--data", scratch.Folder.Path];
        (int exit, string said, string complained) = ProgramUnderTest.Run(["show", "pots", .. data]);
        JournalScan journal = JournalScan.Read(scratch.Folder.Journal);
        long more = (journal.Last?.Number ?? 0) - Changes;
        if (!ProgramUnderTest.HasItsOwnWords(said, complained) || exit != (journal.Last is null ? 1 : 0))
        {
            return ("CRASH", $"opened by the program, exit {exit}: {said}{complained}");
        }

        if (more < fewest || (Last is not null && !journal.Lines.Any(line => line.Sha == Last.Sha)))
        {
            return ("LOST", $"{fewest} more changes were acknowledged, {more} more are stored");
        }

        if (more > most)
        {
            return ("WRONG", $"{fewest} more changes were acknowledged, {more} more are stored");
        }

        if (complained.Contains("This is a look", StringComparison.Ordinal))
        {
            return ("WRONG", $"nobody should have it open any more: {complained}");
        }

        bool isSaid = complained.Length > 0 && exit == 0;
        (exit, said, complained) = ProgramUnderTest.Run(["check", .. data]);
        if (journal.Last is not null && (exit != 0 || !said.Contains("Nothing is wrong", StringComparison.Ordinal)))
        {
            return ("WRONG", $"payday check, exit {exit}: {said}{complained}");
        }

        return missing(Of(scratch.Folder).Book) is { } lost ? ("LOST", $"{lost} was acknowledged and is not there") : (isSaid ? "mended" : "same", complained);
    }

    private static byte[] Bytes(string path) => File.Exists(path) ? File.ReadAllBytes(path) : [];
}
