using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Faults;

/// <summary>The process that meets a failing disk: it makes one change, and says what became of it.</summary>
internal static class OneChange
{
    public const string Stored = "stored ";
    public const string Refused = "refused ";

    public static bool Run(string path)
    {
        try
        {
            using BookStore store = BookStore.Open(new StoreFolder(path));
            Life.Next(store);
            Console.WriteLine(Stored + store.LastDigest);
            return true;
        }
        catch (StoreException fault)
        {
            Console.WriteLine(Refused + fault.Said());
            return false;
        }
    }
}
