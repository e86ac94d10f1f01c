using System.Collections.Immutable;

namespace Payday.Store.Starts;

/// <summary>A file of the bank that a household is set up from.</summary>
/// <param name="Path">Its full path.</param>
/// <param name="Answers">How it is to be read where it left that open: for each question in turn the place of the answer, from 0.</param>
public sealed record StartStatement(string Path, ImmutableArray<int> Answers)
{
    /// <inheritdoc/>
    public bool Equals(StartStatement? other) => other is not null && Path == other.Path && Answers.SequenceEqual(other.Answers);

    /// <inheritdoc/>
    public override int GetHashCode() => Path.GetHashCode(StringComparison.Ordinal);
}
