using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.ClosedPaydays;

/// <summary>Undoing one movement by its reverse.</summary>
public static class Undoing
{
    /// <summary>The longest reason, in characters.</summary>
    public const int LongestReason = 60;

    /// <summary>Undoes a movement.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">The movement's number.</param>
    /// <param name="today">The day on which it is undone.</param>
    /// <param name="reason">Why, in a few words.</param>
    /// <returns>The book afterwards, the reverse its last movement; or what stands in its way.</returns>
    /// <remarks>
    /// Money that had a purpose is left to place again, and the next payday carries it over. What moves notes isn't undone
    /// alone: the notes of the pots would no longer agree with their amounts.
    /// </remarks>
    public static Result<Book> Of(Book book, long number, LocalDate today, string reason)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(reason);
        if (reason.Trim().Length is 0 or > LongestReason)
        {
            return Result.Refused<Book>(new UndoingFault.ReasonLength(LongestReason));
        }

        Result<ImmutableArray<Movement>> reverses = book.Ledger.Reverse([number], today, reason.Trim());
        if (!reverses.Ok)
        {
            return Result.Refused<Book>(reverses.Faults);
        }

        if (InTheWay(book, number) is { } owner)
        {
            return Result.Refused<Book>(owner);
        }

        Movement undone = reverses.Value[0];
        if (IsCash(undone.From) || IsCash(undone.To))
        {
            return Result.Refused<Book>(new UndoingFault.MovesNotes(number));
        }

        if (undone.From is LedgerEnd.Outside { Kind: OutsideKind.Opening } || undone.To is LedgerEnd.Outside { Kind: OutsideKind.Opening })
        {
            return Result.Refused<Book>(new UndoingFault.IsOpening(number));
        }

        Movement movement = book.Ledger.Movements[(int)number - 1];
        if (!LedgerCheck.MayBeNegative(undone.From) && EndCourse.Without(book.Ledger, undone.From, [movement]).LeastFrom(movement.Date) is { IsNegative: true } rest)
        {
            return Result.Refused<Book>(new UndoingFault.GoneOn(rest));
        }

        Book after = book with { Ledger = book.Ledger.Add([undone]) };
        return Result.Of(WithOpenDue(book, undone) is { } opened
            ? after with { Closed = [.. book.Closed.Select(closed => closed.Payday == opened.Payday ? opened : closed)] }
            : after);
    }

    /// <summary>The closed payday that had paid a bill or a minimum which an undoing left to be paid again; null for none.</summary>
    /// <param name="before">The book before the undoing.</param>
    /// <param name="after">The book after it.</param>
    public static ClosedPayday? OpenedAgain(Book before, Book after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return after.Closed.Except(before.Closed).FirstOrDefault(closed => before.Closed.Any(was => was.Payday == closed.Payday && PaidIn(was) > PaidIn(closed)));
    }

    /// <summary>The record that a movement belongs to, and that is taken back in its stead, or the reconciliation that has seen it; null where it can be undone alone.</summary>
    public static Obstacle? InTheWay(Book book, long number) => BookEntry.Of(book, number) is { } whole
        ? new Obstacle.PartOf(number, whole)
        : AccountLines.Seen(book, [number]) is { } reconciled
            ? new Obstacle.AtBank(new BookEntry.Movement(number), BookEntry.Of(reconciled))
            : null;

    // A payment that is undone leaves its due open, whichever payday paid it: the next one takes it up again.
    private static ClosedPayday? WithOpenDue(Book book, Movement undone)
    {
        if (book.Closed.LastOrDefault(payday => payday.FirstMovement <= undone.Reverses && undone.Reverses <= payday.LastMovement) is not { } closed)
        {
            return null;
        }

        int before = book.Ledger.Standing.Count(movement =>
            movement.Number >= closed.FirstMovement && movement.Number < undone.Reverses && (movement.From, movement.To) == (undone.To, undone.From));
        return undone.From switch
        {
            LedgerEnd.Outside { BillId: { } bill } when PaidAt(closed.Dues, DueOwner.Of(bill), before) is { } due =>
                closed with { Dues = closed.Dues.Replace(due, due with { Paid = false }) },
            LedgerEnd.Owed { DebtId: var debt } when (closed.Charged is null || undone.To is LedgerEnd.At { Purpose.Kind: PurposeKind.ForDebt }) && closed.Minimums is { } minimums && PaidAt(minimums, DueOwner.Of(debt), before) is { } due =>
                closed with { Minimums = minimums.Replace(due, due with { Paid = false }) },

            // What was bought with a card waits again, beside whatever minimum comes next.
            LedgerEnd.Owed { DebtId: var debt } when undone.To is LedgerEnd.At { Purpose.Kind: PurposeKind.ForCard } && closed.Minimums is { } minimums
                && minimums.Where(due => due.Key.Debt == debt && due.Bought is not null).ElementAtOrDefault(before) is { } due =>
                closed with { Minimums = minimums.Replace(due, due with { Bought = null }) },
            _ => null,
        };
    }

    // Payments are written in the order of their dues, and surplus after them; a due of zero moves nothing.
    private static ClosedDue? PaidAt(ImmutableArray<ClosedDue> dues, DueOwner owner, int at) =>
        dues.Where(due => due.Paid && due.Key.Owner == owner && due.Amount.IsPositive).ElementAtOrDefault(at);

    private static int PaidIn(ClosedPayday closed) => closed.Dues.Concat(closed.Minimums ?? []).Count(due => due.Paid);

    private static bool IsCash(LedgerEnd end) => end is LedgerEnd.At { Place: Place.Cash };
}
