namespace Payday.Core.Ledgers;

/// <summary>Where money is.</summary>
public enum Place
{
    /// <summary>In the bank account.</summary>
    Account,

    /// <summary>In notes at home or in the wallet.</summary>
    Cash,
}
