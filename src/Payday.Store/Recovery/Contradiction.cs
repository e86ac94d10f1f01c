namespace Payday.Store.Recovery;

/// <summary>What something in a folder knows of its past that the journal doesn't. One of the nested cases.</summary>
/// <param name="Number">The number of the change at which they part.</param>
public abstract record Contradiction(long Number)
{
    /// <summary>It goes on further.</summary>
    /// <param name="Witness">What does.</param>
    /// <param name="Number">To which change.</param>
    public sealed record GoesOn(Witness Witness, long Number) : Contradiction(Number);

    /// <summary>It has another change of that number.</summary>
    /// <param name="Witness">What has.</param>
    /// <param name="Number">The number.</param>
    public sealed record HasAnother(Witness Witness, long Number) : Contradiction(Number);

    /// <summary>The snapshot holds something else than the journal came to at that change.</summary>
    public sealed record SnapshotDiffers(long Number) : Contradiction(Number);
}
