using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>Why a card purchase or a refund can't be entered or changed.</summary>
/// <remarks>Pots are named as the person calls them.</remarks>
public abstract record PurchaseFault : Fault
{
    /// <summary>The amount is zero.</summary>
    public sealed record Zero : PurchaseFault;

    /// <summary>There is no pot of that id.</summary>
    /// <param name="PotId">The id.</param>
    public sealed record NoSuchPot(PotId PotId) : PurchaseFault;

    /// <summary>The day is before the household began.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Start">When it began.</param>
    public sealed record BeforeStart(LocalDate Date, LocalDate Start) : PurchaseFault;

    /// <summary>The buffer has less than the purchase.</summary>
    /// <param name="Has">What it has.</param>
    /// <param name="Amount">The purchase.</param>
    public sealed record BufferHasLess(Money Has, Money Amount) : PurchaseFault;

    /// <summary>The pot has something, but less than the purchase.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Has">What it has, above zero.</param>
    /// <param name="Amount">The purchase.</param>
    public sealed record PotHasLess(string Pot, Money Has, Money Amount) : PurchaseFault;

    /// <summary>The pot has nothing.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Amount">The purchase.</param>
    public sealed record PotHasNothing(string Pot, Money Amount) : PurchaseFault;

    /// <summary>Two parts are for the same pot.</summary>
    /// <param name="Pot">What the person calls it; null for the buffer.</param>
    public sealed record SamePotTwice(string? Pot) : PurchaseFault;

    /// <summary>Some parts were bought, and others came back.</summary>
    public sealed record BothWays : PurchaseFault;

    /// <summary>The parts don't add up to the purchase.</summary>
    /// <param name="Parts">What they come to.</param>
    /// <param name="Amount">The purchase.</param>
    public sealed record PartsDiffer(Money Parts, Money Amount) : PurchaseFault;

    /// <summary>Two parts have no amount: only one can have the rest.</summary>
    public sealed record RestTwice : PurchaseFault;

    /// <summary>A part has the rest, and nobody said of what.</summary>
    public sealed record RestOfUnknown : PurchaseFault;

    /// <summary>The other parts leave nothing for the one that has the rest.</summary>
    /// <param name="Parts">What the others come to.</param>
    /// <param name="Amount">The purchase.</param>
    public sealed record NothingLeft(Money Parts, Money Amount) : PurchaseFault;

    /// <summary>The card is no debt of the household's.</summary>
    /// <param name="Card">The id.</param>
    public sealed record NoSuchCard(DebtId Card) : PurchaseFault;

    /// <summary>A refund is not changed but undone, and entered again.</summary>
    public sealed record RefundUnchangeable : PurchaseFault;

    /// <summary>A refund is zero or below it.</summary>
    public sealed record RefundNotAboveZero : PurchaseFault;
}
