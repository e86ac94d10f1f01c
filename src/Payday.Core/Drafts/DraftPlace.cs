using System.Collections.Immutable;

namespace Payday.Core.Drafts;

/// <summary>Where something stands in a draft: which part, which item, which member.</summary>
/// <remarks>From the outside in; no steps at all is the draft as a whole, and so is <c>default</c>.</remarks>
public readonly struct DraftPlace : IEquatable<DraftPlace>
{
    private readonly ImmutableArray<DraftStep> steps;

    private DraftPlace(ImmutableArray<DraftStep> steps) => this.steps = steps;

    /// <summary>The draft as a whole.</summary>
    public static DraftPlace Whole => default;

    /// <summary>The steps, from the outside in.</summary>
    public ImmutableArray<DraftStep> Steps => steps.IsDefault ? [] : steps;

    /// <summary>A member of the draft.</summary>
    public static DraftPlace Of(DraftMember member, int? item = null) => Whole.Then(member, item);

    /// <summary>A member of what stands here.</summary>
    public DraftPlace Then(DraftMember member, int? item = null) => new(Steps.Add(new DraftStep(member, item)));

    /// <summary>A place within what stands here.</summary>
    public DraftPlace Then(DraftPlace inner) => new(Steps.AddRange(inner.Steps));

    /// <summary>Whether a place is this one or inside it; a list holds its items.</summary>
    public bool Holds(DraftPlace place)
    {
        ImmutableArray<DraftStep> here = Steps;
        ImmutableArray<DraftStep> there = place.Steps;
        if (here.Length > there.Length)
        {
            return false;
        }

        for (int i = 0; i < here.Length; i++)
        {
            if (here[i].Member != there[i].Member || (here[i].Item is { } item && there[i].Item != item))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public bool Equals(DraftPlace other) => Steps.SequenceEqual(other.Steps);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DraftPlace other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Steps.Aggregate(0, HashCode.Combine);

    /// <summary>What the code calls it; for tests, never for a person.</summary>
    public override string ToString() => string.Join('.', Steps);

    /// <summary>Whether both are the same place.</summary>
    public static bool operator ==(DraftPlace left, DraftPlace right) => left.Equals(right);

    /// <summary>Whether they are different places.</summary>
    public static bool operator !=(DraftPlace left, DraftPlace right) => !left.Equals(right);
}
