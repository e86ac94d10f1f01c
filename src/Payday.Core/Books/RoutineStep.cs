namespace Payday.Core.Books;

/// <summary>The seven steps of the payday routine, in order.</summary>
public enum RoutineStep
{
    /// <summary>What came in.</summary>
    Income = 1,

    /// <summary>Bills due and set aside.</summary>
    Bills,

    /// <summary>At least the minimum on every debt.</summary>
    DebtMinimums,

    /// <summary>Filling the pots.</summary>
    Pots,

    /// <summary>Placing what is left.</summary>
    Surplus,

    /// <summary>Turning cash pots into notes.</summary>
    Withdrawal,

    /// <summary>The paper for the bank, and the closing.</summary>
    Slip,
}
