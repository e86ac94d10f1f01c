using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Undo;

namespace Payday.Core.Fills;

/// <summary>Filling the wallet, week by week.</summary>
public static class WalletFills
{
    /// <summary>What the movement of a fill says.</summary>
    internal const string Reason = "week's fill";

    /// <summary>The parts that wait on a day: of its week, due by then, and neither done nor skipped; by day. None where nothing of it is left at home.</summary>
    /// <remarks>
    /// Everything that speaks of fills to make asks here. Those of a week that is over don't wait: its count takes them as
    /// done, unless they are marked as skipped before; see <see cref="IsOver"/>. Those that only a card purchase or the like
    /// took as done still wait (<see cref="AssumedFills"/>): it says nothing of the wallet.
    /// </remarks>
    public static ImmutableArray<FillPart> Waiting(Book book, LocalDate day) =>
        [.. FillPart.NotDone(book).Where(part => part.Marked is null)
            .Concat(AssumedFills.Of(book))
            .Where(part => part.Key.Day <= day && part.Moves.IsPositive && !IsOver(book.Household, part, day))
            .OrderBy(part => part.Key.Day).ThenBy(part => book.Household.Pots.IndexOf(part.Pot))];

    /// <summary>Whether the week that a part was for was over before a day.</summary>
    public static bool IsOver(Household household, FillPart part, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Key.Day < household.Settings.WeekOf(day);
    }

    /// <summary>Marks every fill that waits as done.</summary>
    /// <param name="book">The book.</param>
    /// <param name="day">The day up to which fills count as waiting.</param>
    /// <returns>The book afterwards, the same where nothing waits; or why one of them can't be done.</returns>
    public static Result<Book> FillAll(Book book, LocalDate day) => Waiting(book, day)
        .Aggregate(Result.Of(book), (filled, part) => filled.Ok ? Mark(filled.Value, part.Key, FillState.Done, DoneOn(part.Key, day)) : filled);

    /// <summary>The day of a fill that is marked today: its own, so that the week it is for can be counted; today where that has yet to come.</summary>
    public static LocalDate DoneOn(FillKey key, LocalDate today) => key.Day < today ? key.Day : today;

    /// <summary>Marks a fill as done or as skipped.</summary>
    /// <param name="book">The book.</param>
    /// <param name="key">Which fill; see <see cref="FillPart.Of(Book)"/>.</param>
    /// <param name="state">Done: the cash is in the wallet. Skipped: it stays at home, where it can still be filled later.</param>
    /// <param name="date">The day on which that happened.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Result<Book> Mark(Book book, FillKey key, FillState state, LocalDate date)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Household.Pots.FirstOrDefault(pot => pot.Id == key.PotId) is not { } pot
            || !FillPart.GoesThroughTheWallet(pot)
            || FillPart.Of(book, pot).FirstOrDefault(part => part.Key == key) is not { } part)
        {
            return Result.Refused<Book>(new FillFault.NoSuchFill(key.Day));
        }

        if (state == FillState.Done && AssumedFills.Confirmed(book, part) is { } confirmed)
        {
            return Result.Of(confirmed);
        }

        if (part.Marked?.State == state)
        {
            return Result.Refused<Book>(new FillFault.MarkedAlready(pot.Name, key.Day, state));
        }

        var writer = new WeekWriter(book);
        if (part.Marked is { State: FillState.Done } done)
        {
            if (Taking(book, done).InTheWay() is { } obstacle)
            {
                return Result.Refused<Book>(obstacle);
            }

            if (done.Movement is { } movement)
            {
                writer.Add(book.Ledger.Reverse([movement], date, "fill skipped").Value);
            }
        }

        if (state == FillState.Done)
        {
            Fill(writer, part, date);
        }
        else
        {
            Record(writer, new WalletFill(key, FillState.Skipped, date, Money.Zero(part.Amount.Currency), null) { Before = part.Marked is { } before ? before with { Before = null } : null });
        }

        return Result.Of(writer.Book);
    }

    /// <summary>What can be marked on a day: what waits, and what was marked of the last payday or since it was closed; of a week that is over what was taken as done is done.</summary>
    public static ImmutableArray<FillPart> ToMark(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ClosedPayday? last = book.LastClosed;
        return
        [
            .. FillPart.Of(book)
                .Where(part => part.Marked is null || part.Key.Payday == last?.Payday || part.Marked.Movement > last?.LastMovement)
                .Select(part => part.IsAssumed && IsOver(book.Household, part, today) ? part with { IsAssumed = false, Moves = part.Marked!.Amount } : part),
        ];
    }

    /// <summary>The fills that were marked for the last day that has any, of all pots or of some, in household order.</summary>
    /// <param name="book">The book.</param>
    /// <param name="potIds">The pots, or null for all.</param>
    public static ImmutableArray<WalletFill> LastMarked(Book book, IReadOnlySet<PotId>? potIds = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        WalletFill[] marked = [.. book.Weeks.Fills.Where(fill => potIds?.Contains(fill.Key.PotId) != false)];
        List<PotId> order = [.. book.Household.Pots.Select(pot => pot.Id)];
        return [.. marked.Where(fill => fill.Key.Day == marked.Max(other => other.Key.Day)).OrderBy(fill => order.IndexOf(fill.Key.PotId))];
    }

    /// <summary>Takes a mark back: the fill is as it was before it, waiting or marked otherwise.</summary>
    /// <param name="book">The book.</param>
    /// <param name="key">Which fill.</param>
    /// <param name="date">The day on which it is taken back.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Result<Book> Unmark(Book book, FillKey key, LocalDate date)
    {
        if (AssumedFills.Reopened(book, key) is { } reopened)
        {
            return Result.Of(reopened);
        }

        if (InTheWay(book, key) is { } obstacle)
        {
            return Result.Refused<Book>(obstacle);
        }

        WalletFill mark = book.Weeks.Fills.Single(fill => fill.Key == key);
        Result<Book> back = Taking(book, mark).Done(date, "fill taken back", weeks => weeks with { Fills = weeks.Fills.RemoveAll(fill => fill.Key == key) });
        if (!back.Ok || mark.IsConfirmed || mark.Before is not { } before)
        {
            return back;
        }

        var writer = new WeekWriter(back.Value);
        Pot pot = book.Household.Pots.Single(pot => pot.Id == key.PotId);
        if (EndCourse.Of(back.Value.Ledger, AtHome(pot)).LeastFrom(before.Date) < before.Amount)
        {
            return Result.Refused<Book>(new FillFault.TooLittleAtHome(pot.Name, before.Amount));
        }

        Record(writer, before with { Movement = writer.Move(before.Date, AtHome(pot), Wallet(pot), before.Amount, Reason) });
        return Result.Of(writer.Book);
    }

    /// <summary>What is in the way of taking a mark back; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, FillKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Weeks.Fills.FirstOrDefault(fill => fill.Key == key) is not { } mark || book.Household.Pots.All(pot => pot.Id != key.PotId))
        {
            return new Obstacle.NotMarked(BookEntry.Of(book, key));
        }

        if (AssumedFills.Reopened(book, key) is not null)
        {
            return null;
        }

        // What a count left out because it was skipped, it has seen too.
        return mark.State == FillState.Skipped && book.Weeks.LastCountOf(key.PotId) is { } count && count.Date >= key.Day
            ? TakingBack.Seen(book, count, BookEntry.Of(book, key))
            : Taking(book, mark).InTheWay();
    }

    private static TakingBack Taking(Book book, WalletFill mark)
    {
        var taking = new TakingBack(book, BookEntry.Of(book, mark.Key));
        if (mark.Movement is { } movement)
        {
            taking.Add(movement);
        }

        return taking;
    }

    /// <summary>Takes what should be in a pot's wallet by a day as being there, see <see cref="ToTakeUp"/>.</summary>
    /// <returns>What that was.</returns>
    internal static TakenUp TakeUp(WeekWriter writer, Pot pot, LocalDate date) => ToTakeUp.Of(writer.Book, pot, date).Write(writer);

    /// <summary>The day on which a fill that is said to be done on a day moves its part.</summary>
    /// <param name="book">The book.</param>
    /// <param name="part">The part.</param>
    /// <param name="date">The day.</param>
    /// <param name="home">What the pot has at home.</param>
    internal static LocalDate DayOf(Book book, FillPart part, LocalDate date, EndCourse home)
    {
        // A week that was counted is over: what comes later is in the next count. And no cash is there before its payday.
        LocalDate day = Later(Later(date, part.Key.Payday), book.Weeks.LastCountOf(part.Pot.Id)?.Date ?? date);
        return home.DayFor(part.Moves, day) ?? day;
    }

    /// <summary>The mark of a fill that is done.</summary>
    /// <param name="part">The part.</param>
    /// <param name="day">The day on which it moved.</param>
    /// <param name="movement">The number of its movement, or null where nothing moved.</param>
    internal static WalletFill Filled(FillPart part, LocalDate day, long? movement) =>
        new(part.Key, FillState.Done, day, part.Moves, movement) { Before = part.Marked is { } before ? before with { Before = null } : null };

    private static void Fill(WeekWriter writer, FillPart part, LocalDate date)
    {
        LocalDate day = DayOf(writer.Book, part, date, EndCourse.Of(writer.Book.Ledger, AtHome(part.Pot)));
        Record(writer, Filled(part, day, writer.Move(day, AtHome(part.Pot), Wallet(part.Pot), part.Moves, Reason)));
    }

    private static LocalDate Later(LocalDate left, LocalDate right) => left > right ? left : right;

    private static void Record(WeekWriter writer, WalletFill fill) => writer.Record(weeks => weeks.With([fill]));

    /// <summary>Where a cash pot is spent from: the wallet, or home for what doesn't go through it. A count of the pot is about this.</summary>
    internal static LedgerEnd SpentFrom(Pot pot) => FillPart.GoesThroughTheWallet(pot) ? Wallet(pot) : AtHome(pot);

    internal static LedgerEnd AtHome(Pot pot) => LedgerEnd.InCash(Purpose.Pot(pot.Id));

    internal static LedgerEnd Wallet(Pot pot) => LedgerEnd.InCash(Purpose.Wallet(pot.Id));
}
