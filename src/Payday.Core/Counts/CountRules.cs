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
        var taken = ToTakeUp.Of(book, pot, date);
        CountFlows flows = CountFlows.Of(book, taken.Movements, pot, date);
        Money nothing = Money.Zero(book.Household.Currency);
        Money owed = EndCourse.Of(book.Ledger, LedgerEnd.InCash(Purpose.OwedBack(pot.Id))).On(date);
        var row = new CountRow(
            pot,
            book.Weeks.LastCountOf(pot.Id)?.Date,
            flows.Before, flows.Filled, flows.OwedBack, flows.Moved,
            owed, entry, nothing, nothing, nothing, ProposedTarget(book, pot), null)
        {
            ToTakeUp = taken,
        };
        return entry is null ? row : Judged(book, row, entry, date);
    }

    private static CountRow Judged(Book book, CountRow row, CountEntry entry, LocalDate date)
    {
        Money left = entry.Notes is { } notes ? notes.Worth(row.Expected.Currency) - row.StillOwed : entry.Left;
        Money gone = row.Expected - left;
        Money difference = gone.IsNegative ? gone : entry.Missing;
        row = row with { Left = left, MovesOnTo = entry.Then is { } then ? then.MovesOnTo : row.MovesOnTo };
        return (Untimely(book, row, date) ?? Impossible(row, entry, gone) ?? Unclear(book, row, entry, difference)
            ?? TooLate(book, row, gone, date)) is { } fault
            ? row with { Fault = fault }
            : row with { Spent = (gone - difference).ClampToZero(), Difference = difference };
    }

    private static MoveTarget? ProposedTarget(Book book, Pot pot) =>
        pot.MovesOnTo is { } target && target.NameIn(book.Household) is not null && target != MoveTarget.Pot(pot.Id) ? target : null;

    private static CountFault? Untimely(Book book, CountRow row, LocalDate date) => row.Since is { } since && since > date
        ? new CountFault.CountedSince(row.Pot.Name, since)
        : date < book.Household.Start
            ? new CountFault.BeforeStart(date, book.Household.Start)
            : null;

    private static CountFault? Impossible(CountRow row, CountEntry entry, Money gone)
    {
        if (row.Left.IsNegative)
        {
            return entry.Notes is null
                ? new CountFault.LeftBelowZero(row.Pot.Name)
                : new CountFault.NotesBelowOwed(row.Pot.Name, row.StillOwed);
        }

        if (entry.Missing.IsNegative || (entry.Missing.IsPositive && entry.Missing > gone))
        {
            return new CountFault.MissingMoreThanGone(row.Pot.Name, gone.ClampToZero(), entry.Missing);
        }

        return gone.IsNegative && !entry.IsFind ? new CountFault.MoreThanThere(row.Pot.Name, row.Left, row.Expected, row.StillOwed) : null;
    }

    private static CountFault? Unclear(Book book, CountRow row, CountEntry entry, Money difference)
    {
        if (!difference.IsZero && entry.DifferenceName.Trim().Length == 0)
        {
            return new CountFault.Unnamed(row.Pot.Name, difference.IsPositive);
        }

        return row.MovesOnTo switch
        {
            null => null,
            { } self when self == MoveTarget.Pot(row.Pot.Id) => new CountFault.MovesOnToItself(row.Pot.Name),
            { } target when target.NameIn(book.Household) is null => new CountFault.NoSuchTarget(row.Pot.Name, target.IdText),
            _ => null,
        };
    }

    // A late count can't spend what later purchases have put apart already.
    private static CountFault? TooLate(Book book, CountRow row, Money gone, LocalDate date)
    {
        Money most = EndCourse.With(book.Ledger, WalletFills.SpentFrom(row.Pot), row.ToTakeUp.Movements).LeastFrom(date);
        return gone > most && gone.IsPositive
            ? new CountFault.MoreGoneThanCan(row.Pot.Name, most.ClampToZero(), date)
            : null;
    }
}
