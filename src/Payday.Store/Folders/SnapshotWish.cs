namespace Payday.Store.Folders;

/// <summary>When a store keeps a snapshot.</summary>
/// <param name="FewestRecords">From how many records on.</param>
/// <param name="FurthestBehind">How far the journal may go on before a new one is made, in bytes.</param>
internal sealed record SnapshotWish(int FewestRecords, long FurthestBehind)
{
    /// <summary>As the program keeps it: a store of fewer records is read whole as fast as one needs.</summary>
    public static SnapshotWish Usual { get; } = new(4_000, 512 * 1024);
}
