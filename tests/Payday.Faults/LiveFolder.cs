namespace Payday.Faults;

/// <summary>A folder in which a backup may be made beside what is done here.</summary>
internal static class LiveFolder
{
    // EWOULDBLOCK: the runtime's lock on a file that is open to nobody else.
    private const int WouldBlock = 11;

    /// <summary>Reads all files of it; again, where one was renamed between its name was read and its bytes, or is being written.</summary>
    public static T Read<T>(Func<T> files)
    {
        while (true)
        {
            try
            {
                return files();
            }
            catch (Exception gone) when (gone is FileNotFoundException or DirectoryNotFoundException)
            {
            }
            catch (IOException held) when (held.HResult == WouldBlock)
            {
                Thread.Sleep(1);
            }
        }
    }
}
