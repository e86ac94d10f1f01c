using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Store.Changes;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

/// <summary>This test program run again as a second process that uses a store, told so by its environment.</summary>
internal static class ChildProcess
{
    private const string Folder = "PAYDAY_STORE_TESTS_CHILD_FOLDER";
    private const string Saved = "PAYDAY_STORE_TESTS_CHILD_SAVED";
    private const string Work = "PAYDAY_STORE_TESTS_CHILD_WORK";

    /// <summary>How many movements each change of <see cref="StartSaving"/> has.</summary>
    public const int MovementsEach = 2;

    private const int MostChanges = 2_000;

    /// <summary>Starts a process that opens the store, says so in a line, and keeps it until its input ends.</summary>
    public static Process StartHolding(StoreFolder folder) => Start(folder, "hold");

    /// <summary>The same where the system is told to lock no files, as some network drives do; it says in a line why it can't.</summary>
    public static Process StartHoldingWithoutLocks(StoreFolder folder) => Start(folder, "hold", locks: false);

    /// <summary>Starts a process that stores change after change, and says the number of each in a line once it is stored.</summary>
    /// <param name="folder">The folder of the store.</param>
    /// <param name="saved">The number of the last change stored before.</param>
    public static Process StartSaving(StoreFolder folder, long saved) => Start(folder, "save", saved);

    /// <summary>The number of the last change stored.</summary>
    public static long LastSaved(Book book) => book.Draft?.OneOffs["saved"].MinorUnits ?? 0;

    // Before the test runner's own Main.
    [ModuleInitializer]
    internal static void RunAsChild()
    {
        if (Environment.GetEnvironmentVariable(Folder) is not { Length: > 0 } path)
        {
            return;
        }

        try
        {
            using BookStore store = BookStore.Open(new StoreFolder(path));
            if (Environment.GetEnvironmentVariable(Work) == "save")
            {
                KeepSaving(store);
            }

            Console.WriteLine("open");
            Console.ReadLine();
        }
        catch (StoreException fault)
        {
            Console.WriteLine(fault.Said());
        }

        Environment.Exit(0);
    }

    private static void KeepSaving(BookStore store)
    {
        // It is killed long before the last; where the tests are gone themselves, it must end.
        long saved = long.Parse(Environment.GetEnvironmentVariable(Saved)!, CultureInfo.InvariantCulture);
        for (long number = saved + 1; number <= saved + MostChanges; number++)
        {
            store.Save(new BookChange
            {
                Movements = Samples.Incomes(MovementsEach),
                Draft = new RoutineDraft(Samples.Payday)
                {
                    OneOffs = new RoutineDraft(Samples.Payday).OneOffs.Add("saved", Money.FromMinorUnits(number, Samples.Usd)),
                },
            });
            Console.WriteLine(number.ToString(CultureInfo.InvariantCulture));
        }
    }

    private static Process Start(StoreFolder folder, string work, long saved = 0, bool locks = true)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "Payday.Store.Tests" + (OperatingSystem.IsWindows() ? ".exe" : ""));
        return Process.Start(new ProcessStartInfo(program)
        {
            Environment =
            {
                [Folder] = folder.Path,
                [Work] = work,
                [Saved] = saved.ToString(CultureInfo.InvariantCulture),
                ["DOTNET_SYSTEM_IO_DISABLEFILELOCKING"] = locks ? "0" : "1",
            },
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        })!;
    }
}
