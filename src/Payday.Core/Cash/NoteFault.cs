using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Ids;

namespace Payday.Core.Cash;

/// <summary>A wish that the plan could not meet.</summary>
/// <param name="Kind">Which wish.</param>
/// <param name="Pot">The pot's stable name.</param>
/// <param name="Name">What the person calls the pot.</param>
/// <param name="Week">The fill day, or null.</param>
/// <param name="Wished">What was asked for: the small money, the top note or the amount.</param>
/// <param name="Possible">What the plan does instead: the small money it holds, the smallest note that can be fetched, or the amount in notes.</param>
public sealed record NoteFault(NoteFaultKind Kind, PotId Pot, string Name, LocalDate? Week, Money Wished, Money Possible) : Fault
{
    /// <summary>
    /// What mends it beside giving up the wish, and was found to: the amount from which on the small money can be had,
    /// or the top note with which the amount can be paid. Null where there is none.
    /// </summary>
    public Money? Enough { get; init; }

    /// <summary>Whether a teller, who has all notes in use, could meet the wish where this source can't.</summary>
    public bool ByTeller { get; init; }
}

/// <summary>Which wish a plan could not meet.</summary>
public enum NoteFaultKind
{
    /// <summary>The part can't hold its small money; it holds as much as it can.</summary>
    SmallMoney,

    /// <summary>The part's top note is below every note that can be fetched; what notes on hand can't pay is kept back.</summary>
    TopNote,

    /// <summary>The machine gives less than is needed; the rest of the part is kept back.</summary>
    Limit,
}
