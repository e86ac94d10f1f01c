namespace Payday.Store.Edits;

/// <summary>The version of what is stored.</summary>
public static class StoreVersion
{
    /// <summary>The version of the documents that this program reads and writes; what an older one wrote is brought up to it.</summary>
    public const int Current = 6;
}
