using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Store.Tests.HouseholdFiles;

/// <summary>Generates households of every shape that a file may hold.</summary>
internal static class GenHousehold
{
    private static readonly LocalDate Start = new(2026, 3, 5);

    private static readonly Gen<Currency> Currencies =
        Gen.OneOf("USD", "EUR", "JPY", "KWD", "CLF").Select(Currency.FromCode);

    private static readonly Gen<LocalDate> Dates = Gen.Int[-40_000, 60_000].Select(Start.PlusDays);

    private static readonly Gen<LocalDate> LaterDates = Gen.Int[0, 36_500].Select(Start.PlusDays);

    private static readonly Gen<string> Names =
        Gen.OneOf("Food", "Café ☕", "\"Kids' \\ shoes\"", "<b>&amp;", "猫のえさ", "👩‍👧 club", "Ünïcode", "a/b", "x\u00A0y");

    private static readonly Gen<MonthDay> MonthDays = Gen.OneOf<MonthDay>(
        Gen.Int[1, 31].Select(day => (MonthDay)new MonthDay.Numbered(day)),
        Gen.Const<MonthDay>(new MonthDay.Last()),
        Gen.Const<MonthDay>(new MonthDay.LastWorkingDay()),
        Gen.Const<MonthDay>(new MonthDay.FirstWorkingDay()),
        Gen.Select(Gen.Int[1, 5], Gen.Enum<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None))
            .Select((nth, day) => (MonthDay)new MonthDay.NthWeekday(nth, day)));

    private static readonly Gen<Schedule> Schedules = Gen.OneOf<Schedule>(
        Gen.Select(Gen.Int[1, 520], Dates).Select((weeks, anchor) => (Schedule)new Schedule.EveryWeeks(weeks, anchor)),
        Gen.Select(Gen.Int[1, 2], Dates).Select((weeks, anchor) => (Schedule)new Schedule.EveryWeeks(weeks, anchor)),
        Gen.Select(MonthDays, MonthDays).Where((first, second) => first != second)
            .Select((first, second) => (Schedule)new Schedule.TwiceMonthly(first, second)),
        MonthDays.Select(day => (Schedule)new Schedule.Monthly(day)),
        Gen.Select(Gen.OneOf(Gen.Int[1, 120], Gen.Const(12)), Dates).Select((months, anchor) => (Schedule)new Schedule.EveryMonths(months, anchor)),
        Dates.Array[0, 5].Select(dates => (Schedule)new Schedule.OnDates([.. dates])));

    private static readonly Gen<Shift> Shifts = Gen.Enum<Shift>();

    private static Gen<LaterAmounts> Laters(Currency currency) => Gen.Select(Gen.Int[0, 36_500], AmountsAboveZero(currency)).Array[0, 3].Select(changes =>
        LaterAmounts.Of([.. changes.DistinctBy(change => change.Item1).OrderBy(change => change.Item1).Select(change => new LaterAmount(Start.PlusDays(change.Item1), change.Item2))]));

    private static readonly Gen<LocalDate?> Untils = Gen.OneOf(Gen.Const((LocalDate?)null), LaterDates.Select(date => (LocalDate?)date));

    /// <summary>Households that a file takes.</summary>
    public static Gen<Household> Any { get; } = Currencies.SelectMany(InCurrency);

    private static Gen<Household> InCurrency(Currency currency) =>
        from settings in Settings(currency)
        from name in Names
        from sources in List(1, Gen.Select(Schedules, Shifts, Amounts(currency), Untils, Laters(currency)),
            (id, label, part) => new IncomeSource(new SourceId(id), label, part.Item1, part.Item2, part.Item3, part.Item4) { Later = part.Item5 })
        from bills in List(0, Gen.Select(Schedules, Shifts, Amounts(currency), Untils, Gen.Bool, Laters(currency)),
            (id, label, part) => new Bill(new BillId(id), label, part.Item3, part.Item1, part.Item2, part.Item5, part.Item4) { Later = part.Item6 })
        from debts in List(0, Gen.Select(Amounts(currency), Fractions(10), Minimums(currency), Gen.Select(MonthDays, Schedules, Gen.Bool)),
            (id, label, part) => new Debt(new DebtId(id), label, part.Item1, part.Item2, part.Item3, part.Item4.Item3 ? part.Item4.Item2 : new Schedule.Monthly(part.Item4.Item1)))
        from pots in List(0, Pots(currency, settings.Cash), (id, label, pot) => pot with { Id = new PotId(id), Name = label })
        from ranks in Gen.Shuffle(Enumerable.Range(1, 20).ToArray())
        from opening in Opening(currency, settings.Cash, bills, pots)
        select new Household(name, Start, settings, sources, bills, debts,
            [.. pots.Select((pot, i) => pot with { Rank = ranks[i] })], opening);

    private static Gen<HouseholdSettings> Settings(Currency currency) =>
        from cash in Cash(currency)
        from numbers in Gen.OneOf([.. NumberStyle.All])
        from fillDay in Gen.Enum<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None)
        from set in Gen.Enum<HolidaySet>()
        from extra in Dates.Array[0, 3]
        from modes in Gen.Select(Gen.Enum<SetAsideMode>(), Gen.Enum<CardRounding>(), Gen.Enum<DebtOrder>())
        from bank in Bank(currency, cash)
        from lines in Names.Array[0, 6]
        from limits in Gen.Select(Amounts(currency), Gen.Bool, Gen.Bool)
        select new HouseholdSettings(currency, numbers, cash, fillDay, new HolidayRules(set, [.. extra]), modes.Item1, bank, modes.Item2, modes.Item3, [.. lines])
        {
            BufferKeeps = limits.Item2 ? limits.Item1 : null,
            Overdraft = limits.Item3 ? limits.Item1 : null,
        };

    private static Gen<CashPieces> Cash(Currency currency) =>
        Gen.Select(Pieces(currency, 1), Pieces(currency, 0)).Select((notes, coins) => new CashPieces(notes, coins));

    private static Gen<ImmutableArray<Money>> Pieces(Currency currency, int least) =>
        Gen.OneOf(Gen.Long[1, 100_000], Gen.Long[1, 20].Select(units => units * currency.MinorPerUnit)).HashSet[least, 6]
            .Select(values => values.OrderDescending().Select(value => Money.FromMinorUnits(value, currency)).ToImmutableArray());

    private static Gen<CashSource> Bank(Currency currency, CashPieces cash) => Gen.OneOf<CashSource>(
        Gen.Const<CashSource>(new CashSource.Teller()),
        Gen.Select(Gen.Int[1, cash.Notes.Length], Gen.Long[0, 1_000_000], Gen.Bool).Select((count, above, hasLimit) =>
            (CashSource)new CashSource.Machine(cash.Notes[..count], hasLimit ? cash.Notes[count - 1] + Money.FromMinorUnits(above, currency) : null)));

    private static Gen<MinimumRule> Minimums(Currency currency) => Gen.OneOf<MinimumRule>(
        Amounts(currency).Select(amount => (MinimumRule)new MinimumRule.Fixed(amount)),
        Gen.Select(Fractions(1), Amounts(currency), Gen.Bool).Select((percent, floor, plus) => (MinimumRule)new MinimumRule.PercentOrFloor(percent, floor) { PlusInterest = plus }));

    private static Gen<Pot> Pots(Currency currency, CashPieces cash) =>
        from held in Gen.Enum<Place>()
        from kind in Purposes(currency, held)
        from floor in Amounts(currency)
        from wishes in held == Place.Cash ? Wishes(currency, cash, kind) : Gen.Const(NoteWishes.None)
        from toBuffer in Gen.Bool
        select new Pot(new PotId(""), "", held, 0, floor, kind, wishes) { MovesOnTo = toBuffer && held == Place.Cash ? MoveTarget.Buffer : null };

    private static Gen<PotKind> Purposes(Currency currency, Place held) => Gen.OneOf<PotKind>(
        Gen.Select(Amounts(currency), Gen.Enum<FillPer>(), Gen.Bool, Laters(currency)).Select((amount, per, splits, later) =>
            (PotKind)new PotKind.Spending(amount, per) { SplitsOverWeeks = splits && held == Place.Cash, Later = later }),
        Gen.Select(AmountsAboveZero(currency), LaterDates, Schedules, Gen.Bool, Untils, Gen.Bool, Laters(currency)).Select((target, by, repeats, does, settled, finished, later) =>
            (PotKind)new PotKind.Sinking(target, by) { Repeats = does ? repeats : null, SettledTo = settled, Finished = finished, Later = later }),
        Gen.Select(Gen.Long[1, 10_000], Gen.Int[1, 1_000], Gen.Enum<LadderOrder>())
            .Select((unit, steps, order) => (PotKind)new PotKind.Ladder(Money.FromMinorUnits(unit, currency), steps, order)),
        Gen.Select(AmountsAboveZero(currency), AmountsAboveZero(currency), Laters(currency)).Select((level, each, later) => (PotKind)new PotKind.Reserve(level, each) { Later = later }));

    private static Gen<NoteWishes> Wishes(Currency currency, CashPieces cash, PotKind kind)
    {
        long most = kind switch
        {
            PotKind.Spending spending => spending.Amount.MinorUnits,
            PotKind.Sinking sinking => sinking.Target.MinorUnits,
            PotKind.Ladder ladder => ladder.Unit.MinorUnits,
            _ => ((PotKind.Reserve)kind).PerPayday.MinorUnits,
        };
        Gen<Money> note = Gen.Int[0, cash.Notes.Length - 1].Select(i => cash.Notes[i]);
        Gen<SmallMoney?> small = most == 0
            ? Gen.Const((SmallMoney?)null)
            : Gen.Select(note, Gen.Long[1, most], Gen.Bool).Select((value, least, wanted) =>
                wanted ? new SmallMoney(value, Money.FromMinorUnits(least, currency)) : null);
        return Gen.Select(note, Gen.Bool, small).Select((top, hasTop, some) => new NoteWishes(hasTop ? top : null, some));
    }

    private static Gen<OpeningBalances> Opening(Currency currency, CashPieces cash, ImmutableArray<Bill> bills, ImmutableArray<Pot> pots) =>
        from setAside in Parts(currency, bills.Select(bill => bill.Id))
        from held in Parts(currency, pots.Select(pot => pot.Id))
        from buffer in Amounts(currency)
        from counts in Gen.Int[0, 50].Array[cash.Notes.Length]
        from counted in Gen.Bool.Array[cash.Notes.Length]
        from below in Gen.Int[0, 4].Select(chance => chance == 0)
        select new OpeningBalances(
            below ? -buffer : Money.Sum([buffer, .. setAside.Values, .. held.Values], currency),
            below ? setAside.Clear() : setAside,
            below ? held.RemoveRange(pots.Where(pot => pot.Place == Place.Account).Select(pot => pot.Id)) : held,
            Notes.Of(cash.Notes.Select((note, i) => (note, i)).Where(entry => counted[entry.i]).Select(entry => (entry.note.MinorUnits, counts[entry.i]))));

    private static Gen<ImmutableSortedDictionary<TId, Money>> Parts<TId>(Currency currency, IEnumerable<TId> ids)
        where TId : notnull
    {
        TId[] all = [.. ids];
        return Gen.Select(Amounts(currency).Array[all.Length], Gen.Bool.Array[all.Length]).Select((amounts, there) =>
            all.Select((id, i) => (id, i)).Where(entry => there[entry.i])
                .ToImmutableSortedDictionary(entry => entry.id, entry => amounts[entry.i]));
    }

    private static Gen<ImmutableArray<T>> List<TPart, T>(int least, Gen<TPart> part, Func<string, string, TPart, T> make) =>
        Gen.Select(part.Array[least, 4], Names.Array[4]).Select((parts, names) =>
            parts.Select((one, i) => make($"item-{i}", $"{names[i]} {i}", one)).ToImmutableArray());

    private static Gen<Money> Amounts(Currency currency) =>
        Gen.OneOf(Gen.Long[0, 1_000_000], Gen.Long[0, 1_000_000_000_000]).Select(minor => Money.FromMinorUnits(minor, currency));

    private static Gen<Money> AmountsAboveZero(Currency currency) =>
        Gen.Long[1, 1_000_000].Select(minor => Money.FromMinorUnits(minor, currency));

    private static Gen<decimal> Fractions(int most) => Gen.Int[0, most * 1_000_000].Select(millionths => millionths / 1_000_000m);
}
