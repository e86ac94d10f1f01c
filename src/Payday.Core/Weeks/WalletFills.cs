using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.Weeks;

/// <summary>Filling the wallet, week by week.</summary>
public static class WalletFills
{
    /// <summary>The parts that wait on a day: of its week, due by then, and neither done nor skipped; by day.</summary>
    /// <remarks>
    /// Everything that speaks of fills to make asks here. Those of a week that is over don't wait: its count takes them as
    /// done, unless they are marked as skipped before; see <see cref="IsOver"/>.
    /// </remarks>
    public static ImmutableArray<FillPart> Waiting(Book book, LocalDate day) =>
        [.. FillPart.NotDone(book).Where(part => part.Marked is null && part.Key.Day <= day && !IsOver(book.Household, part, day))];

    /// <summary>Whether the week that a part was for was over before a day.</summary>
    public static bool IsOver(Household household, FillPart part, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Key.Day < CountWeeks.WeekOf(household, day);
    }

    /// <summary>Marks every fill that waits as done.</summary>
    /// <param name="book">The book.</param>
    /// <param name="day">The day up to which fills count as waiting.</param>
    /// <returns>The book afterwards, the same where nothing waits; or why one of them can't be done.</returns>
    public static Read<Book> FillAll(Book book, LocalDate day) => Waiting(book, day)
        .Aggregate(Read.Of(book), (filled, part) => filled.Ok ? Mark(filled.Value, part.Key, FillState.Done, DoneOn(part.Key, day)) : filled);

    /// <summary>The day of a fill that is marked today: its own, so that the week it is for can be counted; today where that has yet to come.</summary>
    public static LocalDate DoneOn(FillKey key, LocalDate today) => key.Day < today ? key.Day : today;

    /// <summary>Marks a fill as done or as skipped.</summary>
    /// <param name="book">The book.</param>
    /// <param name="key">Which fill; see <see cref="FillPart.Of(Book)"/>.</param>
    /// <param name="state">Done: the cash is in the wallet. Skipped: it stays at home, where it can still be filled later.</param>
    /// <param name="date">The day on which that happened.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Read<Book> Mark(Book book, FillKey key, FillState state, LocalDate date)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.Household.Pots.FirstOrDefault(pot => pot.Id == key.PotId) is not { } pot
            || !FillPart.GoesThroughTheWallet(pot)
            || FillPart.Of(book, pot).FirstOrDefault(part => part.Key == key) is not { } part)
        {
            return Read.Refused<Book>($"No closed payday has a fill of {PlainDates.DayMonthYear(key.Day)} for that pot.");
        }

        if (part.Marked?.State == state)
        {
            return Read.Refused<Book>($"The fill of {pot.Name} for {PlainDates.DayMonthYear(key.Day)} is marked {(state == FillState.Done ? "done" : "skipped")} already.");
        }

        var writer = new WeekWriter(book);
        if (part.Marked is { State: FillState.Done } done && TakeOut(writer, pot, done) is { } fault)
        {
            return Read.Refused<Book>(fault);
        }

        if (state == FillState.Done)
        {
            Fill(writer, part, date);
        }
        else
        {
            Record(writer, new WalletFill(key, FillState.Skipped, date, Money.Zero(part.Amount.Currency), null));
        }

        return Read.Of(writer.Book);
    }

    /// <summary>
    /// Takes what should be in a pot's wallet by a day as being there: fills that were not marked, and whatever its
    /// envelope holds that waits for no fill, such as what it began with.
    /// </summary>
    internal static void TakeUp(WeekWriter writer, Pot pot, LocalDate date)
    {
        if (!FillPart.GoesThroughTheWallet(pot))
        {
            // A pot that was for spending once may have left cash in the wallet.
            writer.Move(date, Wallet(pot), AtHome(pot), writer[Wallet(pot)], "no longer spent from the wallet");
            return;
        }

        foreach (FillPart part in FillPart.NotDone(writer.Book, pot).Where(part => part.Marked is null && part.Key.Day <= date))
        {
            Fill(writer, part, part.Key.Day);
        }

        Money waiting = Money.Sum(
            FillPart.NotDone(writer.Book, pot)
                .Where(part => part.Key.Payday <= date)
                .Select(part => part.Amount),
            writer.Book.Household.Currency);
        Money rest = EndCourse.Of(writer.Book.Ledger, AtHome(pot)).LeastFrom(date) - waiting;
        writer.Move(date, AtHome(pot), Wallet(pot), rest.ClampToZero(), "in the wallet");
    }

    private static void Fill(WeekWriter writer, FillPart part, LocalDate date)
    {
        // A week that was counted is over: what comes later is in the next count.
        LocalDate day = writer.Book.Weeks.LastCountOf(part.Pot.Id)?.Date is { } counted && counted > date ? counted : date;
        Money amount = Money.Min(part.Amount, EndCourse.Of(writer.Book.Ledger, AtHome(part.Pot)).LeastFrom(day).ClampToZero());
        long? movement = writer.Move(day, AtHome(part.Pot), Wallet(part.Pot), amount, "week's fill");
        Record(writer, new WalletFill(part.Key, FillState.Done, day, amount, movement));
    }

    private static string? TakeOut(WeekWriter writer, Pot pot, WalletFill done)
    {
        NumberStyle style = writer.Book.Household.Settings.Numbers;
        if (done.Movement is not { } movement)
        {
            return null;
        }

        if (writer.Book.Weeks.LastCountOf(pot.Id) is { } count && count.Date >= done.Date && count.LastMovement >= movement)
        {
            return $"{pot.Name} was counted on {PlainDates.DayMonthYear(count.Date)} with this fill in it, so it can't be skipped any more.";
        }

        if (EndCourse.Of(writer.Book.Ledger, Wallet(pot)).LeastFrom(done.Date) < done.Amount)
        {
            return $"{pot.Name} has less than {done.Amount.ToString(style)} in the wallet by now, so this fill can't be skipped any more.";
        }

        writer.Add(writer.Book.Ledger.Reverse([movement], done.Date, "fill skipped").Value);
        return null;
    }

    private static void Record(WeekWriter writer, WalletFill fill) => writer.Record(weeks => weeks with
    {
        Fills = weeks.Fills.RemoveAll(known => known.Key == fill.Key).Add(fill),
    });

    internal static LedgerEnd AtHome(Pot pot) => LedgerEnd.InCash(Job.Pot(pot.Id));

    internal static LedgerEnd Wallet(Pot pot) => LedgerEnd.InCash(Job.Wallet(pot.Id));
}
