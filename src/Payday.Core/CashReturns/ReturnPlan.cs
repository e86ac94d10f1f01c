using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Ledgers;

namespace Payday.Core.CashReturns;

/// <summary>A cash return as it stands: what each pot owes, which notes to pull, and what to swap first.</summary>
/// <param name="Book">The book it was made from.</param>
/// <param name="Draft">What was decided.</param>
/// <param name="Lines">A line a pot that owes, in household order.</param>
public sealed record ReturnPlan(Book Book, ReturnDraft Draft, ImmutableArray<ReturnLine> Lines)
{
    /// <summary>All that goes to the bank.</summary>
    public Money Total => Money.Sum(Going.Select(line => line.Owes), Book.Household.Currency);

    /// <summary>The deposit slip: by value in minor units, the notes that are known.</summary>
    public ImmutableSortedDictionary<long, int> SlipNotes => Going.Aggregate(NoteBag.Empty, (all, line) => NoteBag.Plus(all, line.Notes ?? NoteBag.Empty));

    /// <summary>What goes to the bank in notes that are not known; to be counted at the slip.</summary>
    public Money Unlisted => Total - NoteBag.Worth(SlipNotes, Book.Household.Currency);

    /// <summary>The swaps to make first.</summary>
    public IEnumerable<NoteSwap> Swaps => Going.Where(line => line.Swap is not null).Select(line => line.Swap!);

    private IEnumerable<ReturnLine> Going => Lines.Where(line => line.Goes);

    /// <summary>Plans the return of everything that is owed.</summary>
    public static ReturnPlan Of(Book book, ReturnDraft draft)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(draft);
        return new ReturnPlan(book, draft, ReturnLines.Of(book, draft));
    }

    /// <summary>Writes what goes to the bank.</summary>
    /// <param name="date">The day on which it is there.</param>
    /// <returns>The book afterwards, the return being its last; or why it can't be.</returns>
    public Result<Book> Confirm(LocalDate date)
    {
        string[] faults = [.. Lines.Where(line => line is { Fault: not null }).Select(line => line.Fault!)];
        if (faults.Length > 0)
        {
            return Result.Refused<Book>(string.Join(' ', faults));
        }

        if (!Going.Any())
        {
            return Result.Refused<Book>(Lines.IsEmpty ? "No pot owes any cash." : "Nothing of what is owed goes to the bank this time.");
        }

        if (Going.FirstOrDefault(line => EndCourse.Of(Book.Ledger, LedgerEnd.InCash(Purpose.OwedBack(line.Pot.Id))).LeastFrom(date) < line.Owes) is { } early)
        {
            return Result.Refused<Book>($"{early.Pot.Name} did not owe all of it yet on {PlainDates.DayMonthYear(date)}; give a later day.");
        }

        var writer = new WeekWriter(Book);
        var back = new ReturnWriter(writer, date, null);
        foreach (ReturnLine line in Going)
        {
            back.Settle(line.Pot.Id, line.Owes, line.Notes, LedgerEnd.InCash(Purpose.OwedBack(line.Pot.Id)));
        }

        back.Finish([.. Swaps]);
        return Result.Of(writer.Book);
    }
}
