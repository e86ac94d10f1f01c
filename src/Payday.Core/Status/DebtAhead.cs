using Payday.Core.Amounts;
using Payday.Core.Debts;

namespace Payday.Core.Status;

/// <summary>How far a debt has come, and how far it has to go.</summary>
/// <param name="Glance">What is owed, and what was at the start.</param>
/// <param name="InterestSoFar">What the lender charged since the start, as the ledger has it; zero or more.</param>
/// <param name="InterestToCome">What it will charge as the routine proposes to pay; null where the debt never ends.</param>
/// <param name="Course">When it ends as the routine proposes to pay.</param>
/// <param name="AtMinimums">When it ends where nothing but minimums is paid.</param>
public sealed record DebtAhead(
    DebtGlance Glance, Money InterestSoFar, Money? InterestToCome, ProjectedDebt Course, ProjectedDebt AtMinimums);
