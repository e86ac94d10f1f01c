using System.Diagnostics;
using System.Globalization;
using Payday.Store;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Faults;

/// <summary>Real disks, small ones in memory: full at each moment of a life, and mounted read-only. Only root can mount them.</summary>
internal static class FullDisk
{
    private const int Kilobytes = 3_000;
    private const int MostRoom = 240;

    public static void Run(Tally tally, int each)
    {
        using var scratch = new Scratch();
        string disk = Path.Combine(scratch.Root, "disk");
        Directory.CreateDirectory(disk);
        if (!Mount("mount", "-t", "tmpfs", "-o", string.Create(CultureInfo.InvariantCulture, $"size={Kilobytes}k,mode=700"), "tmpfs", disk))
        {
            Console.WriteLine("No disk could be mounted: a real full disk and a read-only one were not tried.");
            return;
        }

        try
        {
            var folder = new StoreFolder(Path.Combine(disk, "data"));
            for (int room = 0; room <= MostRoom; room += 4 * Math.Min(each, 5))
            {
                Fill(tally, folder, Path.Combine(disk, "ballast"), room);
            }

            ReadOnly(tally, folder, disk);
        }
        finally
        {
            Mount("umount", "--lazy", disk);
        }
    }

    // A change while so much room is left, then another once there is room again.
    private static void Fill(Tally tally, StoreFolder folder, string ballast, int kilobytes)
    {
        try
        {
            using (BookStore store = BookStore.Open(folder))
            {
                Digest before = store.LastDigest;
                store.Load();
                File.WriteAllBytes(ballast, new byte[Math.Max(0, new DriveInfo(folder.Path).AvailableFreeSpace - (kilobytes * 1024L))]);
                string said = Next(store);
                bool isChanged = store.LastDigest != before;
                tally.Add("real full disk", (said.Length > 0, isChanged, said.Contains("is full", StringComparison.Ordinal)) switch
                {
                    (false, true, _) => "same",
                    (true, false, true) => "refused",
                    _ => "WRONG",
                }, $"{kilobytes} kB: {said}");
            }

            // Still full: what is there can be looked at.
            using (BookStore store = BookStore.Open(folder))
            {
                tally.Add("real full disk, opened", store.Load() is not null || store.LastChange == 0 ? "same" : "LOST", $"{kilobytes} kB");
            }

            File.Delete(ballast);
            using BookStore again = BookStore.Open(folder);
            Life.Next(again);
        }
        catch (StoreException fault)
        {
            tally.Add("real full disk", "LOST", $"{kilobytes} kB: {fault.Said()}");
        }
        finally
        {
            File.Delete(ballast);
        }
    }

    private static void ReadOnly(Tally tally, StoreFolder folder, string disk)
    {
        Mount("mount", "-o", "remount,ro", disk);
        try
        {
            BookStore.Open(folder).Dispose();
            tally.Add("real read-only disk", "WRONG", "it was opened");
        }
        catch (StoreException fault)
        {
            tally.Add("real read-only disk", fault.Said().Contains("is read-only", StringComparison.Ordinal) ? "refused" : "WRONG", fault.Said());
        }

        Mount("mount", "-o", "remount,rw", disk);
        using BookStore store = BookStore.Open(folder);
        tally.Add("real read-only disk, writable again", store.Load() is not null && store.Told().Length == 0 ? "same" : "LOST", "");
    }

    private static string Next(BookStore store)
    {
        try
        {
            Life.Next(store);
            return "";
        }
        catch (StoreException fault)
        {
            return fault.Said();
        }
    }

    private static bool Mount(string program, params string[] arguments)
    {
        try
        {
            using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
