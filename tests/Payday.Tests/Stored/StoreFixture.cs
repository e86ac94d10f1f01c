using System.IO.Compression;
using System.Runtime.CompilerServices;
using NodaTime;
using Payday.Store;
using Payday.Store.Files;
using Payday.Tests.Commands;

namespace Payday.Tests.Stored;

/// <summary>
/// Data folders as the program of each schema version left them: never made anew, so that they stay what a household
/// of that time has on its disk. <c>life.txt</c> beside each says how it was lived, <c>household.json</c> how it began.
/// </summary>
internal static class StoreFixture
{
    /// <summary>The day after which nothing more happened.</summary>
    public static LocalDate LastDay { get; } = new(2026, 3, 26);

    /// <summary>A shell on a copy of one.</summary>
    public static TestShell Shell(int version)
    {
        var shell = new TestShell { Today = LastDay };
        shell.Data.Make();
        using var packed = ZipFile.OpenRead(PathOf(version, "store.zip"));
        foreach (ZipArchiveEntry entry in packed.Entries)
        {
            string path = Path.Combine(shell.Data.Path, entry.FullName);
            if (entry.Name.Length == 0)
            {
                PrivateFolder.Make(path);
                continue;
            }

            using Stream from = entry.Open();
            using FileStream to = PrivateFile.Open(path, FileShare.None);
            from.CopyTo(to);
        }

        return shell;
    }

    public static string PathOf(int version, string name, [CallerFilePath] string caller = "") =>
        Path.Combine(Path.GetDirectoryName(caller)!, "..", "..", "Payday.Store.Tests", "Fixtures", $"v{version}", name);
}
