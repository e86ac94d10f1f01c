namespace Payday.Store.Files;

/// <summary>Tells the troubles that the system has with files apart, by its numbers and never by its words.</summary>
public static class Troubles
{
    /// <summary>Which it is.</summary>
    /// <param name="fault">What was thrown.</param>
    public static Trouble Of(Exception fault) => fault switch
    {
        UnauthorizedAccessException => Trouble.Denied,
        PathTooLongException => Trouble.TooLong,
        FileNotFoundException or DirectoryNotFoundException => Trouble.Missing,
        IOException io => OfNumber(io.HResult),
        _ => Trouble.Failed,
    };

    // errno of Linux, which .NET hands on as it is, and of macOS where that is another; then the number of Windows.
    private static Trouble OfNumber(int number) => number switch
    {
        1 or 13 => Trouble.Denied,
        2 => Trouble.Missing,
        11 or 35 or 26 or unchecked((int)0x80070020) => Trouble.InUse,
        17 or unchecked((int)0x80070050) => Trouble.IsThere,
        20 or 40 => Trouble.Blocked,
        21 => Trouble.IsFolder,
        28 or 122 or 69 or unchecked((int)0x80070070) => Trouble.Full,
        30 or unchecked((int)0x80070013) => Trouble.ReadOnly,
        32 => Trouble.Unread,
        36 or 63 => Trouble.TooLong,
        _ => Trouble.Failed,
    };
}
