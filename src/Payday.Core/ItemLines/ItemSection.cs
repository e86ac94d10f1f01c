namespace Payday.Core.ItemLines;

/// <summary>Which list of a household a line is for.</summary>
public enum ItemSection
{
    /// <summary>Who pays, and when.</summary>
    Sources,

    /// <summary>What falls due.</summary>
    Bills,

    /// <summary>What is owed.</summary>
    Debts,

    /// <summary>What money is for.</summary>
    Pots,
}
