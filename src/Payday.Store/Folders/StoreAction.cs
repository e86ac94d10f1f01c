namespace Payday.Store.Folders;

/// <summary>What is tried on a folder.</summary>
public enum StoreAction
{
    /// <summary>Opening, and making what is missing.</summary>
    Open,

    /// <summary>Reading.</summary>
    Read,

    /// <summary>Writing.</summary>
    Write,
}
