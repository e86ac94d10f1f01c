using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>A due of a bill that is neither paid nor waived.</summary>
/// <param name="Key">What it is known by: as the closed payday that left it open has it, or by its schedule.</param>
/// <param name="Date">The day on which it falls due now, moves done.</param>
/// <param name="Amount">What is still to be paid: what was decided when it was left open, or what the bill is now, less what was paid of it; zero or more.</param>
/// <param name="IsDecided">Whether the person has said what it comes to.</param>
public sealed record OpenDue(DueKey Key, LocalDate Date, Money Amount, bool IsDecided)
{
    /// <summary>What was paid of it already, zero or more.</summary>
    public Money Paid { get; init; } = Money.Zero(Amount.Currency);

    /// <summary>The bill.</summary>
    public BillId BillId => Key.Bill!.Value;
}

/// <summary>A minimum of a debt that has not left the account.</summary>
/// <param name="Key">What it is known by.</param>
/// <param name="Date">The day on which it falls due.</param>
/// <param name="Paid">What was paid of it already, zero or more.</param>
/// <param name="Covered">What a payday put in the account for it and is still to be paid; null where none did.</param>
public sealed record OpenMinimum(DueKey Key, LocalDate Date, Money Paid, Money? Covered)
{
    /// <summary>The debt.</summary>
    public DebtId DebtId => Key.Debt!.Value;
}
