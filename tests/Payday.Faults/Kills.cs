using System.Diagnostics;
using System.Globalization;
using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Faults;

/// <summary>Kills a process at random moments while it closes paydays, reopens them and enters purchases.</summary>
internal static class Kills
{
    // A store that has grown this far is begun anew: what is to be met is the work, not its size.
    private const int MostChanges = 400;

    public static bool Run(int count, int seed)
    {
        var random = new Random(seed);
        var tally = new Tally();
        var scratch = new Scratch();
        long stored = 0;
        for (int i = 0; i < count; i++)
        {
            if (stored > MostChanges)
            {
                scratch.Dispose();
                scratch = new Scratch();
                stored = 0;
            }

            (long number, string digest) = WorkUntilKilled(scratch.Folder, stored, TimeSpan.FromMilliseconds(random.Next(0, 60)));
            (string outcome, string detail, stored) = Look(scratch.Folder, number, digest);
            tally.Add("killed at work", outcome, $"number {i}: {detail}");
        }

        scratch.Dispose();
        return tally.Print("kills");
    }

    private static (long Number, string Digest) WorkUntilKilled(StoreFolder folder, long stored, TimeSpan afterTheFirst)
    {
        using Process worker = Process.Start(new ProcessStartInfo(Environment.ProcessPath!)
        {
            ArgumentList = { "work", folder.Path, "200" },
            RedirectStandardOutput = true,
        })!;
        string? first = worker.StandardOutput.ReadLine();
        Thread.Sleep(afterTheFirst);
        worker.Kill();

        // A line without its end was cut by the kill.
        string[] lines = (first + "\n" + worker.StandardOutput.ReadToEnd()).Split('\n');
        worker.WaitForExit();
        string[] last = lines.Length < 2 || lines[^2].Length == 0 ? [stored.ToString(CultureInfo.InvariantCulture), ""] : lines[^2].Split(' ');
        return (long.Parse(last[0], CultureInfo.InvariantCulture), last[1]);
    }

    private static (string Outcome, string Detail, long Stored) Look(StoreFolder folder, long number, string digest)
    {
        try
        {
            using (BookStore store = BookStore.Open(folder))
            {
                store.Load();
                JournalScan journal = JournalScan.Read(folder.Journal);
                if (store.LastChange < number || (digest.Length > 0 && journal.Lines[(int)number - 1].Digest.ToString() != digest))
                {
                    return ("LOST", $"change {number} was acknowledged, {store.LastChange} are stored", store.LastChange);
                }

                if (store.LastChange > number + 1)
                {
                    return ("WRONG", $"change {number} was the last, {store.LastChange} are stored", store.LastChange);
                }
            }

            CheckReport report = StoreCheck.Run(folder);
            return report.Findings.IsEmpty
                ? ("same", "", report.Changes)
                : ("WRONG", string.Join(' ', report.Findings.Select(one => one.Said())), report.Changes);
        }
        catch (StoreException fault)
        {
            return ("LOST", fault.Said(), number);
        }
    }
}
