using Payday.Core.Books;
using Payday.Store.Changes;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Recovery;

/// <summary>A closed store of a few changes, with both its files as they were after each.</summary>
internal sealed class LivedStore : IDisposable
{
    public const int Changes = 6;

    private readonly ScratchFolder scratch = new();

    public LivedStore()
    {
        for (int i = 0; i < Changes; i++)
        {
            using (BookStore store = BookStore.Open(Folder))
            {
                store.Save(i == 0
                    ? Samples.Beginning
                    : new BookChange { Movements = Samples.Incomes(i), Draft = new RoutineDraft(Samples.Payday.PlusDays(i)) });
                Books.Add(Samples.Text(store.Load()));
            }

            Databases.Add(File.ReadAllBytes(Folder.Database));
            Journals.Add(File.ReadAllBytes(Folder.Journal));
        }
    }

    public StoreFolder Folder => scratch.Data;

    public List<string> Books { get; } = [];

    public List<byte[]> Databases { get; } = [];

    public List<byte[]> Journals { get; } = [];

    /// <summary>Sets both files; null for one that is gone.</summary>
    public void Put(byte[]? database, byte[]? journal)
    {
        Put(Folder.Database, database);
        Put(Folder.Journal, journal);
    }

    /// <summary>Opens the store, and gives what it holds and says.</summary>
    public (string Book, string Notice) Open()
    {
        using BookStore store = BookStore.Open(Folder);
        string book = Samples.Text(store.Load());
        return (book, string.Join('\n', store.Told()));
    }

    public void Dispose() => scratch.Dispose();

    private static void Put(string path, byte[]? bytes)
    {
        File.Delete(path);
        if (bytes is not null)
        {
            File.WriteAllBytes(path, bytes);
        }
    }
}
