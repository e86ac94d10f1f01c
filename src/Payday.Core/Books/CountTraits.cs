namespace Payday.Core.Books;

/// <summary>What rules look for among all counts ever made: known of each without a look at it.</summary>
[Flags]
public enum CountTraits : byte
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>It was not undone.</summary>
    Stands = 1,

    /// <summary>It found something missing, or more than there was.</summary>
    Differs = 2,

    /// <summary>What was left moved on.</summary>
    MovedOn = 4,
}
