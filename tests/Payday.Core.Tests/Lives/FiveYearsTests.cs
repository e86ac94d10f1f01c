using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Counts;
using Payday.Core.Fills;
using Payday.Core.Histories;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Lives;

public class FiveYearsTests
{
    // Every event there is, day by day; what must always hold is looked at after each of them.
    [Theory]
    [InlineData(5, 5, 500)]
    [InlineData(2, 2, 500)]
    [InlineData(2, 1, -1900)]
    [InlineData(12, 1, -1900)]
    public void Live_DayByDay_KeepsEverythingTrue(int seed, int years, int account)
    {
        Household household = House with { Opening = House.Opening with { Account = Usd(account), LooseNotes = Notes((5, 6), (10, 2)) } };
        var life = new FiveYears(Book.Begin(household), seed);
        ImmutableArray<WeekCount> before = [];
        for (LocalDate day = Friday6March; day < Friday6March.PlusYears(years); day = day.PlusDays(1))
        {
            life.Live(day, book =>
            {
                AssertSound(book, mayLack: true);
                AssertOwedAgrees(book);
                Assert.True(before.Zip(book.Weeks.Counts).All(pair => pair.First == (pair.Second with { TakenUp = pair.First.TakenUp, Undone = pair.First.Undone })));
                before = [.. book.Weeks.Counts];
            });
            if (day.DayOfWeek == IsoDayOfWeek.Sunday)
            {
                AssertNotesAgree(life.Book);
            }
        }

        Assert.True(account >= 0 || life.Book.Ledger.Balances.Overdrawn < Usd(-account), "Nothing was paid off.");
        AssertCountsAddUp(life.Book);
        AssertHistoriesAgree(life.Book);
        if (years < 5)
        {
            return;
        }

        // In five years everything came up.
        foreach (string what in new[] { "payday", "fill", "mark again", "purchase", "undo", "count", "count today", "settle", "return", "purchase refused", "return refused", "count taken back", "return taken back", "fill taken back", "move", "entry", "move taken back", "entry taken back", "other notes", "split", "by a debt's card", "split undone" })
        {
            Assert.True(life.Done.GetValueOrDefault(what) > 5, $"{what}: {string.Join(", ", life.Done)}");
        }

        Assert.Contains(life.Book.Weeks.Returns, back => back.Payday is not null);
        Assert.Contains(life.Book.Weeks.Returns, back => !back.Swaps.IsEmpty);
        Assert.Contains(life.Book.Weeks.Returns, back => back.Settles.Any(settle => settle.Item.Kind == OwedKind.MovesOn));
        Assert.Contains(life.Book.Weeks.Returns, back => back.Settles.Any(settle => settle.Item.Kind == OwedKind.Move));
    }

    // The last balance of each history is what the ledger has, and rounding is what purchases owed above what they cost.
    private static void AssertHistoriesAgree(Book book)
    {
        foreach (Pot pot in book.Household.Pots)
        {
            Money has = Money.Sum(
                new[] { $"account/pot:{pot.Id}", $"account/kept-back:{pot.Id}", $"cash/pot:{pot.Id}", $"cash/wallet:{pot.Id}", $"cash/kept-back:{pot.Id}" }.Select(book.Has), book.Household.Currency);
            Assert.Equal(has, PotHistory.Of(book, pot.Id).Balances[^1].Has);
        }

        IReadOnlySet<long> roundings = Roundings.Of(book);
        Money rounded = Money.Sum(roundings.Select(number => book.Ledger.Movements[(int)number - 1].Amount), book.Household.Currency);
        ILookup<long, Money> settled = book.Weeks.StandingReturns.SelectMany(back => back.Settles).Where(item => item.Item.Kind == OwedKind.Purchase).ToLookup(item => item.Item.Number, item => item.Amount);
        Assert.Equal(
            Money.Sum(settled.Select(item => (Money.Sum(item, book.Household.Currency) - book.Weeks.Purchases[(int)item.Key - 1].Amount + Lowered(book, item.Key)).ClampToZero()), book.Household.Currency),
            rounded);
    }

    private static Money Lowered(Book book, long purchase) =>
        RefundedParts.Of(book).TryGetValue(new OwedKey(OwedKind.Purchase, purchase), out RefundedPart? part) ? part.Amount : Usd(0);

    private static void AssertOwedAgrees(Book book)
    {
        Balances balances = book.Ledger.Balances;
        ILookup<PotId, OwedItem> items = OwedItems.Of(book).ToLookup(item => item.PotId);
        foreach (Pot pot in book.Household.Pots)
        {
            Assert.Equal(Money.Sum(items[pot.Id].Select(item => item.Left), Dollars), PotMoney.OwedBack(balances, pot.Id));
            Assert.Equal(Money.Sum(items[pot.Id].Where(item => item.To is not LedgerEnd.At { Purpose.Kind: PurposeKind.ForCard }).Select(item => item.Short), Dollars), -balances[LedgerEnd.InAccount(Purpose.OwedBack(pot.Id))]);
            Money open = Money.Sum(Differences.Open(book).Where(count => count.PotId == pot.Id).Select(count => count.Difference), Dollars);
            Assert.Equal(open, balances[LedgerEnd.MissedIn(pot.Id)]);
        }
    }

    private static void AssertNotesAgree(Book book)
    {
        PotNotes notes = PotNotes.Of(book);
        Balances balances = book.Ledger.Balances;
        Assert.Equal(
            balances[LedgerEnd.InCash(Purpose.Buffer)] + Money.Sum(book.Household.Pots.Select(pot => PotMoney.InLooseNotes(balances, pot.Id)), Dollars),
            notes.Loose.Worth(Dollars));
        foreach (Pot pot in book.Household.Pots.Where(pot => pot.Place == Place.Cash))
        {
            Money owed = PotMoney.OwedBack(balances, pot.Id);
            bool wallet = FillPart.GoesThroughTheWallet(pot);
            Money home = balances[LedgerEnd.InCash(Purpose.Pot(pot.Id))] + (wallet ? Usd(0) : owed);
            Assert.True(notes.AtHome(pot.Id) is not { } there || there.Worth(Dollars) == home);
            Assert.True(notes.InWallet(pot.Id) is not { } carried || carried.Worth(Dollars) == balances[LedgerEnd.InCash(Purpose.Wallet(pot.Id))] + (wallet ? owed : Usd(0)));
        }
    }

    // Counts of a pot follow on from each other, and each explains all that was gone.
    private static void AssertCountsAddUp(Book book)
    {
        foreach (IGrouping<PotId, WeekCount> pot in book.Weeks.StandingCounts.GroupBy(count => count.PotId))
        {
            WeekCount? last = null;
            foreach (WeekCount count in pot)
            {
                Assert.Equal(count.Expected, count.Left + count.Spent + count.Difference);
                Assert.Equal((last?.Stayed ?? Usd(0), last?.Date), (count.Before, count.Since));
                Assert.True(last is null || last.Date <= count.Date);
                last = count;
            }
        }
    }
}
