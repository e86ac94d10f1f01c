namespace Payday.Faults;

/// <summary>A folder in which a backup may be made beside what is done here.</summary>
internal static class LiveFolder
{
    /// <summary>Reads all files of it; again, where one was renamed between its name was read and its bytes.</summary>
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
        }
    }
}
