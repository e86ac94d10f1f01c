namespace Payday.Statements.Reading.Camt;

/// <summary>The XML goes deeper, or an entry has more in it, than any statement. Caught by <see cref="CamtReader"/>.</summary>
internal sealed class CamtTooDeepException(int line) : Exception
{
    /// <summary>The line of the file.</summary>
    public int Line { get; } = line;
}
