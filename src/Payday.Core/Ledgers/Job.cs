namespace Payday.Core.Ledgers;

/// <summary>What money in a place is for.</summary>
/// <param name="Kind">The sort of job.</param>
/// <param name="Id">The bill or pot it is for; empty for the buffer and for what is left to place.</param>
public readonly record struct Job(JobKind Kind, string Id)
{
    /// <summary>Deliberately without another job.</summary>
    public static Job Buffer { get; } = new(JobKind.Buffer, "");

    /// <summary>Still waiting for a job; nothing at all once a payday is closed.</summary>
    public static Job LeftToPlace { get; } = new(JobKind.LeftToPlace, "");

    /// <summary>Held for a bill's next due dates.</summary>
    public static Job SetAside(string billId) => new(JobKind.SetAside, billId);

    /// <summary>In a pot.</summary>
    public static Job Pot(string potId) => new(JobKind.Pot, potId);

    /// <summary>For a cash pot, but no available note could make it; joins its next fill.</summary>
    public static Job KeptBack(string potId) => new(JobKind.KeptBack, potId);

    /// <summary>In the wallet, to be spent from a pot; what is not in the wallet yet is in the pot itself, at home.</summary>
    public static Job Wallet(string potId) => new(JobKind.Wallet, potId);

    /// <summary>Cash that a pot owes the account after a card purchase; in the account, what its card purchases are still short of.</summary>
    public static Job OwedBack(string potId) => new(JobKind.OwedBack, potId);
}

/// <summary>The sorts of job.</summary>
public enum JobKind
{
    /// <summary>Waiting for a job.</summary>
    LeftToPlace,

    /// <summary>Deliberately without another job.</summary>
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
