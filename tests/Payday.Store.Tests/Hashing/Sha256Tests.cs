using System.Security.Cryptography;
using System.Text;
using CsCheck;
using Payday.Store.Backups;
using Payday.Store.Changes;
using Payday.Store.Checks;
using Payday.Store.Hashing;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Hashing;

public sealed class Sha256Tests
{
    // NIST's examples for FIPS 180-4: one block, two blocks, a million of one letter; and no bytes at all.
    [Theory]
    [InlineData("", 1, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    [InlineData("abc", 1, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", 1, "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1")]
    [InlineData("a", 1_000_000, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0")]
    public void Of_PublishedExamples_GivesTheirHash(string text, int times, string hash) => Assert.Equal(
        hash, Convert.ToHexStringLower(Sha256.Of(Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat(text, times))))));

    [Fact]
    public void Of_AnyBytes_GivesWhatTheSystemsLibraryGives() =>
        Gen.Byte.Array[0, 400].Sample(bytes => Assert.Equal(SHA256.HashData(bytes), Sha256.Of(bytes)), iter: 500);

    [Fact]
    public void Open_StoreHashedByTheSystemsLibrary_IsReadAsItIs()
    {
        using var scratch = new ScratchFolder();
        StoreOfVersion3.CopyTo(scratch.Data);
        byte[] journal = File.ReadAllBytes(scratch.Data.Journal);

        using (BookStore store = BookStore.Open(scratch.Data))
        {
            Assert.Empty(store.Told());
            Assert.Equal(3, store.LastChange);
            Assert.Equal("Fernhollow house", store.Load()!.Household.Name);
        }

        Assert.Equal(journal, File.ReadAllBytes(scratch.Data.Journal));
        CheckReport report = StoreCheck.Run(scratch.Data);
        Assert.Equal((3, 1), (report.Changes, report.ClosedPaydays));
        Assert.DoesNotContain(report.Findings, finding => finding.Part is not CheckPart.Files);
    }

    [Fact]
    public void Open_JournalHashedByTheSystemsLibrary_GoesOn()
    {
        using var scratch = new ScratchFolder();
        StoreOfVersion3.CopyTo(scratch.Data);
        File.Delete(scratch.Data.Database);

        using (BookStore store = BookStore.Open(scratch.Data))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
        }

        Assert.Equal(4, StoreCheck.Run(scratch.Data).Changes);
        using BookStore again = BookStore.Open(scratch.Data);
        Assert.Empty(again.Told());
    }

    [Fact]
    public void TryRead_BackupHashedByTheSystemsLibrary_IsWhole()
    {
        using var scratch = new ScratchFolder();

        Assert.NotNull(BackupFiles.TryRead(StoreOfVersion3.CopyBackupTo(scratch.Data)));
    }
}
