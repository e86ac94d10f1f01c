namespace Payday.Core.Books;

/// <summary>What rules look for among all purchases ever made: known of each without a look at it.</summary>
[Flags]
public enum PurchaseTraits : byte
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>It was not undone.</summary>
    Stands = 1,

    /// <summary>It is a refund.</summary>
    Refund = 2,

    /// <summary>A pot owed cash for it as it was entered.</summary>
    OwesBack = 4,

    /// <summary>Fills of the wallet were taken as done with it.</summary>
    TookUpFills = 8,

    /// <summary>A debt's card paid it.</summary>
    ByCard = 16,
}
