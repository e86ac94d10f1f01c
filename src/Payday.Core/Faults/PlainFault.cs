namespace Payday.Core.Faults;

/// <summary>A refusal that is still a sentence; goes as its feature gets faults of its own.</summary>
/// <param name="Sentence">What is wrong and how to mend it.</param>
public sealed record PlainFault(string Sentence) : Fault
{
    /// <inheritdoc/>
    public override string ToString() => Sentence;
}
