namespace Payday.Statements.Texts;

/// <summary>How much of a file is read, so that no file takes the machine's memory or time.</summary>
internal static class ReadingLimits
{
    /// <summary>The most bytes of a file, 16 MB. Ten thousand lines are about 1 MB as CSV and 10 MB as camt.053.</summary>
    public const int MostBytes = 16 * Megabyte;

    /// <summary>The most lines of a statement, all kinds.</summary>
    public const int MostLines = 100_000;

    /// <summary>The most statements of a file: one a day for over 27 years.</summary>
    public const int MostStatements = 10_000;

    /// <summary>The deepest nesting of XML; camt.053 goes 17 deep.</summary>
    public const int MostDepth = 64;

    /// <summary>The most cells of a row.</summary>
    public const int MostColumns = 200;

    /// <summary>The most cells of a file.</summary>
    public const int MostCells = 4_000_000;

    /// <summary>The largest row, in bytes.</summary>
    public const int MostRowBytes = Megabyte;

    /// <summary>The most faults told; a file with more is another kind of file.</summary>
    public const int MostFaults = 1_000;

    /// <summary>The most characters of one text of a line.</summary>
    public const int MostText = 500;

    /// <summary>The most characters of a found text repeated in a fault.</summary>
    public const int MostEcho = 40;

    /// <summary>1 MB.</summary>
    public const int Megabyte = 1_048_576;
}
