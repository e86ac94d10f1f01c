using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.CashReturns;

/// <summary>What the pots owe the account in cash.</summary>
public static class OwedItems
{
    /// <summary>Everything still owed, oldest first.</summary>
    /// <remarks>
    /// What moves on to the account goes by way of the bank: its account side is written when the cash is there, so that
    /// nothing in the account is ever promised from cash still at home.
    /// </remarks>
    public static ImmutableArray<OwedItem> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Remembered(static of => new Known(Made(of))).Items;
    }

    /// <summary>Those of them that were bought with a debt's card: what is brought back for them waits for its next payment.</summary>
    internal static ImmutableArray<OwedItem> ForCards(Book book) =>
        book.Remembered(static of => new KnownForCards([.. Bought(of, PurchaseTraits.ByCard, Settled(of))])).Items;

    private static ImmutableArray<OwedItem> Made(Book book)
    {
        Money nothing = Money.Zero(book.Household.Currency);
        Dictionary<OwedKey, Money> settled = Settled(book);
        IEnumerable<OwedItem> purchases = Bought(book, PurchaseTraits.None, settled);
        IEnumerable<OwedItem> moves =
            from count in book.Weeks.Counts.With(CountTraits.Stands | CountTraits.MovedOn)
            where count.Move is { } move && book.Ledger.Movements[(int)move - 1].To is LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.OwedBack, PotId: var owes } } && owes == count.PotId
            let key = new OwedKey(OwedKind.MovesOn, count.Number)
            select new OwedItem(
                key, count.PotId, count.Date, "", count.Left, count.Left - settled.GetValueOrDefault(key, nothing), nothing, count.MovesOnTo);
        IEnumerable<OwedItem> moved =
            from move in book.Weeks.StandingMoves
            where move.From is LedgerEnd.At { Place: Place.Cash, Purpose.PotId: not null }
            let pot = ((LedgerEnd.At)move.From).Purpose.PotId!.Value
            let owed = Owed(book, move, pot)
            where owed.IsPositive
            let key = new OwedKey(OwedKind.Move, move.Number)
            select new OwedItem(key, pot, move.Date, move.Why, owed, owed - settled.GetValueOrDefault(key, nothing), nothing, null) { To = move.To };
        return [.. purchases.Concat(moves).Concat(moved).Where(item => item.Left.IsPositive).OrderBy(item => item.Date)];
    }

    // By the item, what cash returns settled of it.
    private static Dictionary<OwedKey, Money> Settled(Book book) => book.Weeks.StandingReturns
        .SelectMany(back => back.Settles)
        .GroupBy(settle => settle.Item)
        .ToDictionary(item => item.Key, item => Money.Sum(item.Select(settle => settle.Amount), book.Household.Currency));

    // What is owed for purchases that have some traits.
    private static IEnumerable<OwedItem> Bought(Book book, PurchaseTraits traits, Dictionary<OwedKey, Money> settled)
    {
        Money nothing = Money.Zero(book.Household.Currency);
        IReadOnlyDictionary<OwedKey, RefundedPart> refunded = RefundedParts.Of(book);
        return book.Weeks.Purchases.With(PurchaseTraits.Stands | PurchaseTraits.OwesBack | traits)
            .Select(purchase => Of(purchase, settled.GetValueOrDefault(new OwedKey(OwedKind.Purchase, purchase.Number), nothing), refunded)).OfType<OwedItem>();
    }

    // Null where nothing of it is owed any more. Of a long life this is gone through for all that was ever bought.
    private static OwedItem? Of(CardPurchase purchase, Money paid, IReadOnlyDictionary<OwedKey, RefundedPart> refunded)
    {
        var key = new OwedKey(OwedKind.Purchase, purchase.Number);
        RefundedPart? back = refunded.GetValueOrDefault(key);
        Money left = purchase.OwedBack - paid;
        left = back is null ? left : left - back.Cash;
        if (!left.IsPositive)
        {
            return null;
        }

        Money isShort = purchase.Amount - paid;
        return new OwedItem(
            key, purchase.PotId!.Value, purchase.Date, purchase.What, purchase.OwedBack, left, (back is null ? isShort : isShort - back.Amount).ClampToZero(), null)
        {
            To = purchase.Card is { } card ? LedgerEnd.InAccount(Purpose.ForCard(card)) : null,
        };
    }

    /// <summary>Settles an amount of what a pot owes, oldest first, from an end of the account or from the cash itself.</summary>
    /// <param name="writer">Where it is written.</param>
    /// <param name="date">The day.</param>
    /// <param name="potId">The pot that owes.</param>
    /// <param name="amount">How much; no more than it owes.</param>
    /// <param name="from">Where the account's money comes from.</param>
    /// <param name="payday">The payday that it belongs to, or null.</param>
    internal static ImmutableArray<SettledItem> Settle(
        WeekWriter writer, LocalDate date, PotId potId, Money amount, LedgerEnd from, LocalDate? payday = null)
    {
        var settles = ImmutableArray.CreateBuilder<SettledItem>();
        foreach (OwedItem item in Of(writer.Book).Where(item => item.PotId == potId))
        {
            Money piece = Money.Min(amount, item.Left);
            if (piece.IsZero)
            {
                break;
            }

            amount -= piece;
            settles.Add(new SettledItem(item.Key, piece));
            (LedgerEnd to, Money most, string reason) = Goal(writer.Book, item);
            Money due = Money.Min(piece, most);
            LedgerEnd paid = from;
            if (to is LedgerEnd.Owed { DebtId: var debt } && from is LedgerEnd.At { Place: Place.Cash })
            {
                // It reaches the account with the rest of the deposit, and leaves it as a payment of its own.
                paid = LedgerEnd.InAccount(Purpose.ForDebt(debt));
                writer.Move(date, from, paid, due, reason, payday);
            }

            writer.Move(date, paid, to, due, reason, payday);
            writer.Move(date, from, LedgerEnd.InAccount(Purpose.Buffer), piece - due, "rounding", payday);
        }

        return settles.ToImmutable();
    }

    private static Money Owed(Book book, Move move, PotId pot)
    {
        Money owed = Money.Zero(move.Amount.Currency);
        for (long number = move.FirstMovement; number <= move.LastMovement; number++)
        {
            Movement movement = book.Ledger.Movements[(int)number - 1];
            owed += movement.To == LedgerEnd.InCash(Purpose.OwedBack(pot)) ? movement.Amount : Money.Zero(owed.Currency);
        }

        return owed;
    }

    private static (LedgerEnd To, Money Most, string Reason) Goal(Book book, OwedItem item)
    {
        if (item is { Key.Kind: OwedKind.Purchase, To: { } waits })
        {
            return LedgerEnds.IsOf(book.Household, waits) ? (waits, item.Short, "waits for the card") : (LedgerEnd.InAccount(Purpose.Buffer), item.Left, "cash return");
        }

        if (item.To is { } moved)
        {
            return !LedgerEnds.IsOf(book.Household, moved) ? (LedgerEnd.InAccount(Purpose.Buffer), item.Left, "moved")
                : (moved, moved is LedgerEnd.Owed owed ? book.Ledger.Balances.OwedOn(owed.DebtId).ClampToZero() : item.Left, "moved");
        }

        if (item.Target is not { } target)
        {
            return (LedgerEnd.InAccount(Purpose.OwedBack(item.PotId)), item.Short, "cash return");
        }

        // A debt may have been paid off, or a pot have gone, since it was promised the money.
        return target.NameIn(book.Household) is null
            ? (LedgerEnd.InAccount(Purpose.Buffer), item.Left, "moved")
            : target switch
            {
                MoveTarget.ToDebt to => (new LedgerEnd.Owed(to.Id), book.Ledger.Balances.OwedOn(to.Id).ClampToZero(), "moved"),
                MoveTarget.ToPot to => (LedgerEnd.InAccount(Purpose.Pot(to.Id)), item.Left, "moved"),
                _ => (LedgerEnd.InAccount(Purpose.Buffer), item.Left, "moved"),
            };
    }

    // Once for each book: a routine, home and the count ask, and it goes through all purchases ever made.
    private sealed record Known(ImmutableArray<OwedItem> Items);

    private sealed record KnownForCards(ImmutableArray<OwedItem> Items);
}
