using LiteDB;

namespace Payday.Store;

/// <summary>Turns what the system and the database throw into one sentence for the person.</summary>
internal static class StoreFaults
{
    /// <summary>Does the work; a fault of disk or database comes out as a <see cref="StoreException"/>.</summary>
    /// <param name="folder">The folder the work is on.</param>
    /// <param name="verb">What was tried: open, read, write.</param>
    /// <param name="work">The work.</param>
    public static T Explained<T>(StoreFolder folder, string verb, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (UnauthorizedAccessException fault)
        {
            throw new StoreException($"Payday may not {verb} in {folder.Path}. Change the folder's permissions, or choose another with --data.", fault);
        }
        catch (IOException fault) when (IsFull(fault))
        {
            throw new StoreException($"The disk that holds {folder.Path} is full. Nothing was changed; free some room and try again.", fault);
        }
        catch (IOException fault)
        {
            throw new StoreException($"{folder.Path} could not be used: {fault.Message.Split('\n')[0]} Choose another folder with --data.", fault);
        }
        catch (Exception fault) when (fault is LiteException or FormatException or InvalidCastException or NodaTime.Text.UnparsableValueException or ArgumentException)
        {
            throw new StoreException($"The database in {folder.Path} is damaged or not Payday's. Nothing was changed; keep a copy of the folder.", fault);
        }
    }

    // ENOSPC on Unix, ERROR_DISK_FULL on Windows.
    private static bool IsFull(IOException fault) => fault.HResult is 28 or unchecked((int)0x80070070);
}
