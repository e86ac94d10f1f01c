using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Undo;

namespace Payday.Core.Moves;

/// <summary>Money taken from one purpose to another, at any time (design, rule 12).</summary>
/// <remarks>
/// Within a place it is one movement. From a cash pot to the account the cash is owed back until a cash return takes it to the
/// bank, so that nothing in the account is ever promised from cash still at home. From the account to a cash pot it is kept
/// back for the pot, and the next withdrawal brings it; or it is fetched on that day, where the notes are named.
/// </remarks>
public static class Moving
{
    /// <summary>How a move would go; it doesn't have to be one that can be entered.</summary>
    public static MoveWay WayOf(MoveEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return (IsCash(entry.From), IsCash(entry.To)) switch
        {
            (false, false) => MoveWay.InAccount,
            (true, true) => MoveWay.InCash,
            (true, false) => entry.IsAtBank || entry.From == MoveEnds.Loose ? MoveWay.Deposited : MoveWay.OwedBack,
            (false, true) => entry.IsAtBank || entry.Notes is not null || entry.To == MoveEnds.Loose ? MoveWay.Fetched : MoveWay.NextWithdrawal,
        };
    }

    /// <summary>Enters a move.</summary>
    /// <returns>The book afterwards, the move being its last; or why it can't be entered.</returns>
    public static Result<Book> Enter(Book book, MoveEntry entry)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(entry);
        Result<MoveEntry> noted = Checked(book, entry);
        if (!noted.Ok)
        {
            return Result.Refused<Book>(noted.Faults);
        }

        entry = noted.Value;
        var writer = new WeekWriter(book);
        Pot? gives = MoveEnds.CashPot(book, entry.From);
        TakenUp taken = gives is not null ? WalletFills.TakeUp(writer, gives, entry.Date) : TakenUp.Nothing;
        long first = writer.Next;
        Money has = MoveEnds.Has(writer.Book, entry.From);
        if (has < entry.Amount)
        {
            return Result.Refused<Book>(new MoveFault.HasLess(entry.From, LedgerEnds.NameIn(book.Household, entry.From), has, entry.Amount));
        }

        if (WayOf(entry) == MoveWay.Fetched && CashRoom.Of(book) is { } room && room < entry.Amount)
        {
            return Result.Refused<Book>(new MoveFault.AccountHasLess(room, entry.Amount));
        }

        if (gives is not null)
        {
            PotCash.TakeOut(writer, gives, Goal(book, entry), entry.Amount, entry.Date, Reason(entry));
        }
        else
        {
            // As with bills: on its day where the money was there by then, else on the first day on which it was.
            LocalDate day = EndCourse.Of(book.Ledger, entry.From).DayFor(entry.Amount, entry.Date) ?? entry.Date;
            writer.Move(day, entry.From, Goal(book, entry), entry.Amount, Reason(entry));
        }

        writer.Record(weeks => weeks with
        {
            Moves = weeks.Moves.Add(new Move(
                weeks.Moves.Length + 1, entry.Date, entry.From, entry.To, entry.Amount, entry.Why.Trim(), entry.Notes, first, writer.Last)
            {
                TakenUp = taken,
            }),
        });
        return Result.Of(writer.Book);
    }

    /// <summary>Undoes a move: all is as if it had never been entered.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">The move.</param>
    /// <param name="date">The day on which it is undone.</param>
    /// <returns>The book afterwards; or why it can't be undone.</returns>
    public static Result<Book> Undo(Book book, long number, LocalDate date) => new MoveUndo().Undo(book, number, date);

    /// <summary>What is in the way of undoing a move; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, long number) => new MoveUndo().InTheWay(book, number);

    private static Result<MoveEntry> Checked(Book book, MoveEntry entry)
    {
        if (!entry.Amount.IsPositive)
        {
            return Result.Refused<MoveEntry>(new MoveFault.NotAboveZero());
        }

        if (entry.From == entry.To)
        {
            return Result.Refused<MoveEntry>(new MoveFault.SameEnd());
        }

        if (!MoveEnds.From(book).Contains(entry.From))
        {
            return Result.Refused<MoveEntry>(new MoveFault.NotFrom(entry.From));
        }

        if (!MoveEnds.To(book).Contains(entry.To))
        {
            return Result.Refused<MoveEntry>(new MoveFault.NotTo(entry.To));
        }

        if (entry.Date < book.Household.Start)
        {
            return Result.Refused<MoveEntry>(new MoveFault.BeforeStart(entry.Date, book.Household.Start));
        }

        if (entry.To is LedgerEnd.Owed owed && book.Ledger.Balances.OwedOn(owed.DebtId) is var rest && rest < entry.Amount)
        {
            return Result.Refused<MoveEntry>(new MoveFault.OwesLess(LedgerEnds.NameIn(book.Household, owed)!, rest.ClampToZero(), entry.Amount));
        }

        return MoveNotes.Of(book, entry);
    }

    // Where the money itself goes now, which is on the way to the purpose where it changes places.
    private static LedgerEnd Goal(Book book, MoveEntry entry) => WayOf(entry) switch
    {
        MoveWay.OwedBack => LedgerEnd.InCash(Purpose.OwedBack(((LedgerEnd.At)entry.From).Purpose.PotId!.Value)),
        MoveWay.NextWithdrawal => LedgerEnd.InAccount(Purpose.KeptBack(((LedgerEnd.At)entry.To).Purpose.PotId!.Value)),
        MoveWay.InCash or MoveWay.Fetched when MoveEnds.CashPot(book, entry.To) is { } pot => WalletFills.SpentFrom(pot),
        _ => entry.To,
    };

    private static bool IsCash(LedgerEnd end) => end is LedgerEnd.At { Place: Place.Cash };

    private static string Reason(MoveEntry entry) => entry.Why.Trim() is { Length: > 0 } why ? $"moved: {why}" : "moved";
}
