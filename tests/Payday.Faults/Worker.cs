using System.Globalization;
using Payday.Store;
using Payday.Store.Folders;

namespace Payday.Faults;

/// <summary>The process that is killed: it stores change after change, and says each one that was acknowledged.</summary>
internal static class Worker
{
    public static bool Run(string path, int most)
    {
        using BookStore store = BookStore.Open(new StoreFolder(path));
        Life life = Life.Of(store);
        for (int i = 0; i < most; i++)
        {
            long before = store.LastChange;
            life.Step();
            if (store.LastChange > before)
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{store.LastChange} {store.LastDigest}"));
            }
        }

        return true;
    }
}
