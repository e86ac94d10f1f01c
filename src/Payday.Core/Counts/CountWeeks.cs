using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Counts;

/// <summary>Which weeks are to be counted.</summary>
public static class CountWeeks
{
    /// <summary>
    /// The weeks that are over and in which a spending pot was filled but not counted since, oldest first. Each can be
    /// counted late, on its last day; a count of a later day covers the weeks before it as well.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="today">The day; the week it lies in is not over.</param>
    public static ImmutableArray<OpenWeek> Open(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        LocalDate current = book.Household.Settings.WeekOf(today);
        (PotId PotId, LocalDate First)[] uncounted =
        [
            .. from pot in book.Household.Pots.Where(FillPart.GoesThroughTheWallet)
               let first = Uncounted(book, pot)
               where first is not null
               select (pot.Id, first.Value),
        ];
        var weeks = ImmutableArray.CreateBuilder<OpenWeek>();
        LocalDate from = uncounted.Length == 0 ? current : uncounted.Min(pot => pot.First);
        for (LocalDate week = book.Household.Settings.WeekOf(from); week < current; week = week.PlusWeeks(1))
        {
            weeks.Add(new OpenWeek(week, [.. uncounted.Where(pot => pot.First <= week.PlusDays(6)).Select(pot => pot.PotId)]));
        }

        return weeks.ToImmutable();
    }

    /// <summary>
    /// The day for which what is in the wallet now is to be counted: today, but yesterday where today is a fill day and
    /// its fills wait.
    /// </summary>
    public static LocalDate DayFor(Book book, LocalDate today) =>
        WalletFills.Waiting(book, today).Any(part => part.Key.Day == today) ? today.PlusDays(-1) : today;

    /// <summary>The count to go on with: the one begun, or a new one of the first week that is over and not counted, or of this week.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">The day; the week it lies in is not over.</param>
    /// <param name="after">Only weeks that end after this day, or null for all.</param>
    public static CountDraft Begun(Book book, LocalDate today, LocalDate? after = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.Draft ?? new CountDraft(
            Open(book, today).FirstOrDefault(week => after is not { } day || week.LastDay > day)?.LastDay ?? DayFor(book, today));
    }

    // The first day that the pot's next count is about: the day after its last one, or its first fill since.
    private static LocalDate? Uncounted(Book book, Pot pot)
    {
        LocalDate? counted = book.Weeks.LastCountOf(pot.Id)?.Date;
        LocalDate? fill = FillPart.Beyond(book, pot, counted)
            .Where(part => part.Marked?.State != FillState.Skipped && (counted is null || part.Key.Day > counted))
            .Select(part => (LocalDate?)part.Key.Day)
            .FirstOrDefault();
        return counted is { } last && book.Ledger.Balances[LedgerEnd.InCash(Purpose.Wallet(pot.Id))].IsPositive ? last.PlusDays(1) : fill;
    }
}

/// <summary>A week that is over and was not counted.</summary>
/// <param name="Week">Its fill day.</param>
/// <param name="PotIds">The pots that are to be counted, in household order.</param>
public sealed record OpenWeek(LocalDate Week, ImmutableArray<PotId> PotIds)
{
    /// <summary>Its last day: the day to count it for.</summary>
    public LocalDate LastDay => Week.PlusDays(6);
}
