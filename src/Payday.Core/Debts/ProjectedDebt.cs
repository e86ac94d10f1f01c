using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>What becomes of one debt.</summary>
/// <param name="Id">The debt.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="PaidOff">
/// The month of its last payment, or null when it never ends. The first month for a debt that is paid already.
/// </param>
/// <param name="Interest">All interest until then, or null when it never ends.</param>
public sealed record ProjectedDebt(DebtId Id, string Name, YearMonth? PaidOff, Money? Interest)
{
    /// <summary>Whether nothing is owed on it before the first month begins: paid already, or by what is paid at once.</summary>
    public bool AtOnce { get; init; }
}
