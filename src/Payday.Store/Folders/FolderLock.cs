using System.Text;
using NodaTime;
using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>The one writer of a data folder. Released by the system even when the process is killed.</summary>
/// <remarks>
/// The database itself does not keep two processes apart. A file opened with <see cref="FileShare.None"/>
/// does on every local file system, within one process too. Such a file can't even be read by another
/// process, so who holds it stands in a file of its own, for the message only.
/// </remarks>
internal sealed class FolderLock : IDisposable
{
    private readonly StoreFolder folder;
    private readonly FileStream stream;

    private FolderLock(StoreFolder folder, FileStream stream)
    {
        this.folder = folder;
        this.stream = stream;
    }

    /// <summary>Takes the lock.</summary>
    /// <exception cref="StoreException">Somebody else has it, or files in the folder can't be locked.</exception>
    public static FolderLock Take(StoreFolder folder)
    {
        StrangeFiles.Refuse(folder);
        FileStream? stream = TryLock(folder.Lock);
        if (stream is null)
        {
            throw new StoreException(new FolderFault.Taken(folder.Path, Holder(folder)));
        }

        try
        {
            RefuseLockWithoutEffect(folder);
            var taken = new FolderLock(folder, stream);
            if (!taken.IsThere)
            {
                throw FolderChanged.Fault(folder.Lock, isWritten: false);
            }

            SayWho(folder);
            return taken;
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    /// <summary>Who has the folder, as it was left there by who took it last.</summary>
    public static FolderHolder Holder(StoreFolder folder)
    {
        try
        {
            using var reader = new StreamReader(new FileStream(folder.Holder, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete));
            char[] text = new char[80];
            return FolderHolder.Of(new string(text, 0, reader.ReadBlock(text, 0, text.Length)));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return FolderHolder.Unknown;
        }
    }

    /// <summary>Whether nobody has the folder, as far as can be seen; it is held for no longer than this takes.</summary>
    public static bool IsFree(StoreFolder folder)
    {
        if (FileFacts.Of(folder.Lock).Kind is var kind && kind != FileKind.File)
        {
            return kind == FileKind.None;
        }

        try
        {
            // To read, and shared: two that look are not in each other's way.
            using var shared = new FileStream(folder.Lock, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Whether the lock that is held is still the one that others meet: where it was deleted or replaced, another process may hold a new one.</summary>
    public bool IsThere => FileFacts.Of(stream.SafeFileHandle).IsStillAt(folder.Lock);

    /// <inheritdoc/>
    public void Dispose()
    {
        try
        {
            // Where the lock is another one by now, so is its holder.
            if (IsThere)
            {
                File.Delete(folder.Holder);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // It is only words; the lock below is what counts.
        }

        stream.Dispose();
    }

    private static FileStream? TryLock(string path)
    {
        try
        {
            return PrivateFile.Open(path, FileShare.None);
        }
        catch (IOException fault) when (IsTaken(fault))
        {
            return null;
        }
    }

    // Some network file systems take a lock and forget it, and .NET can be told not to lock at all.
    private static void RefuseLockWithoutEffect(StoreFolder folder)
    {
        using FileStream? second = TryLock(folder.Lock);
        if (second is not null)
        {
            throw new StoreException(new FolderFault.NoLocks(folder.Path));
        }
    }

    // EWOULDBLOCK, as .NET reports a lock that is taken: 11 on Linux, 35 on macOS, and the Windows sharing violation.
    private static bool IsTaken(IOException fault) => fault.HResult is 11 or 35 or unchecked((int)0x80070020);

    private static void SayWho(StoreFolder folder)
    {
        var holder = new FolderHolder(Environment.ProcessId, LocalDateTime.FromDateTime(folder.Clock.GetLocalNow().DateTime));
        try
        {
            using FileStream words = PrivateFile.Open(folder.Holder, FileShare.ReadWrite);
            words.SetLength(0);
            words.Write(Encoding.UTF8.GetBytes(holder.ToString()));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // On a full disk, say. What is stored can still be looked at; another process is only told less.
        }
    }
}
