using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Counts;

/// <summary>A week-end count as it stands: a row a cash pot that has or had anything since its last count.</summary>
/// <param name="Book">The book it was made from.</param>
/// <param name="Draft">What was entered.</param>
/// <param name="Week">The fill day of the week it closes.</param>
/// <param name="Rows">In household order.</param>
public sealed record CountPlan(Book Book, CountDraft Draft, LocalDate Week, ImmutableArray<CountRow> Rows)
{
    /// <summary>How many pots have been counted.</summary>
    public int Counted => Rows.Count(row => row.Entry is not null);

    /// <summary>What was spent in all that was counted so far.</summary>
    public Money Spent => Money.Sum(Rows.Select(row => row.Spent), Book.Household.Currency);

    /// <summary>What stands in the way of confirming.</summary>
    public IEnumerable<CountFault> Faults => Rows.Where(row => row.Fault is not null).Select(row => row.Fault!);

    /// <summary>Computes a count from what was entered.</summary>
    /// <remarks>
    /// Fills up to the day that were neither marked done nor skipped are taken as done, here and when it is confirmed.
    /// </remarks>
    public static CountPlan Of(Book book, CountDraft draft)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(draft);
        return Of(book, draft, _ => true);
    }

    /// <summary>The same without a row for pots of which nothing was entered: all that confirming it looks at.</summary>
    internal static CountPlan OfEntered(Book book, CountDraft draft) => Of(book, draft, pot => draft.Entries.ContainsKey(pot.Id));

    private static CountPlan Of(Book book, CountDraft draft, Func<Pot, bool> hasRow) => new(
            book,
            draft,
            book.Household.Settings.WeekOf(draft.Date),
            [.. book.Household.Pots
                .Where(pot => pot.Place == Place.Cash && hasRow(pot))
                .Select(pot => CountRules.Row(book, pot, draft.Date, draft.Entries.GetValueOrDefault(pot.Id)))
                .Where(row => row.Entry is not null || (!(row.Since > draft.Date) && !(row.Expected.IsZero && row.Filled.IsZero && row.OwedBack.IsZero && row.Moved.IsZero)))]);

    /// <summary>Confirms what was entered. Pots without an entry stay uncounted; the draft is done with.</summary>
    /// <returns>The book afterwards; or all that stands in its way.</returns>
    public Result<Book> Confirm() => Counted == 0
        ? Result.Refused<Book>(new CountFault.NothingCounted())
        : Faults.Any()
            ? Result.Refused<Book>([.. Faults])
            : CountConfirmation.Of(this);
}
