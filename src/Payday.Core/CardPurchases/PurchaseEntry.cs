using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>A card purchase as the person enters it.</summary>
/// <param name="Date">The day of the purchase.</param>
/// <param name="PotId">The pot it is for, or null for the buffer.</param>
/// <param name="Amount">What the card paid; below zero what came back.</param>
/// <param name="What">What it was; may be empty.</param>
public sealed record PurchaseEntry(LocalDate Date, PotId? PotId, Money Amount, string What);
