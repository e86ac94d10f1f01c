using CsCheck;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Histories;
using Payday.Core.Ledgers;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Histories;

/// <summary>The ledger by what was done.</summary>
public class LedgerGroupTests
{
    [Fact]
    public void Of_AWeek_HasAGroupForEachThingDone()
    {
        Book book = Closed.Spend("food", 12.34m, Friday6March.PlusDays(1)).Count(Friday13March, "food", 20);
        LedgerGroup[] groups = [.. LedgerGroups.Of(book)];
        Assert.Equal([LedgerGroupKind.Opening, LedgerGroupKind.Payday, LedgerGroupKind.Entry, LedgerGroupKind.Entry], groups.Select(group => group.Kind));
        Assert.Equal(new BookEntry.Purchase(1), groups[2].Entry);
        Assert.IsType<BookEntry.Count>(groups[3].Entry);
    }

    [Fact]
    public void Of_APaydayTakenUpAgain_IsOneUndoneGroup()
    {
        Book book = Reopening.Of(Closed, Friday13March).Value!;
        LedgerGroup undone = Assert.Single(LedgerGroups.Of(book), group => group.Kind != LedgerGroupKind.Opening);
        Assert.Equal(LedgerGroupKind.Undone, undone.Kind);
        Assert.All(undone.Movements, movement => Assert.False(book.Ledger.Stands(movement)));
    }

    // Whatever is done in a life: each movement once, what stands apart from what doesn't, nothing of two paydays in one.
    [Fact]
    public void Of_RandomLives_HaveEachMovementOnce() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[10, 200]).Sample(
        (seed, days) =>
        {
            var life = new FiveYears(Book.Begin(House), seed);
            for (int day = 0; day < days; day++)
            {
                life.Live(Friday6March.PlusDays(day), _ => { });
            }

            LedgerGroup[] groups = [.. LedgerGroups.Of(life.Book)];
            Assert.Equal(life.Book.Ledger.Movements.Select(movement => movement.Number), groups.SelectMany(group => group.Movements).Select(movement => movement.Number).Order());
            Assert.All(groups, group => Assert.All(group.Movements, movement => Assert.Equal(group.Kind != LedgerGroupKind.Undone, life.Book.Ledger.Stands(movement))));
            Assert.Equal(life.Book.Closed.Select(closed => closed.Payday), groups.Where(group => group.Kind == LedgerGroupKind.Payday).Select(group => group.Date));

            Func<long, BookEntry?> entryOf = BookEntry.ByMovement(life.Book);
            Assert.All(life.Book.Ledger.Movements, movement => Assert.Equal(BookEntry.Of(life.Book, movement.Number), entryOf(movement.Number)));

            // In any order: what a purchase took up may have been written before an earlier purchase.
            Assert.Equal(
                life.Book.Weeks.StandingPurchases.Select(purchase => purchase.WholeNumber).Distinct(),
                groups.Select(group => group.Entry).OfType<BookEntry.Purchase>().Select(purchase => purchase.Number).Distinct().Order());
            Assert.Distinct(groups.Where(group => group.Entry is BookEntry.Purchase).Select(group => group.Entry));
            Assert.All(groups.Where(group => group.Kind == LedgerGroupKind.Undone), group => Assert.Equal(2 * group.Movements.Count(movement => movement.Reverses is not null), group.Movements.Length));
        },
        iter: 20);
}
