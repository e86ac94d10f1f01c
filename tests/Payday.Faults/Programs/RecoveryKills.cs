using System.Diagnostics;
using Payday.Store;
using Payday.Store.Backups;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Faults.Programs;

/// <summary>Kills the program while it makes a damaged store good again, or puts it back to a backup; the store is then as it was.</summary>
internal static class RecoveryKills
{
    public static (string Row, string Outcome, string Detail) Try(Random random, Scratch scratch, TimeSpan whole)
    {
        Dictionary<string, byte[]> files = scratch.Take();
        StoreFolder folder = scratch.Folder;
        Digest now = Shown(folder);
        BackupFile? backup = BackupFiles.List(folder.Backups).FirstOrDefault();
        try
        {
            switch (random.Next(3))
            {
                case 0 when backup is not null:
                    string[] putBack = ["restore", backup.Path, "--accept"];
                    Digest then = BackupFiles.TryRead(backup.Path)!.Last!.Digest;
                    (string outcome, string detail) = Killed(random, scratch, whole, putBack, "Restored.", [now, then], then, mayRefuse: true);
                    return ("putting back killed", outcome, detail);
                case 1:
                    File.Delete(folder.Journal);
                    (outcome, detail) = Killed(random, scratch, whole, ["show", "pots"], "Pot", [now], now, mayRefuse: false);
                    return ("making a journal killed", outcome, detail);
                default:
                    using (FileStream database = PrivateFile.Open(folder.Database, FileShare.None))
                    {
                        database.SetLength(database.Length / 2);
                    }

                    (outcome, detail) = Killed(random, scratch, whole, ["show", "pots"], "Pot", [now], now, mayRefuse: false);
                    return ("rebuilding a database killed", outcome, detail);
            }
        }
        finally
        {
            scratch.Put(files);
        }
    }

    private static (string Outcome, string Detail) Killed(Random random, Scratch scratch, TimeSpan whole, string[] command, string told, Digest[] allowed, Digest done, bool mayRefuse)
    {
        string[] data = ["--data", scratch.Folder.Path];
        using Process process = ProgramUnderTest.Start([.. command, .. data]);
        Task<string> complained = process.StandardError.ReadToEndAsync();
        Task<string> said = process.StandardOutput.ReadToEndAsync();
        new Moment(scratch.Folder, whole, () => process.HasExited).Wait(random);
        process.Kill();
        process.WaitForExit();
        bool isTold = said.Result.Contains(told, StringComparison.Ordinal);
        if (!ProgramUnderTest.HasItsOwnWords(said.Result, complained.Result) || process.ExitCode is not (0 or 137))
        {
            return ("CRASH", $"exit {process.ExitCode}: {said.Result}{complained.Result}");
        }

        // Opened again; where the person has to choose, what was begun is done again.
        (int exit, string again, string doubts) = ProgramUnderTest.Run(["show", "pots", .. data]);
        bool isRefused = exit == 1 && mayRefuse && doubts.Contains("payday restore", StringComparison.Ordinal);
        if (isRefused)
        {
            allowed = [done];
            (exit, again, doubts) = ProgramUnderTest.Run([.. command, .. data]);
        }

        if (exit != 0 || !ProgramUnderTest.HasItsOwnWords(again, doubts))
        {
            return ("CRASH", $"opened by the program, exit {exit}: {again}{doubts}");
        }

        (exit, string found, string why) = ProgramUnderTest.Run(["check", .. data]);
        Digest shown = Shown(scratch.Folder);
        return (isTold ? shown == done : allowed.Contains(shown), exit == 0 && found.Contains("Nothing is wrong", StringComparison.Ordinal)) switch
        {
            (false, _) => ("LOST", $"{(isTold ? "told" : "not told")}: {doubts}"),
            (_, false) => ("WRONG", found + why),
            _ => (isRefused ? "refused" : doubts.Length > 0 ? "mended" : "same", ""),
        };
    }

    private static Digest Shown(StoreFolder folder)
    {
        using BookStore store = BookStore.Open(folder);
        return BookDigest.Of(store.Load());
    }
}
