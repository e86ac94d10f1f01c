using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>Why a card purchase or a refund can't be entered or changed.</summary>
/// <remarks>Pots are named as the person calls them.</remarks>
public abstract record PurchaseFault : Fault
{
    /// <summary>The amount is zero or below it.</summary>
    public sealed record NotAboveZero : PurchaseFault;

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

    /// <summary>A refund is not changed but undone, and entered again.</summary>
    public sealed record RefundUnchangeable : PurchaseFault;

    /// <summary>A refund is zero or below it.</summary>
    public sealed record RefundNotAboveZero : PurchaseFault;

    /// <summary>What the refund is for never owes cash back.</summary>
    /// <param name="Pot">The pot, or null for the buffer.</param>
    /// <param name="Amount">The refund.</param>
    public sealed record OwesNoCash(string? Pot, Money Amount) : PurchaseFault;

    /// <summary>The pot owes nothing back for what was bought up to the day of the refund.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Date">The day.</param>
    /// <param name="Amount">The refund.</param>
    public sealed record OwesNothing(string Pot, LocalDate Date, Money Amount) : PurchaseFault;

    /// <summary>The pot owes back less than the refund.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Owed">What it owes back.</param>
    /// <param name="Amount">The refund.</param>
    public sealed record OwesLess(string Pot, Money Owed, Money Amount) : PurchaseFault;
}
