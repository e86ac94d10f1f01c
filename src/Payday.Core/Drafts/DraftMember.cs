namespace Payday.Core.Drafts;

/// <summary>A member of a draft or of one of its parts; what a <see cref="DraftPlace"/> is made of.</summary>
/// <remarks>Each is one object, and is told from others as that: what a file or a form calls it is theirs to say.</remarks>
/// <param name="name">What the code calls it.</param>
public abstract class DraftMember(string name)
{
    /// <summary>What the code calls it; for tests, never for a person.</summary>
    public override string ToString() => name;
}
