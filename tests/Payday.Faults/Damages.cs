using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Contents;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Faults;

/// <summary>Flips, cuts, overwrites, deletes, ages, swaps and doubles the files of a store, and opens it.</summary>
/// <remarks>
/// Damage to one file must lose nothing. Damage to both database and journal may be refused with a message, but must
/// never come out as another book. What the book is, is said by the digest over all documents.
/// </remarks>
internal static class Damages
{
    private const int Changes = 14;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    public static bool Run(int count, int seed, int from = 0)
    {
        using var scratch = new Scratch();
        (List<Dictionary<string, byte[]>> ages, Digest sound) = Grow(scratch);
        HashSet<Digest> older = [.. ages.Select(age => JournalScan.Of(age["payday.journal"]).Last!.Digest)];
        var tally = new Tally();
        for (int i = from; i < from + count; i++)
        {
            var random = new Random(HashCode(seed, i));
            Dictionary<string, byte[]> files = new(ages[^1], StringComparer.Ordinal);
            string[] hit = random.Next(6) switch
            {
                0 => ["payday.db", "payday.journal"],
                1 or 2 => ["payday.journal"],
                3 => [files.Keys.First(name => name.EndsWith(".gz", StringComparison.Ordinal))],
                _ => ["payday.db"],
            };
            string what = string.Join(" + ", hit.Select(name => $"{Part(name)} {Damage.Do(random, files, ages, name)}"));
            bool wholeOfBefore = hit.Length > 1 && hit.All(name => files.TryGetValue(name, out byte[]? now) && ages[..^1].Any(age => ReferenceEquals(now, age[name])));
            what = wholeOfBefore ? "whole folder of before" : hit.Length > 1 ? "database and journal at once" : what;
            scratch.Put(files);
            Task<(string, string)> opened = Task.Run(() => Open(scratch.Folder, older, sound));
            (string outcome, string detail) = opened.Wait(Patience) ? opened.Result : ("CRASH", "it does not come to an end");
            if (wholeOfBefore && outcome == "WRONG")
            {
                // Sound copies of before, one change apart at most: as a program leaves them that is killed between the two.
                // Nothing in the folder can tell, where no backup goes further.
                outcome = "older, unsaid";
            }

            if (outcome is "refused" or "older, said" && hit.Length == 1)
            {
                outcome = "LOST";
            }

            tally.Add(what, outcome, $"seed {seed}, number {i}: {detail}");
        }

        return tally.Print("damages");
    }

    private static int HashCode(int seed, int number) => unchecked((seed * 1_000_003) + number);

    private static string Part(string name) => name switch
    {
        "payday.db" => "database",
        "payday.journal" => "journal",
        _ => "backup",
    };

    private static (List<Dictionary<string, byte[]>> Ages, Digest Sound) Grow(Scratch scratch)
    {
        var ages = new List<Dictionary<string, byte[]>>();
        for (int i = 0; i < Changes; i++)
        {
            using (BookStore store = BookStore.Open(scratch.Folder))
            {
                Life.Of(store).Step();
            }

            ages.Add(scratch.Take());
        }

        return (ages, JournalScan.Read(scratch.Folder.Journal).Last!.Digest);
    }

    // Opens it, checks it whole, mends what only a whole look finds, and holds what is stored against what was.
    private static (string Outcome, string Detail) Open(StoreFolder folder, HashSet<Digest> older, Digest sound)
    {
        try
        {
            string said;
            using (BookStore store = BookStore.Open(folder))
            {
                store.Load();
                said = string.Join(' ', store.Notices);
            }

            Digest found = Stored(folder);
            CheckReport report = StoreCheck.Run(folder);
            StoreCheck.Mend(folder);
            Finding[] left = [.. StoreCheck.Run(folder).Findings.Where(finding => finding.Part != "backups")];
            return (found == sound && Stored(folder) == sound, said.Length > 0, report.Findings.Any(finding => finding.Part != "files")) switch
            {
                _ when left.Length > 0 => ("WRONG", $"not mended: {left[0]}"),
                (true, true, _) => ("mended", ""),
                (true, _, true) => ("found", ""),
                (true, _, _) => ("same", ""),
                (_, true, _) when older.Contains(found) => ("older, said", said),
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

    private static Digest Stored(StoreFolder folder) => DatabaseState.Read(folder) is DatabaseState.Sound state ? state.Content.Digest : default;
}
