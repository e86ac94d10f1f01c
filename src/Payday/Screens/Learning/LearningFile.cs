using Payday.Statements.Files;
using Payday.Store.Starts;

namespace Payday.Screens.Learning;

/// <summary>A file of the bank as it was read.</summary>
/// <param name="Kept">Its path, and the answers given.</param>
/// <param name="Hindrance">Why its bytes can't be had, a sentence; null where they were.</param>
/// <param name="Found">What is in it; nothing where its bytes can't be had.</param>
internal sealed record LearningFile(StartStatement Kept, string? Hindrance, StatementFile Found)
{
    /// <summary>What it is called, without its folders.</summary>
    public string Name => Path.GetFileName(Kept.Path);

    /// <summary>What only the person can say before it can be read; null for nothing.</summary>
    public CsvQuestion? Question => Found.Questions is [var first, ..] ? first : null;

    /// <summary>Whether it says nothing: it can't be had, can't be read, or asks first.</summary>
    public bool IsOpen => Found.Statements.IsEmpty;
}
