using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>A card purchase as the person enters it.</summary>
/// <param name="Date">The day of the purchase.</param>
/// <param name="PotId">The pot it is for, or the first of them; null for the buffer.</param>
/// <param name="Amount">What the card paid for that; below zero what came back.</param>
/// <param name="What">What it was; may be empty.</param>
public sealed record PurchaseEntry(LocalDate Date, PotId? PotId, Money Amount, string What)
{
    /// <summary>The debt whose card paid; null where the account did.</summary>
    public DebtId? Card { get; init; }

    /// <summary>The further parts of one over several pots, the first being <see cref="PotId"/> and <see cref="Amount"/>; empty for a single pot.</summary>
    public ImmutableArray<PurchasePart> Others { get; init; } = [];

    /// <summary>All parts, in their order.</summary>
    public ImmutableArray<PurchasePart> Parts => [new PurchasePart(PotId, Amount), .. Others];

    /// <summary>What was paid in all, or came back.</summary>
    public Money Total => Money.Sum(Parts.Select(part => part.Amount), Amount.Currency);

    /// <summary>The same with other parts.</summary>
    /// <param name="parts">The parts, one at least.</param>
    public PurchaseEntry With(ImmutableArray<PurchasePart> parts) => this with { PotId = parts[0].PotId, Amount = parts[0].Amount, Others = parts.RemoveAt(0) };

    /// <summary>The same with the sign of every part turned round: a purchase as a refund.</summary>
    public PurchaseEntry TurnedRound() => With([.. Parts.Select(part => part with { Amount = -part.Amount })]);
}
