using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;
using Payday.Core.Undo;

namespace Payday.Core.AccountEntries;

/// <summary>Money that enters or leaves the account, or the cash, outside a payday (design, rule 13).</summary>
public static class Entering
{
    /// <summary>Enters it.</summary>
    /// <returns>
    /// The book afterwards, the entry being its last - but what came back for a pot or the buffer is a card purchase below zero,
    /// as <see cref="CardRefunds"/> has it; or why it can't be entered.
    /// </returns>
    public static Result<Book> Enter(Book book, EntryWish wish)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(wish);
        if (IsRefundOfPurchase(wish))
        {
            return CardRefunds.Enter(book, new PurchaseEntry(wish.Date, ((LedgerEnd.At)wish.For).Purpose.PotId, wish.Amount, wish.What));
        }

        Result<EntryWish> noted = Checked(book, wish);
        if (!noted.Ok)
        {
            return Result.Refused<Book>(noted.Faults);
        }

        wish = noted.Value;
        Result<EntryRoute> route = EntryRoute.Of(book, wish);
        return route.Ok ? Written(book, wish, route.Value) : Result.Refused<Book>(route.Faults);
    }

    /// <summary>Whether it came back for a pot or the buffer, so that it is kept among the card purchases.</summary>
    public static bool IsRefundOfPurchase(EntryWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return wish is { Kind: EntryKind.Refund, Amount.IsPositive: true, IsCash: false, For: LedgerEnd.At { Purpose.Kind: PurposeKind.Pot or PurposeKind.Buffer } } && wish.For != MoveEnds.Loose;
    }

    /// <summary>Enters that the loose notes were counted: what is missing is lost, what is more was found, by what it is called.</summary>
    /// <param name="book">The book.</param>
    /// <param name="date">The day.</param>
    /// <param name="counted">All loose notes, by value in minor units.</param>
    /// <param name="what">What the difference is called; may be empty where there is none.</param>
    /// <returns>The book afterwards, the count being its last entry; or why it can't be entered.</returns>
    public static Result<Book> CountLoose(Book book, LocalDate date, Notes counted, string what)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(counted);
        ArgumentNullException.ThrowIfNull(what);
        if (date < book.Household.Start)
        {
            return Result.Refused<Book>(new EntryFault.BeforeStart(date, book.Household.Start));
        }

        Money difference = counted.Worth(book.Household.Currency) - book.Ledger.Balances[MoveEnds.Loose];
        if (difference.IsZero && counted == PotNotes.Of(book).Loose)
        {
            return Result.Refused<Book>(new EntryFault.CountedTheSame());
        }

        if (!difference.IsZero && what.Trim().Length == 0)
        {
            return Result.Refused<Book>(new EntryFault.NameNeeded(EntryKind.Loss));
        }

        var wish = new EntryWish(date, EntryKind.Loss, MoveEnds.Loose, difference, what);
        LedgerEnd lost = LedgerEnd.Entered(EntryKind.Loss);
        return Written(book, wish, difference.IsNegative ? new EntryRoute(MoveEnds.Loose, lost) : new EntryRoute(lost, MoveEnds.Loose), counted);
    }

    /// <summary>Undoes an entry: all is as if it had never been made.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">The entry.</param>
    /// <param name="date">The day on which it is undone.</param>
    /// <returns>The book afterwards; or why it can't be undone.</returns>
    public static Result<Book> Undo(Book book, long number, LocalDate date) => new EntryUndo().Undo(book, number, date);

    /// <summary>What is in the way of undoing an entry; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, long number) => new EntryUndo().InTheWay(book, number);

    private static Result<Book> Written(Book book, EntryWish wish, EntryRoute route, Notes? counted = null)
    {
        var writer = new WeekWriter(book);
        Pot? gives = MoveEnds.CashPot(book, route.From);
        TakenUp taken = gives is not null ? WalletFills.TakeUp(writer, gives, wish.Date) : TakenUp.Nothing;
        long first = writer.Next;
        Money size = wish.Amount.IsNegative ? -wish.Amount : wish.Amount;
        if (!LedgerCheck.MayBeNegative(route.From) || route.From == EntryEnds.ToPlace)
        {
            Money has = MoveEnds.Has(writer.Book, route.From);
            if (has < size)
            {
                return Result.Refused<Book>(new EntryFault.HasLess(route.From, LedgerEnds.NameIn(book.Household, route.From), has, size));
            }
        }

        if (gives is not null)
        {
            PotCash.TakeOut(writer, gives, route.To, size, wish.Date, Reason(wish));
        }
        else
        {
            // As with bills: on its day where the money was there by then, else on the first day on which it was.
            LocalDate day = LedgerCheck.MayBeNegative(route.From) ? wish.Date : EndCourse.Of(book.Ledger, route.From).DayFor(size, wish.Date) ?? wish.Date;
            writer.Move(day, route.From, route.To, size, Reason(wish));
        }

        writer.Record(weeks => weeks with
        {
            Entries = weeks.Entries.Add(new AccountEntry(
                weeks.Entries.Length + 1, wish.Date, wish.Kind, wish.For, wish.Amount, wish.What.Trim(), wish.Cheque, wish.Notes, first, writer.Last)
            {
                TakenUp = taken,
                Counted = counted,
            }),
        });
        return Result.Of(writer.Book);
    }

    private static Result<EntryWish> Checked(Book book, EntryWish wish)
    {
        if (wish.Amount.IsZero)
        {
            return Refused(new EntryFault.Zero());
        }

        if (wish.Date < book.Household.Start)
        {
            return Refused(new EntryFault.BeforeStart(wish.Date, book.Household.Start));
        }

        if (!LedgerEnds.IsOf(book.Household, wish.For))
        {
            return Refused(new EntryFault.NotFor(wish.Kind, wish.For, null));
        }

        if (wish.What.Trim().Length == 0 && (wish.Kind == EntryKind.Loss || wish is { Kind: EntryKind.Income, Source: null }))
        {
            return Refused(new EntryFault.NameNeeded(wish.Kind));
        }

        bool isCash = wish.IsCash || wish.For == MoveEnds.Loose;
        if (wish.Cheque is not null && (isCash || wish.Amount.IsPositive || wish.For is LedgerEnd.Owed))
        {
            return Refused(new EntryFault.NoCheque());
        }

        return wish.Notes is { } notes ? Named(book, wish, isCash, notes)
            : wish.For == MoveEnds.Loose ? Loose(book, wish)
            : Result.Of(wish);
    }

    private static Result<EntryWish> Named(Book book, EntryWish wish, bool isCash, Notes notes)
    {
        Money size = wish.Amount.IsNegative ? -wish.Amount : wish.Amount;
        if (!isCash)
        {
            return Refused(new EntryFault.NoNotes());
        }

        if (notes.Worth(size.Currency) is var worth && worth != size)
        {
            return Refused(new EntryFault.NotesDiffer(worth, size));
        }

        return wish.Amount.IsNegative && wish.For == MoveEnds.Loose && PotNotes.Of(book).Loose is var there && !there.Covers(notes)
            ? Refused(new EntryFault.NotesNotThere())
            : Result.Of(wish);
    }

    // What is loose is always known by value.
    private static Result<EntryWish> Loose(Book book, EntryWish wish)
    {
        if (wish.Amount.IsPositive)
        {
            return Refused(new EntryFault.NotesNeeded());
        }

        if (book.Ledger.Balances[MoveEnds.Loose] is var has && has < -wish.Amount)
        {
            return Refused(new EntryFault.HasLess(MoveEnds.Loose, null, has, -wish.Amount));
        }

        return NotePull.Exactly(PotNotes.Of(book).Loose, (-wish.Amount).MinorUnits) is { } pull
            ? Result.Of(wish with { Notes = pull.Pulls })
            : Refused(new EntryFault.NotInNotes(-wish.Amount));
    }

    private static Result<EntryWish> Refused(EntryFault fault) => Result.Refused<EntryWish>(fault);

    private static string Reason(EntryWish wish)
    {
        string kind = wish switch
        {
            { Cheque: { } number } => $"cheque {number}",
            { Kind: EntryKind.Refund } => "refund",
            { Kind: EntryKind.Interest } => "interest",
            { Kind: EntryKind.Gift } => "gift",
            { Kind: EntryKind.Transfer } => "transfer",
            { Kind: EntryKind.Fee } => "fee",
            { Kind: EntryKind.Payment } => "payment",
            { Kind: EntryKind.Income } => "income",
            { Kind: EntryKind.Borrowing } => "borrowed",
            _ => wish.Amount.IsPositive ? "found" : "lost",
        };
        return wish.What.Trim() is { Length: > 0 } what ? $"{kind}: {what}" : kind;
    }
}
