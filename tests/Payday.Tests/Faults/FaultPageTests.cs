using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using Payday.Store;
using Payday.Store.Changes;
using Payday.Store.Edits;
using Payday.Store.Folders;
using Payday.Tests.Slips;

namespace Payday.Tests.Faults;

/// <summary>
/// One page with what Payday says to each fault of its data (Golden/faults.txt): what happened, what is safe, what to
/// do. Each fault is made for real. What this system can't do is taken from the page as it was recorded.
/// </summary>
public sealed class FaultPageTests
{
    [Fact]
    public void Faults_MadeForReal_SayWhatHappenedWhatIsSafeAndWhatToDo()
    {
        using var page = new FaultPage();
        StoreFolder data = page.Data;
        byte[] database = page.Now["payday.db"];
        byte[] journal = page.Now["payday.journal"];
        int last = journal.AsSpan(0, journal.Length - 1).LastIndexOf((byte)'\n') + 1;

        page.Add("the database is gone", () => File.Delete(data.Database), "show", "pots");
        page.Add("the database is cut short", () => File.WriteAllBytes(data.Database, database[..9000]), "show", "pots");
        page.Add("the database is another file", () => File.WriteAllBytes(data.Database, [.. Enumerable.Repeat((byte)'x', 20_000)]), "show", "pots");
        page.Add("the database holds another amount", () => File.WriteAllBytes(data.Database, Changed(database, "Corner shop", "Corner stop")), "show", "pots");
        page.Add("the database is a copy of three changes ago", () => File.WriteAllBytes(data.Database, page.Early["payday.db"]), "show", "pots");
        page.Add("the journal is gone", () => File.Delete(data.Journal), "show", "pots");
        page.Add("the journal's last line is torn", () => File.WriteAllBytes(data.Journal, journal[..^30]), "show", "pots");
        page.Add("the journal has the start of a change that was never confirmed", () => File.WriteAllBytes(data.Journal, [.. journal, .. journal[last..^30]]), "show", "pots");
        page.Add("the journal is damaged in the middle", () => File.WriteAllBytes(data.Journal, Changed(journal, "Corner shop", "Corner stop")), "show", "pots");
        page.Then("check");
        page.Then("check", "--mend");
        page.Add("both are damaged", () => Both(page, database[..9000], journal[..^30]), "show", "pots");
        page.Then("check");
        page.Then("restore");
        page.Add("the database is damaged and there is no journal, only a backup", () => Both(page, database[..9000], null), "show", "pots");
        page.Add("the journal is of another past", () => File.WriteAllBytes(data.Journal, OtherPast(page)), "show", "pots");
        page.Add("the whole folder is an old copy, but not its backups", () => OldCopy(page), "show", "pots");
        page.Add("the database is gone and the journal lacks a line that a backup has", () => Cut(page), "show", "pots");
        page.AddRefusal("another program replaces the journal while it is open", store =>
        {
            Replaced(data.Journal);
            store.Save(new BookChange { Household = store.Load()!.Household });
        });
        page.Add("a newer Payday wrote the journal", () => File.WriteAllBytes(data.Journal, Newer(journal, last)), "show", "pots");
        page.Add("a backup is damaged", () => Damaged(Directory.GetFiles(data.Backups)[0]), "check");
        page.Add("the clock went back ten years", () => page.Today = new(2016, 3, 7), "show", "pots");
        page.Today = new(2026, 3, 7);
        Taken(page);
        page.AddProcess("the files can't be locked", "DOTNET_SYSTEM_IO_DISABLEFILELOCKING", "1", "show", "pots");
        page.Add("the folder is a file", () => { }, "show", "pots", "--data", Letter(page));
        page.Add("others can look into the folder", () => Open(data.Path), "show", "pots");
        page.Add("the folder has copies of its files", () => File.WriteAllBytes(Path.Combine(data.Path, "payday (kitchen laptop).journal"), journal), "show", "pots");
        page.Add("the second place of the backups is gone", () => File.WriteAllBytes(Path.Combine(data.Path, "payday.backup-to"), Encoding.UTF8.GetBytes(page.In("stick") + "\n")), "run", "--accept", "--on", "2026-03-20");

        page.AddRefusal("a change is too large", store => store.Save(new BookChange { Movements = [store.Load()!.Ledger.Movements[0] with { Reason = new string('x', 13_000_000) }] }));
        string recorded = Recorded();
        Failing(page, recorded);
        Strange(page, recorded);
        Small(page, recorded, "the disk is full", "spend", "Food", "3");
        Small(page, recorded, "the disk is read-only", "spend", "Food", "3");

        Golden.Equal("faults", page.Lines);
    }

    // A file whose first byte the system can't give: nothing is mapped there in the memory of this process.
    private static void Failing(FaultPage page, string recorded)
    {
        const string title = "the disk can't read the journal";
        page.Put(page.Now);
        if (Disk.Show($"/proc/{Environment.ProcessId}/mem", page.Data.Journal))
        {
            Disk.Remove(page.Data.Journal);
            page.Add(title, () => Assert.True(Disk.Show($"/proc/{Environment.ProcessId}/mem", page.Data.Journal)), "show", "pots");
            Disk.Remove(page.Data.Journal);
        }
        else
        {
            page.Recorded(title, recorded);
        }
    }

    // What is no file, and would be waited on or followed: on other systems not all kinds are told apart.
    private static void Strange(FaultPage page, string recorded)
    {
        (string Title, Action Fault)[] kinds =
        [
            ("a named pipe is in the place of the journal", () => Pipe(page.Data.Journal)),
            ("a link is in the place of the database", () => Linked(page.Data.Database, "/nowhere")),
        ];
        foreach ((string title, Action fault) in kinds)
        {
            if (OperatingSystem.IsLinux())
            {
                page.Add(title, fault, "show", "pots");
                page.Then("check", "--mend");
            }
            else
            {
                page.Recorded(title, recorded);
            }
        }
    }

    private static void Pipe(string path)
    {
        File.Delete(path);
        using System.Diagnostics.Process made = System.Diagnostics.Process.Start("mkfifo", [path]);
        made.WaitForExit();
    }

    private static void Small(FaultPage page, string recorded, string title, params string[] line)
    {
        if (!Disk.Small(page.Data.Path, 1_000))
        {
            page.Recorded(title, recorded);
            return;
        }

        Disk.Remove(page.Data.Path);
        page.Add(title, () => Mounted(page, isFull: title.EndsWith("full", StringComparison.Ordinal)), line);
        Disk.Remove(page.Data.Path);
    }

    private static void Mounted(FaultPage page, bool isFull)
    {
        Assert.True(Disk.Small(page.Data.Path, 1_000));
        page.PutFiles(page.Now);
        if (isFull)
        {
            File.WriteAllBytes(Path.Combine(page.Data.Path, "ballast"), new byte[new DriveInfo(page.Data.Path).AvailableFreeSpace]);
        }
        else
        {
            Disk.ReadOnly(page.Data.Path);
        }
    }

    private static void Linked(string path, string target)
    {
        File.Delete(path);
        File.CreateSymbolicLink(path, target);
    }

    private static string Recorded([CallerFilePath] string caller = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(caller)!, "Golden", "faults.txt");
        return File.Exists(path) ? File.ReadAllText(path) : "";
    }

    private static void Both(FaultPage page, byte[] database, byte[]? journal)
    {
        File.WriteAllBytes(page.Data.Database, database);
        if (journal is null)
        {
            File.Delete(page.Data.Journal);
        }
        else
        {
            File.WriteAllBytes(page.Data.Journal, journal);
        }
    }

    private static byte[] Changed(byte[] bytes, string from, string to)
    {
        byte[] changed = [.. bytes];
        int at = changed.AsSpan().IndexOf(Encoding.UTF8.GetBytes(from));
        Encoding.UTF8.GetBytes(to).CopyTo(changed.AsSpan(at));
        return changed;
    }

    // The journal as it would be, had the last change been another.
    private static byte[] OtherPast(FaultPage page)
    {
        page.Put(page.Before);
        using (BookStore store = BookStore.Open(page.Data))
        {
            store.Save(new BookChange { Household = store.Load()!.Household with { Name = "Mill lane" } });
        }

        byte[] other = File.ReadAllBytes(page.Data.Journal);
        page.Put(page.Now);
        return other;
    }

    private static void OldCopy(FaultPage page)
    {
        using (BookStore store = BookStore.Open(page.Data))
        {
            Payday.Store.Restores.StoreBackups.Make(store, null);
        }

        File.WriteAllBytes(page.Data.Database, page.Before["payday.db"]);
        File.WriteAllBytes(page.Data.Journal, page.Before["payday.journal"]);
    }

    // Under the short name of those of before, so that it stands on one line.
    private static void Damaged(string backup)
    {
        File.Delete(backup);
        File.WriteAllBytes(Path.Combine(Path.GetDirectoryName(backup)!, "payday-20260306T100000Z-1.journal.gz"), new byte[300]);
    }

    private static void Cut(FaultPage page)
    {
        OldCopy(page);
        File.Delete(page.Data.Database);
    }

    private static void Replaced(string path)
    {
        using (var from = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete))
        using (FileStream to = File.Create(path + ".tmp"))
        {
            from.CopyTo(to);
        }

        File.Move(path + ".tmp", path, overwrite: true);
    }

    // Its last line with a higher version, and the hash that goes with it.
    private static byte[] Newer(byte[] journal, int last)
    {
        string line = Encoding.UTF8.GetString(journal[last..]).Replace($"{{\"v\":{StoreVersion.Current},", "{\"v\":99,", StringComparison.Ordinal);
        line = line[..line.LastIndexOf(",\"sha\":", StringComparison.Ordinal)];
        return [.. journal[..last], .. Encoding.UTF8.GetBytes($"{line},\"sha\":\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(line)))}\"}}\n")];
    }

    private static void Taken(FaultPage page)
    {
        BookStore? other = null;
        page.Add("another Payday has the folder", () => other = BookStore.Open(page.Data), "show", "pots");
        page.Then("spend", "Food", "3");
        other!.Dispose();
    }

    private static string Letter(FaultPage page)
    {
        string path = page.In("letter");
        File.WriteAllText(path, "letter");
        return path;
    }

    private static void Open(string path)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, File.GetUnixFileMode(path) | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        }
    }
}
