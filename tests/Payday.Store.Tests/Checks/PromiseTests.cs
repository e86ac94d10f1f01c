using CsCheck;
using Payday.Store.Changes;
using Payday.Store.Checks;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Restores;
using Payday.Store.Tests.Books;
using Payday.Store.Tests.Recovery;
using Payday.Texts;

namespace Payday.Store.Tests.Checks;

/// <summary>What a check says that mending would do, mending does; where it would not, the check doesn't say so.</summary>
public sealed class PromiseTests : IDisposable
{
    private const int PageSize = 8192;
    private const int MarkPosition = 191;
    private readonly LivedStore lived = new();

    [Fact]
    public void Mend_AfterAnyDamages_KeepsWhatTheCheckPromised()
    {
        StoreFolder folder = lived.Folder with { Snapshots = new SnapshotWish(1, 1) };
        using (BookStore store = BookStore.Open(folder))
        {
            store.Load();
            StoreBackups.Make(store, null);
        }

        Dictionary<string, byte[]> whole = Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories)
            .ToDictionary(path => Path.GetRelativePath(folder.Path, path), File.ReadAllBytes, StringComparer.Ordinal);
        int promised = 0;
        int refused = 0;
        Gen.Select(Gen.Int[0, 6], Gen.Int[0, 1_000_000], Gen.Int[0, 2]).Array[1, 3].Sample(
            damages =>
            {
                Put(folder, whole);
                foreach ((int kind, int at, int file) in damages)
                {
                    Do(folder, kind, at, whole.Keys.Order(StringComparer.Ordinal).Where(name => name != "payday.lock").ElementAt(file % (whole.Count - 1)));
                }

                CheckReport report;
                try
                {
                    report = StoreCheck.Run(folder);
                }
                catch (StoreException)
                {
                    refused++;
                    return;
                }

                Finding[] mendable = [.. report.Findings.Where(finding => finding.Then.IsMendable)];
                if (mendable.Length == 0)
                {
                    return;
                }

                promised++;
                if (mendable.All(finding => finding.Part == CheckPart.Files) && report.Findings.Length > mendable.Length)
                {
                    // Who may read the files is put right whatever is in them.
                    TryMend(folder);
                    Assert.DoesNotContain(StoreCheck.Run(folder).Findings, finding => finding.Part == CheckPart.Files);
                    return;
                }

                StoreCheck.Mend(folder);
                Assert.Empty(StoreCheck.Run(folder).Findings.Where(finding => finding.Part != CheckPart.Backups));
                using BookStore store = BookStore.Open(folder);
                Assert.Contains(Samples.Text(store.Load()), lived.Books);
            },
            iter: 400,
            threads: 1);
        Assert.InRange(promised, 20, 400);
        Assert.InRange(refused, 0, 100);
    }

    [Fact]
    public void Check_DatabaseAndJournalOfDifferentPasts_PromisesNothing()
    {
        lived.Put(lived.Databases[2], lived.Journals[2]);
        using (BookStore store = BookStore.Open(lived.Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(7) });
        }

        lived.Put(File.ReadAllBytes(lived.Folder.Database), lived.Journals[^1]);

        AssertNothingPromised();
    }

    [Fact]
    public void Check_DatabaseGoneAndABackupGoesFurtherThanTheJournal_PromisesNothing()
    {
        using (BookStore store = BookStore.Open(lived.Folder))
        {
            StoreBackups.Make(store, null);
        }

        lived.Put(null, lived.Journals[2]);

        AssertNothingPromised();
    }

    [Fact]
    public void Check_OnlyABackupIsLeft_SaysSo()
    {
        using (BookStore store = BookStore.Open(lived.Folder))
        {
            StoreBackups.Make(store, null);
        }

        lived.Put(null, null);

        Assert.Contains("there are backups", Assert.Single(StoreCheck.Run(lived.Folder).Findings).Said(), StringComparison.Ordinal);
        AssertNothingPromised();
    }

    [Fact]
    public void Check_EachPageOfTheDatabaseDamaged_LeavesOpeningWhatItGoesBy()
    {
        byte[] whole = lived.Databases[^1];
        int had = 0;
        for (int page = 0; page < whole.Length; page += PageSize)
        {
            byte[] damaged = [.. whole];
            damaged.AsSpan(page, PageSize).Clear();
            string before = Opened(damaged);
            lived.Put(damaged, lived.Journals[^2]);

            StoreCheck.Run(lived.Folder);

            Assert.Equal(damaged, File.ReadAllBytes(lived.Folder.Database));
            Assert.Equal(before, Opened(damaged));
            had += before == lived.Books[^1] ? 1 : 0;
        }

        Assert.InRange(had, 1, whole.Length / PageSize);
    }

    [Fact]
    public void Mend_DatabaseMarkedAsDamagedHasTheLastLine_HasItBack()
    {
        byte[] marked = [.. lived.Databases[^1]];
        marked[MarkPosition] = 1; // as LiteDB leaves it where it met a page that it couldn't read
        lived.Put(marked, lived.Journals[^2]);

        Assert.Contains("which lacked change 6 ", StoreTexts.Of(StoreCheck.Mend(lived.Folder)[0]), StringComparison.Ordinal);
        Assert.Equal(lived.Books[^1], lived.Open().Book);
        Assert.Equal(lived.Journals[^1], File.ReadAllBytes(lived.Folder.Journal));
    }

    [Fact]
    public void Mend_CutDatabaseGoesFurtherThanTheJournalByMoreThanItHas_IsRefused()
    {
        lived.Put(lived.Databases[^1][..^PageSize], lived.Journals[^3]);

        AssertNothingPromised();
    }

    public void Dispose() => lived.Dispose();

    private string Opened(byte[] database)
    {
        lived.Put(database, lived.Journals[^2]);
        try
        {
            return lived.Open().Book;
        }
        catch (StoreException refusal)
        {
            return refusal.Said();
        }
    }

    private void AssertNothingPromised()
    {
        Finding[] findings = [.. StoreCheck.Run(lived.Folder).Findings];
        Assert.NotEmpty(findings);
        Assert.All(findings.Where(finding => finding.Part != CheckPart.Files), finding => Assert.False(finding.Then.IsMendable));
        Assert.Throws<StoreException>(() => StoreCheck.Mend(lived.Folder));
    }

    private static void TryMend(StoreFolder folder)
    {
        try
        {
            StoreCheck.Mend(folder);
        }
        catch (StoreException)
        {
            // What the check did not promise either.
        }
    }

    private static void Put(StoreFolder folder, Dictionary<string, byte[]> files)
    {
        Directory.Delete(folder.Path, recursive: true);
        foreach ((string name, byte[] bytes) in files)
        {
            string path = Path.Combine(folder.Path, name);
            PrivateFolder.Make(Path.GetDirectoryName(path)!);
            using FileStream file = PrivateFile.Open(path, FileShare.None);
            file.Write(bytes);
        }
    }

    private void Do(StoreFolder folder, int kind, int at, string name)
    {
        string path = Path.Combine(folder.Path, name);
        byte[] bytes = File.Exists(path) ? File.ReadAllBytes(path) : [];
        if (bytes.Length == 0)
        {
            return;
        }

        int place = at % bytes.Length;
        switch (kind)
        {
            case 0:
                bytes[place] ^= (byte)(1 << (at % 8));
                break;
            case 1:
                bytes = bytes[..place];
                break;
            case 2:
                Array.Clear(bytes, place, Math.Min(8192, bytes.Length - place));
                break;
            case 3:
                File.Delete(path);
                return;
            case 4:
                bytes = name switch
                {
                    "payday.db" => lived.Databases[at % LivedStore.Changes],
                    "payday.journal" => lived.Journals[at % LivedStore.Changes],
                    _ => [.. bytes, .. bytes],
                };
                break;
            case 5:
                if (!OperatingSystem.IsWindows())
                {
                    File.SetUnixFileMode(path, File.GetUnixFileMode(path) | UnixFileMode.OtherRead);
                }

                return;
            default:
                bytes = [.. bytes, .. bytes[place..]];
                break;
        }

        File.WriteAllBytes(path, bytes);
    }
}
