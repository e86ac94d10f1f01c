namespace Payday.Core.Moves;

/// <summary>How money gets from one purpose to another.</summary>
public enum MoveWay
{
    /// <summary>Within the account, at once.</summary>
    InAccount,

    /// <summary>Within the cash, from envelope to envelope.</summary>
    InCash,

    /// <summary>From cash to the account: it is owed back until it is at the bank, and the purpose gets it then.</summary>
    OwedBack,

    /// <summary>From the account to a cash pot: the account keeps it until the next withdrawal brings it.</summary>
    NextWithdrawal,

    /// <summary>From the account to cash, fetched on that day.</summary>
    Fetched,

    /// <summary>Loose notes taken to the bank on that day, or cash of a pot that the bank shows.</summary>
    Deposited,
}
