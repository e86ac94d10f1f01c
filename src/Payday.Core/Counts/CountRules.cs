using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Counts;

/// <summary>What should be left of a pot, and what an entry says of it.</summary>
internal static class CountRules
{
    public static CountRow Row(Book book, Pot pot, LocalDate date, CountEntry? entry)
    {
        var writer = new WeekWriter(book);
        WalletFills.TakeUp(writer, pot, date);
        CountFlows flows = CountFlows.Of(writer.Book, pot, date);
        Money nothing = Money.Zero(book.Household.Currency);
        Money owed = EndCourse.Of(book.Ledger, LedgerEnd.InCash(Purpose.OwedBack(pot.Id))).On(date);
        var row = new CountRow(
            pot,
            book.Weeks.LastCountOf(pot.Id)?.Date,
            flows.Before, flows.Filled, flows.OwedBack, flows.Moved,
            owed, entry, nothing, nothing, nothing, ProposedTarget(book, pot), null);
        return entry is null ? row : Judged(writer.Book, row, entry, date);
    }

    private static CountRow Judged(Book book, CountRow row, CountEntry entry, LocalDate date)
    {
        Money left = entry.Notes is { } notes ? NoteBag.Worth(notes, row.Expected.Currency) - row.StillOwed : entry.Left;
        Money gone = row.Expected - left;
        Money difference = gone.IsNegative ? gone : entry.Missing;
        row = row with { Left = left, MovesOnTo = entry.Then is { } then ? then.MovesOnTo : row.MovesOnTo };
        return (Untimely(book, row, date) ?? Impossible(book, row, entry, gone) ?? Unclear(book, row, entry, difference)
            ?? TooLate(book, row, gone, date)) is { } fault
            ? row with { Fault = fault }
            : row with { Spent = (gone - difference).ClampToZero(), Difference = difference };
    }

    private static MoveTarget? ProposedTarget(Book book, Pot pot) =>
        pot.MovesOnTo is { } target && target.NameIn(book.Household) is not null && target != MoveTarget.Pot(pot.Id) ? target : null;

    private static string? Untimely(Book book, CountRow row, LocalDate date) => row.Since is { } since && since > date
        ? $"{row.Pot.Name} was counted on {PlainDates.DayMonthYear(since)}; count it for that day or a later one."
        : date < book.Household.Start
            ? $"{PlainDates.DayMonthYear(date)} is before the household began, {PlainDates.DayMonthYear(book.Household.Start)}."
            : null;

    private static string? Impossible(Book book, CountRow row, CountEntry entry, Money gone)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        if (row.Left.IsNegative)
        {
            return entry.Notes is null
                ? $"What is left of {row.Pot.Name} can't be below zero."
                : $"The notes of {row.Pot.Name} come to less than the {row.StillOwed.ToString(style)} it owes back; count those among them, or type what is left without them.";
        }

        if (entry.Missing.IsNegative || (entry.Missing.IsPositive && entry.Missing > gone))
        {
            return $"Only {gone.ClampToZero().ToString(style)} of {row.Pot.Name} is gone, so {entry.Missing.ToString(style)} can't be missing.";
        }

        return gone.IsNegative && !entry.IsFind ? MoreThanThere(row, style) : null;
    }

    // The likely reasons come from what is known of the pot, so that the person looks where it may be found.
    private static string MoreThanThere(CountRow row, NumberStyle style)
    {
        string reasons = row.StillOwed.IsPositive
            ? $"a fill wasn't recorded, or the {row.StillOwed.ToString(style)} it owes back is still among it"
            : "a fill wasn't recorded, or was marked skipped";
        return $"{row.Left.ToString(style)} is more than the {row.Expected.ToString(style)} that {row.Pot.Name} should have: perhaps {reasons}; mend that, or name it as found.";
    }

    private static string? Unclear(Book book, CountRow row, CountEntry entry, Money difference)
    {
        if (!difference.IsZero && entry.DifferenceName.Trim().Length == 0)
        {
            return $"Name what is {(difference.IsPositive ? "missing from" : "found in")} {row.Pot.Name}, so that it can be cleared up later.";
        }

        return row.MovesOnTo switch
        {
            null => null,
            { } self when self == MoveTarget.Pot(row.Pot.Id) => $"{row.Pot.Name} can't move on to itself; say where else, or that it stays.",
            { } target when target.NameIn(book.Household) is null => $"What is left of {row.Pot.Name} can't move on to '{target.IdText}', which there isn't.",
            _ => null,
        };
    }

    // A late count can't spend what later purchases have put apart already.
    private static string? TooLate(Book book, CountRow row, Money gone, LocalDate date)
    {
        Money most = EndCourse.Of(book.Ledger, WalletFills.SpentFrom(row.Pot)).LeastFrom(date);
        NumberStyle style = book.Household.Settings.Numbers;
        return gone > most && gone.IsPositive
            ? $"At most {most.ClampToZero().ToString(style)} of {row.Pot.Name} can be gone by {PlainDates.DayMonthYear(date)}, for the rest was owed back or moved since; look at its card purchases."
            : null;
    }
}
