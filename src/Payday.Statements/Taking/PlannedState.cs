namespace Payday.Statements.Taking;

/// <summary>How a line of the bank's stands to the book.</summary>
public enum PlannedState
{
    /// <summary>It is a line of the account, by the margin.</summary>
    Matched,

    /// <summary>It may be one of several, or none.</summary>
    Unclear,

    /// <summary>It may be a line that was taken before, with other words.</summary>
    Unsure,

    /// <summary>It is pay that comes with a payday to be closed.</summary>
    Waits,

    /// <summary>The book has nothing for it.</summary>
    New,
}
