using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.Status;

/// <summary>A pot that fills up against its plan: what it would have if each payday closed so far had put in what its rule asked for, and nothing else had touched it.</summary>
/// <param name="Pot">A sinking pot that saves, a ladder or a reserve.</param>
/// <param name="Has">What it has, wherever it is.</param>
/// <param name="Planned">What it would have.</param>
/// <param name="Lacks">What it lacks of all that it is for, zero or more.</param>
/// <param name="Done">The payday on which it is full if it goes on by its rule; null where it is full already, or not within three years or by its date.</param>
/// <remarks>
/// The plan begins with the first thing that happened to the pot, and anew with each purchase that a sinking pot was for. A ladder is held against its steps,
/// whatever was spent of it. Common practice, no source.
/// </remarks>
public sealed record PotPlan(Pot Pot, Money Has, Money Planned, Money Lacks, LocalDate? Done)
{
    /// <summary>How much more it has than planned; below zero where it is behind.</summary>
    public Money Ahead => Has - Planned;

    /// <summary>All pots of a book that have a plan, in the household's order. One that asks what becomes of it has none.</summary>
    /// <param name="book">The book, of which what is closed counts.</param>
    public static ImmutableArray<PotPlan> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (!book.Household.Pots.Any(pot => pot.Kind is not PotKind.Spending))
        {
            return [];
        }

        BankHolidays holidays = book.Household.Holidays;
        var run = new PotRun(book, book.OpenFrom.PlusDays(-1));
        return [.. book.Household.Pots.Select(pot => Of(book, pot, holidays, run)).OfType<PotPlan>()];
    }

    /// <summary>That of one pot; null where it has none.</summary>
    public static PotPlan? Of(Book book, Pot pot)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(pot);
        return Of(book, pot, book.Household.Holidays, new PotRun(book, book.OpenFrom.PlusDays(-1)));
    }

    private static PotPlan? Of(Book book, Pot pot, BankHolidays holidays, PotRun run)
    {
        LocalDate? by = null;
        if (pot.Kind is PotKind.Sinking kind)
        {
            SinkingState state = PotRecord.Sinking(book, pot.Id, kind, holidays, book.OpenFrom);
            if (state.Stage != SinkingStage.Saving)
            {
                return null;
            }

            by = state.By;
        }
        else if (pot.Kind is PotKind.Spending)
        {
            return null;
        }

        Money has = PotMoney.HasNow(book.Ledger.Balances, pot.Id);
        Money outside = PotRun.PutInOutside(book.Ledger.Balances, pot.Id);
        LocalDate last = book.OpenFrom.PlusDays(-1);
        Money lacks = PotRun.Lacks(pot, by, has, outside, last);
        return new PotPlan(pot, has, Replayed(book, pot, by, holidays), lacks, lacks.IsZero ? null : run.On(pot, by, has, outside).Full);
    }

    private static Money Replayed(Book book, Pot pot, LocalDate? by, BankHolidays holidays)
    {
        Money nothing = Money.Zero(book.Household.Currency);
        LocalDate? bought = by is null ? null : PotRecord.Spendings(book, pot.Id).Where(spending => spending.Amount.IsPositive).Select(spending => (LocalDate?)spending.Date).Max();
        LedgerEnd[] ends = [.. Ends(pot.Id)];
        Movement[] own = [.. ends.SelectMany(book.Ledger.Of).DistinctBy(movement => movement.Number)];
        if (own.Length == 0)
        {
            return nothing;
        }

        // After a purchase the plan goes on from what it left; else from what the household began with.
        LocalDate from = bought ?? own.Min(movement => movement.Date);
        Money planned = Money.Sum(
            own.Where(movement => bought is { } day ? movement.Date <= day : movement.From == LedgerEnd.Opening)
                .Select(movement => (ends.Contains(movement.To) ? movement.Amount : nothing) - (ends.Contains(movement.From) ? movement.Amount : nothing)),
            nothing.Currency);
        ImmutableArray<LocalDate> before = by is { } until
            ? [.. book.Household.Paydays.Between(from, until.PlusDays(-1)).Select(payday => payday.Date)]
            : [];
        foreach (LocalDate payday in book.Closed.Select(closed => closed.Payday).Where(payday => bought is null ? payday >= from : payday > from))
        {
            planned += PotRun.FillOn(book.Household, pot, payday, planned, nothing, by is { } date ? (date, before.Count(day => day >= payday)) : null);
        }

        return pot.Kind is PotKind.Ladder ? planned - PotRun.PutInOutside(book.Ledger.Balances, pot.Id) : planned;
    }

    private static IEnumerable<LedgerEnd> Ends(PotId pot) =>
    [
        LedgerEnd.InAccount(Purpose.Pot(pot)), LedgerEnd.InAccount(Purpose.KeptBack(pot)), LedgerEnd.InCash(Purpose.Pot(pot)),
        LedgerEnd.InCash(Purpose.Wallet(pot)), LedgerEnd.InCash(Purpose.KeptBack(pot)),
    ];
}
