using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Contents;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Faults;

/// <summary>Flips, cuts, overwrites, deletes, ages, swaps, doubles and copies the files of a store, and opens it.</summary>
/// <remarks>
/// Half of the stores were closed, half were killed once the log was synced, so that log, holder and an older
/// database are there. Damage to one file, or to several of which only one is the database or the journal, must lose
/// nothing. Damage to both may be refused with a message, but must never come out as another book. What the book is, is
/// said by the digest over all documents that the book as it was loaded comes to.
/// </remarks>
internal static class Damages
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    public static bool Run(int count, int seed, int from = 0)
    {
        using var scratch = new Scratch();
        var lived = DamagedStore.Live(scratch);
        var tally = new Tally();
        for (int i = from; i < from + count; i++)
        {
            var damaged = DamagedStore.Of(new Random(HashCode(seed, i)), lived);
            scratch.Put(damaged.Files);
            Task<(string, string)> opened = Task.Run(() => Open(lived.Folder, damaged, lived));
            (string outcome, string detail) = opened.Wait(Patience) ? opened.Result : ("CRASH", "it does not come to an end");
            if (damaged.IsOfBefore && outcome == "WRONG")
            {
                // Sound copies of before, one change apart at most: as a program leaves them that is killed between the two.
                // Nothing in the folder can tell, where no backup goes further.
                outcome = "older, unsaid";
            }

            if (outcome is "refused" or "older, said" && !damaged.IsBoth)
            {
                outcome = "LOST";
            }

            tally.Add(damaged.Row, outcome, $"seed {seed}, number {i}: {damaged.What}: {detail}");
        }

        return tally.Print("damages");
    }

    private static int HashCode(int seed, int number) => unchecked((seed * 1_000_003) + number);

    // Opens it, checks it whole, mends what only a whole look finds, and holds what is shown and stored against what was.
    private static (string Outcome, string Detail) Open(StoreFolder folder, DamagedStore damaged, DamagedStore.Lived lived)
    {
        try
        {
            (Digest shown, string said, string doubts) = Shown(folder);
            if (damaged.HasForeignCopy != doubts.Length > 0)
            {
                return ("WRONG", $"of copies beside it was said: {doubts}");
            }

            CheckReport report = StoreCheck.Run(folder);
            StoreCheck.Mend(folder);
            Finding[] left = [.. StoreCheck.Run(folder).Findings.Where(finding => finding.Part != "backups")];
            Digest stored = DatabaseState.Read(folder) is DatabaseState.Sound state ? state.Content.Digest : default;
            bool isKept = Shown(folder).Book == shown && stored == shown;
            return (shown == lived.Sound, said.Length > 0, report.Findings.Any(finding => finding.Part != "files")) switch
            {
                _ when left.Length > 0 => ("WRONG", $"not mended: {left[0]}"),
                _ when !isKept => ("WRONG", $"mending makes another book of it; it said: {said}"),
                (true, true, _) => ("mended", ""),
                (true, _, true) => ("found", ""),
                (true, _, _) => ("same", ""),
                (_, true, _) when lived.Older.Contains(shown) => ("older, said", said),
                _ => ("WRONG", $"another book; it said: {said}"),
            };
        }
        catch (StoreException fault)
        {
            return ("refused", fault.Message);
        }
        catch (Exception fault)
        {
            return ("CRASH", fault.ToString());
        }
    }

    private static (Digest Book, string Said, string Doubts) Shown(StoreFolder folder)
    {
        using BookStore store = BookStore.Open(folder);
        Digest book = BookDigest.Of(store.Load());
        string[] doubts = [.. FolderDoubts.Of(folder)];
        return (book, string.Join(' ', store.Notices.Except(doubts)), string.Join(' ', doubts));
    }
}
