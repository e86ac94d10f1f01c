namespace Payday.Core.Ledgers;

/// <summary>What money in a place is for.</summary>
/// <param name="Kind">The sort of purpose.</param>
/// <param name="Id">The bill or pot it is for; empty for the buffer and for what is left to place.</param>
public readonly record struct Purpose(PurposeKind Kind, string Id)
{
    /// <summary>Deliberately without another purpose.</summary>
    public static Purpose Buffer { get; } = new(PurposeKind.Buffer, "");

    /// <summary>Still waiting for a purpose; nothing at all once a payday is closed.</summary>
    public static Purpose LeftToPlace { get; } = new(PurposeKind.LeftToPlace, "");

    /// <summary>Held for a bill's next due dates.</summary>
    public static Purpose SetAside(string billId) => new(PurposeKind.SetAside, billId);

    /// <summary>In a pot.</summary>
    public static Purpose Pot(string potId) => new(PurposeKind.Pot, potId);

    /// <summary>For a cash pot, but no available note could make it; joins its next fill.</summary>
    public static Purpose KeptBack(string potId) => new(PurposeKind.KeptBack, potId);

    /// <summary>In the wallet, to be spent from a pot; what is not in the wallet yet is in the pot itself, at home.</summary>
    public static Purpose Wallet(string potId) => new(PurposeKind.Wallet, potId);

    /// <summary>Cash that a pot owes the account after a card purchase; in the account, what its card purchases are still short of.</summary>
    public static Purpose OwedBack(string potId) => new(PurposeKind.OwedBack, potId);
}

/// <summary>The sorts of purpose.</summary>
public enum PurposeKind
{
    /// <summary>Waiting for a purpose.</summary>
    LeftToPlace,

    /// <summary>Deliberately without another purpose.</summary>
    Buffer,

    /// <summary>For a bill.</summary>
    SetAside,

    /// <summary>For a pot.</summary>
    Pot,

    /// <summary>For a pot's next fill.</summary>
    KeptBack,

    /// <summary>Owed to the account.</summary>
    OwedBack,

    /// <summary>In the wallet.</summary>
    Wallet,
}
