using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Lives;

/// <summary>Books of our own invention with a closed payday, as tests of the weeks need them.</summary>
internal static class WeekHomes
{
    public static LocalDate Friday13March { get; } = new(2026, 3, 13);

    /// <summary>Food 60 and fares 20 a week in cash, boots saved in cash, gifts in the account, one debt.</summary>
    public static Household House { get; } = Bare with
    {
        Debts = [Debt("Card", 6400, 0.12m, 25, due: 15)],
        Pots =
        [
            CashPot("Food", 60),
            CashPot("Fares", 20, rank: 2),
            new Pot(new PotId("boots"), "Boots", Place.Cash, 3, Usd(0), new PotKind.Reserve(Usd(200), Usd(30)), NoteWishes.None),
            AccountPot("Gifts", 15, rank: 4),
        ],
    };

    /// <summary>The payday of 6 March closed: two weeks of food and fares at home, 30 in boots.</summary>
    public static Book Closed { get; } = Close(Book.Begin(House), Friday6March);

    public static Book Close(Book book, LocalDate payday) => Closing.Of(Routine.Plan(book, new RoutineDraft(payday)).Value!).Value!;

    public static Book Spend(this Book book, string? pot, decimal amount, LocalDate date, string what = "shop") =>
        Purchasing.Enter(book, new PurchaseEntry(date, pot is null ? null : new PotId(pot), Usd(amount), what)).Value!;

    public static CountPlan Plan(this Book book, LocalDate date, string pot, CountEntry entry) =>
        CountPlan.Of(book, new CountDraft(date).With(new PotId(pot), entry));

    public static CountRow Row(this Book book, LocalDate date, string pot, CountEntry entry) =>
        book.Plan(date, pot, entry).Rows.Single(row => row.Pot.Id == new PotId(pot));

    public static Book Count(this Book book, LocalDate date, string pot, CountEntry entry)
    {
        Result<Book> counted = book.Plan(date, pot, entry).Confirm();
        Assert.True(counted.Ok, counted.Fault.Said());
        return counted.Value;
    }

    public static Book Count(this Book book, LocalDate date, string pot, decimal left) => book.Count(date, pot, new CountEntry(Usd(left)));

    public static Notes Notes(params (long Value, int Count)[] notes) =>
        Core.Cash.Notes.Of(notes.Select(note => (note.Value * 100, note.Count)));

    public static CountEntry ByNotes(params (long Value, int Count)[] notes) => new(Usd(0)) { Notes = Notes(notes) };

    public static Money Has(this Book book, string key) => book.Ledger.Balances[LedgerEnd.FromKey(key)];

    /// <param name="book">The book.</param>
    /// <param name="mayLack">Whether an income may have been undone whose money had gone on: the next payday makes it good.</param>
    public static void AssertSound(Book book, bool mayLack = false)
    {
        Assert.Empty(LedgerCheck.Faults(book.Ledger.Balances));
        Assert.False(book.Ledger.Balances.Overdrawn.IsNegative, "More was paid off than the overdraft was.");
        Assert.All(
            book.Ledger.Balances.PurposesIn(Place.Account).Where(purpose => purpose.Purpose.Kind is not (PurposeKind.OwedBack or PurposeKind.Overdraft) && !(mayLack && purpose.Purpose.Kind == PurposeKind.LeftToPlace)),
            purpose => Assert.False(purpose.Amount.IsNegative, $"{purpose}"));
    }
}
