using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>A database read whole. One of the nested cases.</summary>
internal abstract record DatabaseState
{
    private DatabaseState()
    {
    }

    /// <summary>There is none.</summary>
    public sealed record Missing : DatabaseState;

    /// <summary>It can't be read, or what it holds is not what was written.</summary>
    /// <param name="Fault">What is wrong with it.</param>
    /// <param name="Last">The last line of the journal that is in it, where that can be read; it proves itself.</param>
    public sealed record Damaged(StoreFault Fault, JournalLine? Last = null) : DatabaseState;

    /// <summary>It holds what was written to it.</summary>
    /// <param name="Version">The version of the store.</param>
    /// <param name="Last">The last line of the journal that is in it.</param>
    /// <param name="Content">All that it holds.</param>
    public sealed record Sound(int Version, JournalLine? Last, BookContent Content) : DatabaseState;

    /// <summary>Reads the database of a folder whose lock is held; its files stay as they are, so that the next reading finds the same.</summary>
    /// <exception cref="StoreException">It is of a newer version.</exception>
    /// <exception cref="IOException">The system doesn't let it be read.</exception>
    public static DatabaseState Read(StoreFolder folder)
    {
        JournalLine? last = null;
        try
        {
            if (!DatabaseCheck.Exists(folder))
            {
                return new Missing();
            }

            using var database = new DatabasePeek(folder);
            last = database.LastLine;
            BookContent content = database.Content();
            return database.Version < Schema.FirstWithJournal || (last?.Digest ?? default) == content.Digest
                ? new Sound(database.Version, last, content)
                : new Damaged(new DatabaseFault.HoldsSomethingElse(folder.Database), last);
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            last ??= Known(folder);
            return new Damaged(fault is StoreException known ? known.Fault : new DatabaseFault.Unreadable(folder.Database), last);
        }
    }

    // What can't be relied on may still tell how far it went: also a database that is cut, or that LiteDB marked as
    // damaged when it met a page that it couldn't read.
    private static JournalLine? Known(StoreFolder folder)
    {
        try
        {
            using var database = new DatabasePeek(folder);
            return database.LastLine;
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return null;
        }
    }
}
