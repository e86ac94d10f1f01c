using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;

namespace Payday.Faults;

/// <summary>The demo household with many of each: its sources, bills, debts and pots again and again under other names.</summary>
internal static class ManyItems
{
    private const int DaysAWeek = 7;

    /// <summary>Begins a store of such a household.</summary>
    public static bool Make(string path, int items)
    {
        using BookStore store = BookStore.Open(new StoreFolder(path));
        Household household = Of(HouseholdFile.Read(File.ReadAllText(Life.Demo())).Value!, items);

        // As if it were typed, so that it is one that the program takes.
        household = HouseholdCheck.Of(HouseholdDraft.Of(household)).Value!;
        store.Save(null, Book.Begin(household));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{household.Sources.Length} sources, {household.Bills.Length} bills, {household.Debts.Length} debts, {household.Pots.Length} pots."));
        return true;
    }

    /// <summary>The household with so many of each. What comes in carries them, and pay comes on other days for other sources.</summary>
    public static Household Of(Household household, int items) => household with
    {
        Sources =
        [
            .. Again(household.Sources, items, (source, i) => source with
            {
                Id = new SourceId($"{source.Id.Text}-{i}"),
                Name = $"{source.Name} {i}",
                Schedule = source.Schedule is Schedule.EveryWeeks weeks ? weeks with { Anchor = weeks.Anchor.PlusDays(i % (DaysAWeek * weeks.Weeks)) } : source.Schedule,
            }),
        ],
        Bills = [.. Again(household.Bills, items, (bill, i) => bill with { Id = new BillId($"{bill.Id.Text}-{i}"), Name = $"{bill.Name} {i}" })],
        Debts = [.. Again(household.Debts, items, (debt, i) => debt with { Id = new DebtId($"{debt.Id.Text}-{i}"), Name = $"{debt.Name} {i}" })],
        Pots = [.. Again(household.Pots, items, (pot, i) => pot with { Id = new PotId($"{pot.Id.Text}-{i}"), Name = $"{pot.Name} {i}", Rank = (pot.Rank * items) + i })],
        Opening = household.Opening with { SetAside = ImmutableSortedDictionary<BillId, Money>.Empty, Pots = ImmutableSortedDictionary<PotId, Money>.Empty },
    };

    private static IEnumerable<T> Again<T>(ImmutableArray<T> items, int times, Func<T, int, T> again) =>
        Enumerable.Range(0, times).Select(i => again(items[i % items.Length], i / items.Length));
}
