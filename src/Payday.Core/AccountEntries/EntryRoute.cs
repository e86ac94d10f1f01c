using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;

namespace Payday.Core.AccountEntries;

/// <summary>From where to where the money of an entry goes.</summary>
/// <param name="From">Where it comes from.</param>
/// <param name="To">Where it goes.</param>
internal sealed record EntryRoute(LedgerEnd From, LedgerEnd To)
{
    /// <summary>The way of an entry; or why it has none.</summary>
    public static Result<EntryRoute> Of(Book book, EntryWish wish)
    {
        bool comesIn = wish.Amount.IsPositive;
        if (wish.For is LedgerEnd.Owed debt)
        {
            return OfDebt(book, wish, debt, comesIn);
        }

        if (wish.IsCash || wish.For == MoveEnds.Loose)
        {
            return OfCash(book, wish, comesIn);
        }

        return wish.Kind switch
        {
            EntryKind.Loss => Result.Refused<EntryRoute>(new EntryFault.NotFor(wish.Kind, wish.For, Name(book, wish))),
            EntryKind.Refund or EntryKind.Income or EntryKind.Borrowing when !comesIn => Result.Refused<EntryRoute>(new EntryFault.WrongWay(wish.Kind, comesIn)),
            EntryKind.Fee or EntryKind.Payment when comesIn => Result.Refused<EntryRoute>(new EntryFault.WrongWay(wish.Kind, comesIn)),
            EntryKind.Borrowing => Result.Refused<EntryRoute>(new EntryFault.NotFor(wish.Kind, wish.For, Name(book, wish))),
            _ => OfAccount(book, wish, comesIn),
        };
    }

    // What a lender charges, and what is borrowed anew, which is there to be placed.
    private static Result<EntryRoute> OfDebt(Book book, EntryWish wish, LedgerEnd.Owed debt, bool comesIn) => (wish.Kind, comesIn) switch
    {
        (EntryKind.Borrowing, true) => Result.Of(new EntryRoute(debt, LedgerEnd.InAccount(Purpose.LeftToPlace))),
        (EntryKind.Fee, false) => Result.Of(new EntryRoute(debt, LedgerEnd.Entered(EntryKind.Fee))),
        (EntryKind.Interest, false) => Result.Of(new EntryRoute(debt, LedgerEnd.InterestOn(debt.DebtId))),
        _ => Result.Refused<EntryRoute>(new EntryFault.NotFor(wish.Kind, wish.For, Name(book, wish))),
    };

    private static Result<EntryRoute> OfCash(Book book, EntryWish wish, bool comesIn)
    {
        Pot? pot = MoveEnds.CashPot(book, wish.For);
        if (pot is null && wish.For != MoveEnds.Loose)
        {
            return Result.Refused<EntryRoute>(new EntryFault.NotFor(wish.Kind, wish.For, Name(book, wish)));
        }

        LedgerEnd place = pot is null ? MoveEnds.Loose : WalletFills.SpentFrom(pot);
        return (wish.Kind, comesIn) switch
        {
            (EntryKind.Gift, true) => Result.Of(new EntryRoute(LedgerEnd.Entered(EntryKind.Gift), place)),
            (EntryKind.Gift, false) or (EntryKind.Loss, false) => Result.Of(new EntryRoute(wish.For, LedgerEnd.Entered(wish.Kind))),
            (EntryKind.Loss, true) => Result.Of(new EntryRoute(LedgerEnd.Entered(EntryKind.Loss), place)),
            _ => Result.Refused<EntryRoute>(new EntryFault.NotFor(wish.Kind, wish.For, Name(book, wish))),
        };
    }

    private static Result<EntryRoute> OfAccount(Book book, EntryWish wish, bool comesIn)
    {
        Pot? cash = MoveEnds.CashPot(book, wish.For);
        if (cash is not null && !comesIn)
        {
            return Result.Refused<EntryRoute>(new EntryFault.IsPurchase(cash.Name));
        }

        // Money of the account for a cash pot waits there for its next fill.
        LedgerEnd at = cash is not null ? LedgerEnd.InAccount(Purpose.KeptBack(cash.Id)) : wish.For;
        LedgerEnd? other = wish.Kind switch
        {
            EntryKind.Income => wish.Source is { } source ? LedgerEnd.PaidBy(source) : LedgerEnd.OneOff(wish.What.Trim()),
            EntryKind.Refund or EntryKind.Payment => Paid(at),
            _ => LedgerEnd.Entered(wish.Kind),
        };
        return other is null
            ? Result.Refused<EntryRoute>(new EntryFault.NotFor(wish.Kind, wish.For, Name(book, wish)))
            : Result.Of(comesIn ? new EntryRoute(other, at) : new EntryRoute(at, other));
    }

    private static LedgerEnd? Paid(LedgerEnd at) => at switch
    {
        LedgerEnd.At { Purpose.BillId: { } bill } => LedgerEnd.PaidFor(bill),
        LedgerEnd.At { Purpose.PotId: { } pot } => LedgerEnd.SpentFrom(pot),
        LedgerEnd.At { Purpose.Kind: PurposeKind.Buffer } => LedgerEnd.SpentFrom(null),
        _ => null,
    };

    private static string? Name(Book book, EntryWish wish) => LedgerEnds.NameIn(book.Household, wish.For);
}
