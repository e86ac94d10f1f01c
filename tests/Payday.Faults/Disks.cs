using System.Diagnostics;
using System.Globalization;
using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Faults;

/// <summary>Lets the system refuse what a closing asks of it: input/output errors, a full disk, one that turns read-only.</summary>
/// <remarks>
/// strace answers the n-th call on a file of the store with an error instead of letting it through, for each n until
/// there are no more calls. So every call of Payday and of LiteDB fails once, but nothing is half written before it
/// does, as on a real disk; the row of a real full disk is beside it (<see cref="FullDisk"/>).
/// </remarks>
internal static class Disks
{
    private const int MostCalls = 2_000;

    private static readonly string[] Names = ["payday.db", "payday-log.db", "payday.journal", "payday.holder", "backups", "."];

    // strace counts the calls of each kind for itself, so one kind at a time: else an early one hides the later.
    private static readonly (string What, string Call)[] Kinds =
        [("opening", "openat"), ("reading", "pread64"), ("writing", "pwrite64"), ("syncing", "fsync"), ("cutting", "ftruncate"), ("deleting", "unlink")];

    private static readonly (string What, string Call, string Error, bool GoesOn)[] Faults =
    [
        .. Kinds.Select(kind => ($"input/output error in {kind.What}, once", kind.Call, "EIO", false)),
        .. Kinds.Select(kind => ($"input/output error in {kind.What}, from then on", kind.Call, "EIO", true)),
        ("disk full from then on", "pwrite64", "ENOSPC", true),
        ("disk read-only from then on", "pwrite64", "EROFS", true),
    ];

    /// <summary>Tries them.</summary>
    /// <param name="each">Of how many calls one fails: 1 for every call there is; syncs all do.</param>
    /// <param name="seed">Where to begin.</param>
    public static bool Run(int each, int seed)
    {
        var tally = new Tally();
        using var scratch = new Scratch();
        Dictionary<string, byte[]> before = Lived(scratch);
        Digest old = JournalScan.Of(before["payday.journal"]).Last!.Digest;
        Digest closed = Closed(scratch);
        if (HasStrace())
        {
            foreach ((string what, string kind, string error, bool goesOn) in Faults)
            {
                // There are few syncs, and each counts.
                int step = kind == "fsync" ? 1 : each;
                for (int call = 1 + (seed % step); call < MostCalls; call += step)
                {
                    scratch.Put(before);
                    string injected = $"{kind}:error={error}:when={call.ToString(CultureInfo.InvariantCulture)}{(goesOn ? "+" : "")}";
                    if (!UnderStrace(scratch, kind, injected, out string said))
                    {
                        break;
                    }

                    (string outcome, string detail) = IsUnsyncedYetStored(scratch, said) ? ("WRONG", "stored, although its sync failed") : Look(scratch.Folder, said, old, closed);
                    tally.Add(what, outcome, $"call {call}: {said} {detail}");
                }
            }
        }
        else
        {
            Console.WriteLine("strace is missing or may not trace here: errors of the disk were not tried.");
        }

        FullDisk.Run(tally, each);
        return tally.Print("disks");
    }

    private static Dictionary<string, byte[]> Lived(Scratch scratch)
    {
        for (int i = 0; i < 3; i++)
        {
            using BookStore store = BookStore.Open(scratch.Folder);
            Life.Next(store);
        }

        return scratch.Take();
    }

    private static Digest Closed(Scratch scratch)
    {
        using BookStore store = BookStore.Open(scratch.Folder);
        Life.Next(store);
        return store.LastDigest;
    }

    private static bool HasStrace()
    {
        try
        {
            return Traced("-qq", "-o", "/dev/null", "true").Exit == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    // Whether there was such a call; else the change went through untouched.
    private static bool UnderStrace(Scratch scratch, string kind, string injected, out string said)
    {
        string log = Log(scratch);
        string[] paths = [.. Names.SelectMany(name => (string[])["-P", Path.GetFullPath(Path.Combine(scratch.Folder.Path, name)).TrimEnd('/')])];
        string[] arguments = ["-f", "-qq", "-y", "-o", log, "-e", "trace=" + kind, "-e", "inject=" + injected, .. paths, Environment.ProcessPath!, "once", scratch.Folder.Path];
        said = Traced(arguments).Said.Trim();
        return File.ReadAllText(log).Contains("(INJECTED)", StringComparison.Ordinal);
    }

    private static string Log(Scratch scratch) => Path.Combine(scratch.Root, "calls");

    // What is stored must be in the journal and the log for certain.
    private static bool IsUnsyncedYetStored(Scratch scratch, string said) =>
        said.StartsWith(OneChange.Stored, StringComparison.Ordinal)
        && File.ReadLines(Log(scratch)).Any(call => call.Contains("fsync(", StringComparison.Ordinal) && call.Contains("(INJECTED)", StringComparison.Ordinal)
            && (call.Contains("/payday.journal>", StringComparison.Ordinal) || call.Contains("/payday-log.db>", StringComparison.Ordinal)));

    private static (int Exit, string Said) Traced(params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo("strace", arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said.Length > 0 ? said : errors.Result);
    }

    // What was said must be what is there once the disk is well again.
    private static (string Outcome, string Detail) Look(StoreFolder folder, string said, Digest old, Digest closed)
    {
        bool isStored = said.StartsWith(OneChange.Stored, StringComparison.Ordinal);
        if (!isStored && !said.StartsWith(OneChange.Refused, StringComparison.Ordinal))
        {
            return ("CRASH", "");
        }

        try
        {
            using BookStore store = BookStore.Open(folder);
            store.Load();
            Digest found = store.LastDigest;
            string notices = string.Join(' ', store.Told());
            store.Dispose();
            string findings = string.Join(' ', StoreCheck.Run(folder).Findings);
            bool isUnclear = said.Contains("look whether it is there", StringComparison.Ordinal);
            return (isStored, found == closed, found == old) switch
            {
                _ when findings.Length > 0 => ("WRONG", findings),
                (true, true, _) => (notices.Length > 0 ? "mended" : "same", ""),
                (false, _, true) => ("refused", ""),
                (false, true, _) when isUnclear => ("refused", ""),
                (true, _, _) => ("LOST", notices),
                _ => ("WRONG", "it is stored although it was refused. " + notices),
            };
        }
        catch (StoreException fault)
        {
            return ("LOST", fault.Said());
        }
    }
}
