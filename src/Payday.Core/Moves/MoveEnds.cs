using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Moves;

/// <summary>What money can be moved from and to: pots, set-asides, the buffer and loose notes; and to debts.</summary>
public static class MoveEnds
{
    /// <summary>The account's buffer.</summary>
    public static LedgerEnd Buffer { get; } = LedgerEnd.InAccount(Purpose.Buffer);

    /// <summary>The loose notes at home, in no pot.</summary>
    public static LedgerEnd Loose { get; } = LedgerEnd.InCash(Purpose.Buffer);

    /// <summary>What money can be moved from, whether it has any or not: pots in their order, what is kept back for them, bills, the buffer, loose notes.</summary>
    public static ImmutableArray<LedgerEnd> From(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return
        [
            .. book.Household.Pots.Select(OfPot),
            .. book.Household.Bills.Select(bill => LedgerEnd.InAccount(Purpose.SetAside(bill.Id))),
            Buffer,
            Loose,
            .. book.Household.Pots.Where(pot => pot.Place == Place.Cash).Select(pot => LedgerEnd.InAccount(Purpose.KeptBack(pot.Id))),
        ];
    }

    /// <summary>What money can be moved to: pots in their order, bills, debts, the buffer, loose notes.</summary>
    public static ImmutableArray<LedgerEnd> To(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return
        [
            .. book.Household.Pots.Select(OfPot),
            .. book.Household.Bills.Select(bill => LedgerEnd.InAccount(Purpose.SetAside(bill.Id))),
            .. book.Household.Debts.Select(debt => new LedgerEnd.Owed(debt.Id)),
            Buffer,
            Loose,
        ];
    }

    /// <summary>What a pot's money is moved from and to.</summary>
    public static LedgerEnd OfPot(Pot pot)
    {
        ArgumentNullException.ThrowIfNull(pot);
        return new LedgerEnd.At(pot.Place, Purpose.Pot(pot.Id));
    }

    /// <summary>What an end has that can be moved; for a debt what is owed on it. A pot in cash has what is in its wallet and at home.</summary>
    public static Amounts.Money Has(Book book, LedgerEnd end)
    {
        ArgumentNullException.ThrowIfNull(book);
        return end switch
        {
            LedgerEnd.Owed owed => book.Ledger.Balances.OwedOn(owed.DebtId),
            LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.Pot, PotId: { } pot } } => PotMoney.InCash(book.Ledger.Balances, pot),
            _ => book.Ledger.Balances[end],
        };
    }

    internal static Pot? CashPot(Book book, LedgerEnd end) => end is LedgerEnd.At { Place: Place.Cash, Purpose: { Kind: PurposeKind.Pot, PotId: { } id } }
        ? book.Household.Pots.FirstOrDefault(pot => pot.Id == id && pot.Place == Place.Cash)
        : null;
}
