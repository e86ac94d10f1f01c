using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>A due of a bill that is neither paid nor waived.</summary>
/// <param name="Key">What it is known by: as the closed payday that left it open has it, or by its schedule.</param>
/// <param name="Date">The day on which it falls due now, moves done.</param>
/// <param name="Amount">What it comes to: what was decided when it was left open, or what the bill is now; zero or more.</param>
/// <param name="IsDecided">Whether the person has said what it comes to.</param>
public sealed record OpenDue(DueKey Key, LocalDate Date, Money Amount, bool IsDecided)
{
    /// <summary>The bill.</summary>
    public BillId BillId => Key.Bill!.Value;
}

/// <summary>A minimum of a debt that no payday has covered.</summary>
/// <param name="Key">What it is known by.</param>
/// <param name="Date">The day on which it falls due.</param>
/// <param name="IsCharged">Whether its month's interest was charged already: it was covered once, and that was undone.</param>
public sealed record OpenMinimum(DueKey Key, LocalDate Date, bool IsCharged)
{
    /// <summary>The debt.</summary>
    public DebtId DebtId => Key.Debt!.Value;
}
