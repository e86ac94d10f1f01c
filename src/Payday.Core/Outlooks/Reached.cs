using NodaTime;
using Payday.Core.Ids;

namespace Payday.Core.Outlooks;

/// <summary>When a pot has what it is for: a sinking pot its target, a reserve its level, a ladder all its steps.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="On">The payday on which it is first full.</param>
public sealed record PotReached(PotId PotId, string Name, LocalDate On);

/// <summary>When a debt is paid off.</summary>
/// <param name="DebtId">The debt.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="On">The payday after which nothing is owed.</param>
public sealed record DebtPaidOff(DebtId DebtId, string Name, LocalDate On);
