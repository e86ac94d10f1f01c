namespace Payday.Store.Recovery;

/// <summary>What in a folder knows of its past beside the journal. One of the nested cases.</summary>
public abstract record Witness
{
    private Witness()
    {
    }

    /// <summary>The database.</summary>
    public sealed record Database : Witness;

    /// <summary>A backup.</summary>
    /// <param name="File">The name of its file; null where it is only known that there is one.</param>
    public sealed record Backup(string? File) : Witness;

    /// <summary>The snapshot.</summary>
    public sealed record Snapshot : Witness;
}
