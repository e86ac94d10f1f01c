using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Restores;

namespace Payday.Faults;

/// <summary>What is in a folder and isn't Payday's: things that are no files, files put in the place of those that are open, another household's backups.</summary>
internal static class Strangers
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    // Not the lock, of which the next opening makes another: that is among what is replaced below.
    private static readonly string[] Replaceable = ["payday.db", "payday.journal", "payday.lock", "payday-log.db"];

    public static bool Run(int rounds, int seed)
    {
        var tally = new Tally();
        var random = new Random(seed);
        using var scratch = new Scratch();
        var lived = DamagedStore.Live(scratch);
        string outside = Path.Combine(scratch.Root, "page.html");
        for (int i = 0; i < rounds; i++)
        {
            scratch.Put(lived.Closed);
            string number = string.Create(CultureInfo.InvariantCulture, $"seed {seed}, number {i}");
            switch (i % 4)
            {
                case 0:
                    Add(tally, $"no file in the place of one: {Kind(random, out int kind)}", number, () => InPlace(random, lived, outside, kind));
                    break;
                case 1:
                    Add(tally, $"no file among backups or what is aside: {Kind(random, out int other)}", number, () => Beside(random, lived, outside, other));
                    break;
                case 2:
                    Add(tally, "a file replaced while it is open", number, () => Replaced(random, lived));
                    break;
                default:
                    Add(tally, "two books and a person's backups in one folder", number, () => Shared(random, scratch));
                    break;
            }
        }

        return tally.Print("strange files");
    }

    private static void Add(Tally tally, string row, string number, Func<(string Outcome, string Detail)> work)
    {
        Task<(string Outcome, string Detail)> task = Task.Run(() =>
        {
            try
            {
                return work();
            }
            catch (Exception fault)
            {
                return ("CRASH", fault.ToString());
            }
        });
        (string outcome, string detail) = task.Wait(Patience) ? task.Result : ("CRASH", "it does not come to an end");
        tally.Add(row, outcome, $"{number}: {detail}");
    }

    private static (string Outcome, string Detail) InPlace(Random random, DamagedStore.Lived lived, string outside, int kind)
    {
        string[] files = [.. lived.Folder.Files];
        string path = files[random.Next(files.Length)];
        byte[]? bytes = File.Exists(path) ? File.ReadAllBytes(path) : null;
        string put = Put(kind, path, outside);
        Action[] works =
        [
            () => BookStore.Open(lived.Folder).Dispose(), () => BookStore.Peek(lived.Folder), () => StoreCheck.Run(lived.Folder),
            () => StoreCheck.Mend(lived.Folder), () => Restoring.Begin(lived.Folder).Dispose(),
        ];
        foreach (Action work in works)
        {
            try
            {
                work();
                return ("WRONG", $"{path}, {put}: it was taken");
            }
            catch (StoreException fault) when (fault.Said().StartsWith(path + " is a", StringComparison.Ordinal))
            {
                // As it should.
            }
        }

        if (!IsUntouched(outside))
        {
            return ("WRONG", $"{path}, {put}: what it points to was changed");
        }

        Remove(path);
        if (bytes is not null)
        {
            File.WriteAllBytes(path, bytes);
        }

        return Opened(lived) == lived.Sound ? ("refused", "") : ("WRONG", "another book afterwards");
    }

    private static (string Outcome, string Detail) Beside(Random random, DamagedStore.Lived lived, string outside, int kind)
    {
        string[] names = ["backups/payday-20990101T000000Z-99.journal.gz", "backups/notes", "aside/20990101T000000-payday.journal", "aside/old", "payday (2).journal", "notes"];
        string path = Path.Combine(lived.Folder.Path, names[random.Next(names.Length)]);
        PrivateFolder.Make(Path.GetDirectoryName(path)!);
        string put = Put(kind, path, outside);
        if (Opened(lived) != lived.Sound)
        {
            return ("WRONG", $"{path}, {put}: another book");
        }

        bool isFound = StoreCheck.Run(lived.Folder).Findings.Any(finding => finding.Said().StartsWith(path, StringComparison.Ordinal));
        StoreCheck.Mend(lived.Folder);
        using (Restoring restoring = Restoring.Begin(lived.Folder))
        {
            restoring.List();
        }

        using (BookStore store = BookStore.Open(lived.Folder))
        {
            Life.Next(store);
            StoreBackups.Make(store, null);
        }

        return IsUntouched(outside) ? (isFound ? "found" : "same", "") : ("WRONG", $"{path}, {put}: what it points to was changed");
    }

    private static (string Outcome, string Detail) Replaced(Random random, DamagedStore.Lived lived)
    {
        string name = Replaceable[random.Next(Replaceable.Length)];
        string path = Path.Combine(lived.Folder.Path, name);
        Digest acknowledged;
        string did;
        using (BookStore store = BookStore.Open(lived.Folder))
        {
            for (int i = random.Next(3); i > 0; i--)
            {
                Life.Next(store);
            }

            store.FinishBackups();
            acknowledged = store.LastDigest;
            did = Replace(random, path);
            try
            {
                Life.Next(store);
                return ("LOST", $"{name} {did}: it was told as stored");
            }
            catch (StoreException fault) when (fault.Said().StartsWith(path + " is not the file any more", StringComparison.Ordinal))
            {
                // As it should.
            }
        }

        using BookStore again = BookStore.Open(lived.Folder);
        return BookDigest.Of(again.Load()) == acknowledged ? (again.Told().Length == 0 ? "same" : "mended", "") : ("LOST", $"{name} {did}: {string.Join(' ', again.Told())}");
    }

    private static (string Outcome, string Detail) Shared(Random random, Scratch scratch)
    {
        string place = Path.Combine(scratch.Root, "stick");
        PrivateFolder.Make(place);
        StoreFolder[] folders = [.. Enumerable.Range(0, 2).Select(i => new StoreFolder(Path.Combine(scratch.Root, $"book{i}")))];
        var made = new HashSet<string>(StringComparer.Ordinal);
        var newest = new string[2];
        for (int i = 0; i < 60; i++)
        {
            int which = random.Next(2);
            string[] before = Directory.GetFiles(place);
            using (BookStore store = BookStore.Open(folders[which]))
            {
                StoreBackups.Always(store, place);
                Life.Next(store);
                if (random.Next(15) == 0)
                {
                    made.Add(StoreBackups.Make(store, place).Path);
                }
            }

            string[] gone = [.. before.Except(Directory.GetFiles(place))];
            if (gone.FirstOrDefault(path => made.Contains(path) || path == newest[1 - which]) is { } lost)
            {
                return ("LOST", $"{lost} was deleted by the other book");
            }

            newest[which] = Directory.GetFiles(place).Except(before).LastOrDefault() ?? newest[which];
        }

        Directory.Delete(place, recursive: true);
        Array.ForEach(folders, folder => Directory.Delete(folder.Path, recursive: true));
        return ("same", "");
    }

    private static Digest Opened(DamagedStore.Lived lived)
    {
        using BookStore store = BookStore.Open(lived.Folder);
        return BookDigest.Of(store.Load());
    }

    // As programs do it that sync a folder: the same again, or away.
    private static string Replace(Random random, string path)
    {
        switch (random.Next(3))
        {
            case 0:
                File.Delete(path);
                return "deleted";
            case 1:
                File.Move(path, Path.Combine(Path.GetDirectoryName(path)!, "away"));
                return "moved away";
            default:
                byte[] bytes = [];
                if (!path.EndsWith(".lock", StringComparison.Ordinal))
                {
                    using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
                    bytes = new byte[file.Length];
                    file.ReadExactly(bytes);
                }

                File.WriteAllBytes(path + ".tmp", bytes);
                File.Move(path + ".tmp", path, overwrite: true);
                return "replaced";
        }
    }

    private static string Kind(Random random, out int kind)
    {
        kind = random.Next(5);
        return kind switch { 0 => "pipe", 1 => "folder", 2 => "link to a file elsewhere", 3 => "link to nowhere", _ => "socket" };
    }

    private static string Put(int kind, string path, string outside)
    {
        File.WriteAllText(outside, "for all to read");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(outside, UnixFileMode.UserRead | UnixFileMode.OtherRead);
        }

        Remove(path);
        switch (kind)
        {
            case 0:
                using (Process made = Process.Start("mkfifo", [path]))
                {
                    made.WaitForExit();
                }

                return "pipe";
            case 1:
                PrivateFolder.Make(path);
                return "folder";
            case 2:
                File.CreateSymbolicLink(path, outside);
                return "link";
            case 3:
                File.CreateSymbolicLink(path, outside + "/nowhere");
                return "link to nowhere";
            default:
                using (var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified))
                {
                    // Its name goes as it is closed, unless that is another one by then.
                    string first = Path.Combine(Path.GetDirectoryName(outside)!, "s");
                    socket.Bind(new UnixDomainSocketEndPoint(first));
                    File.Move(first, path);
                }

                return "socket";
        }
    }

    private static bool IsUntouched(string outside) => File.ReadAllText(outside) == "for all to read"
        && (OperatingSystem.IsWindows() || File.GetUnixFileMode(outside) == (UnixFileMode.UserRead | UnixFileMode.OtherRead));

    private static void Remove(string path)
    {
        if (Directory.Exists(path) && new FileInfo(path).LinkTarget is null)
        {
            Directory.Delete(path, recursive: true);
        }
        else
        {
            File.Delete(path);
        }
    }
}
