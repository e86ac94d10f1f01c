using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>A part of a card purchase.</summary>
/// <param name="PotId">The pot it is for, or null for the buffer.</param>
/// <param name="Amount">What the card paid for it; below zero what came back.</param>
public sealed record PurchasePart(PotId? PotId, Money Amount);
