namespace Payday.Statements.Habits;

/// <summary>What a rhythm counts in.</summary>
public enum RhythmUnit
{
    /// <summary>Weeks.</summary>
    Weeks,

    /// <summary>Calendar months.</summary>
    Months,
}
