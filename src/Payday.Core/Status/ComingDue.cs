using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;

namespace Payday.Core.Status;

/// <summary>A date by which money has to leave the account.</summary>
/// <param name="Owner">The bill or debt that asks for it.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Date">By when, shifts done.</param>
/// <param name="Amount">
/// Of a bill what was decided or is usual; of a debt what was decided, or the minimum that its balance asks for with the
/// minimums before it paid; of one paid in part the rest, or the part. Zero or more.
/// </param>
/// <param name="Paid">Whether it has left the account; a minimum covered in earlier versions stands until the payday after that.</param>
public sealed record ComingDue(DueOwner Owner, string Name, LocalDate Date, Money Amount, bool Paid)
{
    /// <summary>What it is known by.</summary>
    public DueKey Key { get; init; } = new(Owner, Date);

    /// <summary>What asks for it.</summary>
    public DueKind Kind => Owner.Bill is null ? DueKind.Minimum : DueKind.Bill;
}

/// <summary>What asks for money by a date.</summary>
public enum DueKind
{
    /// <summary>A bill.</summary>
    Bill,

    /// <summary>A debt's minimum.</summary>
    Minimum,
}
