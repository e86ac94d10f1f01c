namespace Payday.Core.Drafts;

/// <summary>One step of the way to a place.</summary>
/// <param name="Member">The member.</param>
/// <param name="Item">Which of its items, from 0; null for the member as a whole.</param>
public readonly record struct DraftStep(DraftMember Member, int? Item = null)
{
    /// <summary>What the code calls it; for tests, never for a person.</summary>
    public override string ToString() => Item is { } item ? FormattableString.Invariant($"{Member}[{item}]") : Member.ToString();
}
