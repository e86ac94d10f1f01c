using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>A completed routine: what was decided, and which movements it wrote.</summary>
/// <param name="Period">The pay period that it covers.</param>
/// <param name="FirstMovement">The number of its first movement.</param>
/// <param name="LastMovement">The number of its last movement; one less than the first where there are none.</param>
/// <param name="Dues">The bills it dealt with; those not paid are taken up again at the next payday.</param>
/// <param name="Parts">The notes of each pot and week.</param>
/// <param name="KeptBack">By pot id: what the account keeps for its next fill.</param>
/// <param name="Withdraw">By note value in minor units: how many to fetch.</param>
/// <param name="Reused">By note value: how many loose notes went into pots.</param>
/// <param name="LooseAfter">By note value: how many loose notes are left at home.</param>
/// <param name="Draft">What was decided, so that it can be taken up again.</param>
public sealed record ClosedPayday(
    PayPeriod Period,
    long FirstMovement,
    long LastMovement,
    ImmutableArray<ClosedDue> Dues,
    ImmutableArray<ClosedPart> Parts,
    ImmutableSortedDictionary<PotId, Money> KeptBack,
    Notes Withdraw,
    Notes Reused,
    Notes LooseAfter,
    RoutineDraft Draft)
{
    // Another one with other parts.
    private Grouped<PotId, ClosedPart> byPot = ByPot(Parts);

    /// <summary>The notes of each pot and week.</summary>
    public ImmutableArray<ClosedPart> Parts
    {
        get;
        init => (field, byPot) = (value, ByPot(value));
    } = Parts;

    /// <summary>The minimums it covered; null where it was closed before they were written down.</summary>
    public ImmutableArray<ClosedDue>? Minimums { get; init; }

    /// <summary>
    /// By debt the days whose month of interest it charged, also where that came to nothing; null where it was closed when a
    /// month's interest was charged with its minimum, though that was still to come.
    /// </summary>
    public ImmutableArray<DueKey>? Charged { get; init; }

    /// <summary>What each of several trips to a machine fetches, one a day from the payday on; empty where one is enough, or it isn't known.</summary>
    public ImmutableArray<Money> Trips { get; init; } = [];

    /// <summary>The payday.</summary>
    public LocalDate Payday => Period.First;

    /// <summary>The parts of one pot, in their order.</summary>
    internal IEnumerable<ClosedPart> PartsOf(PotId potId) => byPot.Of(potId);

    private static Grouped<PotId, ClosedPart> ByPot(ImmutableArray<ClosedPart> parts) => new(parts, static part => part.PotId);
}

/// <summary>A due as a payday left it.</summary>
/// <param name="Key">The bill or debt and its due date.</param>
/// <param name="Amount">What it came to; zero where the person waived it.</param>
/// <param name="Paid">Whether it had left the account; one that had not waits.</param>
/// <param name="IsDecided">Whether the person had said what it comes to, so that a change of the bill doesn't.</param>
public sealed record ClosedDue(DueKey Key, Money Amount, bool Paid, bool IsDecided = false)
{
    /// <summary>Of a minimum, what the lender asked for; null where that isn't known.</summary>
    public Money? Asked { get; init; }

    /// <summary>
    /// Of a minimum that was paid, what left with it for what was bought with the card, beyond <see cref="Amount"/>; null for
    /// nothing. Where the minimum isn't paid that goes on waiting by itself.
    /// </summary>
    public Money? Bought { get; init; }
}

/// <summary>The notes of one pot for one week.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="Week">The fill day, or null for the whole period.</param>
/// <param name="Notes">By note value in minor units: how many.</param>
public sealed record ClosedPart(PotId PotId, LocalDate? Week, Notes Notes);
