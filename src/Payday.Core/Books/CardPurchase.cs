using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>Something paid by card, and so by the account or on a debt, for a pot or from the buffer; or a refund of such, which is below zero.</summary>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Date">The day of the purchase.</param>
/// <param name="PotId">The pot it is for, or null for the buffer.</param>
/// <param name="Amount">What the card paid, above zero; below zero what came back, see <c>CardRefunds</c>.</param>
/// <param name="OwedBack">
/// What a cash pot owes back: the amount rounded by the household's setting, but never more than the pot had; zero
/// where the money was in the account. For a refund zero or below: how much less it owes.
/// </param>
/// <param name="What">What it was, in a few words; may be empty.</param>
/// <param name="FirstMovement">The number of its first movement, after those of what it took up.</param>
/// <param name="LastMovement">The number of its last movement.</param>
public sealed record CardPurchase(
    long Number,
    LocalDate Date,
    PotId? PotId,
    Money Amount,
    Money OwedBack,
    string What,
    long FirstMovement,
    long LastMovement) : IRecord<PurchaseTraits>
{
    /// <inheritdoc/>
    PotId? IRecord<PurchaseTraits>.Pot => PotId;

    /// <summary>Whether it was undone; its movements then have their reverses.</summary>
    public bool Undone { get; init; }

    /// <summary>
    /// For a part of a purchase over several pots: the number of its first part, by which all of them are known; null for one
    /// over a single pot. What the card paid in all is the sum of the parts, and each is owed back by itself.
    /// </summary>
    public long? Whole { get; init; }

    /// <summary>
    /// The debt whose card paid it: nothing left the account, the balance rose, and the pot's money waits for the next payment
    /// (<see cref="Ledgers.Purpose.ForCard"/>); null where the account paid.
    /// </summary>
    public DebtId? Card { get; init; }

    /// <summary>What was taken as being in the wallet when it was entered; see <c>WalletFills</c>.</summary>
    public TakenUp TakenUp { get; init; } = TakenUp.Nothing;

    /// <summary>Whether it is a refund.</summary>
    public bool IsRefund => Amount.IsNegative;

    /// <inheritdoc/>
    public PurchaseTraits Traits =>
        (Undone ? PurchaseTraits.None : PurchaseTraits.Stands)
        | (IsRefund ? PurchaseTraits.Refund : PurchaseTraits.None)
        | (PotId is not null && OwedBack.IsPositive ? PurchaseTraits.OwesBack : PurchaseTraits.None)
        | (TakenUp.Fills.IsEmpty ? PurchaseTraits.None : PurchaseTraits.TookUpFills)
        | (Card is null ? PurchaseTraits.None : PurchaseTraits.ByCard);

    /// <summary>The number by which the whole purchase is known: its own, or that of its first part.</summary>
    public long WholeNumber => Whole ?? Number;
}
