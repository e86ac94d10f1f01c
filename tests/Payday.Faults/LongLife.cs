using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Store;
using Payday.Store.HouseholdFiles;

namespace Payday.Faults;

/// <summary>Years of a household that is paid every week, each change stored as the program would store it.</summary>
internal sealed class LongLife
{
    // With what the routine and the counts write, a little over 128 movements a week: 200,000 in 30 years.
    private const int PurchasesAWeek = 66;

    private readonly BookStore store;
    private readonly Random random = new(1);
    private Book book;

    private LongLife(BookStore store, Book book)
    {
        this.store = store;
        this.book = book;
    }

    /// <summary>Lives so many weeks in an empty store.</summary>
    /// <param name="store">The store.</param>
    /// <param name="weeks">How many paydays are closed.</param>
    /// <param name="start">The first of them; null for the day on which the demo household begins.</param>
    public static Book Live(BookStore store, int weeks, LocalDate? start = null)
    {
        Household demo = HouseholdFile.Read(File.ReadAllText(Life.Demo())).Value!;
        LocalDate anchor = start ?? demo.Start;
        Household household = demo with
        {
            Start = anchor,
            Sources = [demo.Sources[0] with { Schedule = new Schedule.EveryWeeks(1, anchor), Expected = Money.FromMinorUnits(160_000, demo.Currency) }],
        };
        Book begun = Book.Begin(household);
        store.Save(null, begun);
        var life = new LongLife(store, begun);
        for (int week = 0; week < weeks; week++)
        {
            life.Week();
        }

        return life.book;
    }

    private void Week()
    {
        RoutinePlan plan = Routine.Plan(book, Routine.Begun(book, null).Value!).Value!;
        Book closed = Closing.Of(plan).Value!;
        store.Save(book, closed);
        book = closed;
        LocalDate payday = plan.Period.First;
        Take(WalletFills.FillAll(book, payday));
        Book after = book;
        for (int i = 0; i < PurchasesAWeek; i++)
        {
            var pot = book.Household.Pots[random.Next(book.Household.Pots.Length)];
            var amount = Money.FromMinorUnits(random.Next(100, 400), book.Household.Currency);
            var entry = new PurchaseEntry(payday.PlusDays(random.Next(1, 6)), random.Next(2) == 0 ? pot.Id : null, amount, $"errand {after.Ledger.Movements.Count}");
            after = Purchasing.Enter(after, entry) is { Ok: true } entered ? entered.Value : after;
        }

        // As a list that was pasted.
        Take(Result.Of(after));

        Count(payday.PlusDays(6));
    }

    private void Count(LocalDate day)
    {
        var draft = new CountDraft(day);
        foreach (CountRow row in CountPlan.Of(book, draft).Rows.Where(row => row.Expected.IsPositive))
        {
            var left = Money.FromMinorUnits(row.Expected.MinorUnits * random.Next(0, 4) / 4, row.Expected.Currency);
            draft = draft.With(row.Pot.Id, new CountEntry(left) { Then = CountThen.Stays });
        }

        Take(CountPlan.Of(book, draft).Confirm());
    }

    // What the rules refuse is left out, as a person would.
    private void Take(Result<Book> after)
    {
        if (after.Ok && after.Value != book)
        {
            store.Save(book, after.Value);
            book = after.Value;
        }
    }
}
