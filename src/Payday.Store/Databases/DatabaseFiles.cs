namespace Payday.Store.Databases;

/// <summary>A database as the two files that it is: the data, and the log of what is not yet in the data.</summary>
/// <param name="Data">The path of the data file, ending in <c>.db</c>.</param>
internal sealed record DatabaseFiles(string Data)
{
    /// <summary>The path of the log.</summary>
    public string Log => Path.ChangeExtension(Data, null) + "-log.db";

    /// <summary>How long the log is, in bytes; 0 where there is none.</summary>
    public long LogLength => Length(Log);

    /// <summary>How long the data file is, in bytes; 0 where there is none.</summary>
    public long DataLength => Length(Data);

    /// <summary>Deletes both files.</summary>
    public void Delete()
    {
        File.Delete(Data);
        File.Delete(Log);
    }

    private static long Length(string path)
    {
        var file = new FileInfo(path);
        return file.Exists ? file.Length : 0;
    }
}
