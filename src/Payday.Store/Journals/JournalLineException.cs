using Payday.Store.Files;

namespace Payday.Store.Journals;

/// <summary>The documents don't come to what a line of the journal says they do.</summary>
/// <param name="line">The first such line.</param>
internal sealed class JournalLineException(ChangeMark line) : Exception(line.ToString())
{
    /// <summary>The first such line.</summary>
    public ChangeMark Line { get; } = line;
}
