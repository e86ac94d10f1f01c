namespace Payday.Statements.Habits;

/// <summary>What changed in a series.</summary>
public enum RecurringChangeKind
{
    /// <summary>The amount is another since a day, and has stayed so.</summary>
    Amount,

    /// <summary>No line has come since a day.</summary>
    Stopped,
}
