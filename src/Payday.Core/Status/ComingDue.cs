using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Status;

/// <summary>A date by which money has to leave the account.</summary>
/// <param name="Kind">What asks for it.</param>
/// <param name="Id">The bill or debt.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Date">By when, shifts done.</param>
/// <param name="Amount">
/// Of a bill what was decided or is usual; of a debt what was decided, or the minimum that its balance asks for with the
/// minimums before it paid. Zero or more.
/// </param>
/// <param name="Paid">Whether it has left the account; a minimum stands until the payday after the one that covered it.</param>
public sealed record ComingDue(DueKind Kind, string Id, string Name, LocalDate Date, Money Amount, bool Paid);

/// <summary>What asks for money by a date.</summary>
public enum DueKind
{
    /// <summary>A bill.</summary>
    Bill,

    /// <summary>A debt's minimum.</summary>
    Minimum,
}
