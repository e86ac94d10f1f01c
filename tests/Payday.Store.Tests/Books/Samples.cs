using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Store.Changes;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;
using Payday.Store.Tests.HouseholdFiles;

namespace Payday.Store.Tests.Books;

/// <summary>A small household and things that happen to it.</summary>
internal static class Samples
{
    public static readonly LocalDate Payday = new(2026, 3, 6);

    public static readonly Currency Usd = Currency.FromCode("USD");

    // Read when asked for: a child process that only adds movements is started often, and has no use for it.
    private static readonly Lazy<Household> Read = new(() => HouseholdFile.Read(SmallHousehold.Json).Value!);

    public static Household Household => Read.Value;

    /// <summary>The household with its opening balances.</summary>
    public static BookChange Beginning => new()
    {
        Household = Household,
        Movements = [.. Book.Begin(Household).Ledger.Movements],
    };

    public static Money Cents(long cents) => Money.FromMinorUnits(cents, Usd);

    public static Movement Income(long cents) =>
        new(0, Payday, LedgerEnd.PaidBy(new SourceId("wage")), LedgerEnd.InAccount(Purpose.Buffer), Cents(cents), "income", Payday);

    public static ImmutableArray<Movement> Incomes(int count) => [.. Enumerable.Range(1, count).Select(cents => Income(cents))];

    public static ClosedPayday Closed(LocalDate payday, long first, long last) => new(
        new PayPeriod(payday, payday.PlusDays(13)), first, last, [], [], Empty<PotId, Money>(), Empty<long, int>(), Empty<long, int>(), Empty<long, int>(), new RoutineDraft(payday));

    /// <summary>A store that has begun.</summary>
    public static BookStore Begun(StoreFolder folder)
    {
        BookStore store = BookStore.Open(folder);
        store.Save(Beginning);
        return store;
    }

    /// <summary>All of a book, to compare.</summary>
    public static string Text(Book? book) => book is null ? "none" : string.Join(
        '\n',
        HouseholdFile.Write(book.Household),
        Structure.Of(book.Ledger.Movements),
        Structure.Of(book.Closed),
        Structure.Of(book.Draft),
        Structure.Of(book.Weeks));

    private static ImmutableSortedDictionary<TKey, TValue> Empty<TKey, TValue>()
        where TKey : notnull => ImmutableSortedDictionary<TKey, TValue>.Empty;
}
