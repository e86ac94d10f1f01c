namespace Payday.Store.Journals;

/// <summary>Which book it is, whatever the folder and the household are called: made with the first change, and kept for good.</summary>
/// <remarks>It stands in each line of the journal, so that the database, which keeps the last one, and each backup have it too.</remarks>
internal static class BookName
{
    /// <summary>That of a book of before there were names.</summary>
    public const string None = "";

    private const int Length = 32;
    private const int ShortLength = 6;

    /// <summary>A name that no other book has: 128 bits, in 32 lower-case hexadecimal digits.</summary>
    public static string New() => Guid.NewGuid().ToString("N");

    /// <summary>A name as it was written; <see cref="None"/> where it is none.</summary>
    public static string Of(string? text) => text?.Length == Length && text.All(char.IsAsciiHexDigitLower) ? text : None;

    /// <summary>Its beginning, for the name of a file: enough to tell the books of a household or two apart, not to prove which it is.</summary>
    public static string Short(string book) => book.Length == 0 ? "" : book[..ShortLength];

    /// <summary>Whether a text can be such a beginning.</summary>
    public static bool IsShort(string text) => text.Length == ShortLength && text.All(char.IsAsciiHexDigitLower);

    /// <summary>Whether two names are of different books; where one has none, that is not known.</summary>
    public static bool Differ(string one, string other) => one != None && other != None && one != other;
}
