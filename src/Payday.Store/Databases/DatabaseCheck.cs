using System.Buffers.Binary;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Databases;

/// <summary>Refuses the files that LiteDB would take without a word: as an empty database, or as a shorter one.</summary>
/// <remarks>
/// Looks at the first page of the file format of LiteDB 5 (its <c>HeaderPage.cs</c>, version 8 of the format),
/// and changes nothing. LiteDB itself would cut a file of odd length before it looks at what the file is.
/// </remarks>
internal static class DatabaseCheck
{
    private const int PageSize = 8192;
    private const int LastPagePosition = 64;
    private const int StatePosition = 191;

    // At 32, the version of the format after it.
    private static readonly byte[] Mark = [.. "** This is a LiteDB file **"u8, 8];

    /// <summary>Checks the files of a folder.</summary>
    /// <returns>Whether there is a database; where not, there is nothing of one.</returns>
    /// <exception cref="StoreException">The files are damaged, or not a database.</exception>
    public static bool Exists(StoreFolder folder)
    {
        var files = new DatabaseFiles(folder.Database);
        if (!File.Exists(files.Data))
        {
            return files.LogLength == 0 ? false : throw Missing(folder);
        }

        if (files.DataLength < PageSize)
        {
            throw Cut(folder);
        }

        byte[] header = FirstPage(files.Data);
        if (!header.AsSpan(32, Mark.Length).SequenceEqual(Mark))
        {
            throw NotOurs(folder);
        }

        if (header[StatePosition] != 0)
        {
            throw StoreFaults.Damage(folder);
        }

        // While the log holds something, the data file may rightly be behind it.
        long pages = BinaryPrimitives.ReadUInt32LittleEndian(header.AsSpan(LastPagePosition)) + 1L;
        return files.LogLength > 0 || (files.DataLength % PageSize == 0 && files.DataLength >= pages * PageSize)
            ? true
            : throw Cut(folder);
    }

    /// <summary>That the database is a sound one, but not of this program.</summary>
    public static StoreException NotOurs(StoreFolder folder) => new(new DatabaseFault.NotOurs(folder.Database));

    /// <summary>That the data file is gone.</summary>
    public static StoreException Missing(StoreFolder folder) => new(new DatabaseFault.Gone(folder.Database));

    private static StoreException Cut(StoreFolder folder) => new(new DatabaseFault.Cut(folder.Database));

    private static byte[] FirstPage(string path)
    {
        using var data = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        byte[] page = new byte[PageSize];
        data.ReadExactly(page);
        return page;
    }
}
