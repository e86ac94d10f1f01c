using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.ItemLines;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.ItemLines;

/// <summary>Whatever is written as a line is read back as the same item, in each way of writing numbers.</summary>
public sealed class ItemTextProperties
{
    private static readonly Gen<LineFacts> SomeFacts = Gen.Select(
        Gen.OneOf([.. NumberStyle.All.Select(style => Gen.Const(style))]),
        Gen.OneOf(Gen.Const("USD"), Gen.Const("EUR"), Gen.Const("JPY")),
        Gen.Enum<DateOrder>(),
        (style, code, order) => new LineFacts(Currency.FromCode(code), style, order, new(2026, 3, 5)));

    private static readonly Gen<LocalDate> Day = Gen.Int[0, 20_000].Select(days => new LocalDate(2000, 1, 1).PlusDays(days));

    // Names that a line could be cut in: figures, words of the trade, marks, quotes and blanks.
    private static readonly Gen<string> Name = Gen.Select(
        Gen.OneOf([.. new[] { "Rent", "Route 66", "12", "Club 12 on the", "every", "\"", "a \"b\"", "min 2%", "1..20", "5 x 3", "by Jul", "Odette, joinery", "Öl", "from 1,450.00", "450,00", "2w", "7 from May", "has 3", "- 3", "x;" }.Select(word => Gen.Const(word))]).Array[1, 3],
        Gen.OneOf(Gen.Const(" "), Gen.Const("  "), Gen.Const(", ")),
        (words, between) => string.Join(between, words));

    private static readonly Gen<MonthDay> SomeDay = Gen.OneOf<MonthDay>(
        Gen.Int[1, 31].Select(day => (MonthDay)new MonthDay.Numbered(day)),
        Gen.Const((MonthDay)new MonthDay.Last()),
        Gen.Const((MonthDay)new MonthDay.FirstWorkingDay()),
        Gen.Const((MonthDay)new MonthDay.LastWorkingDay()),
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 7], (nth, weekday) => (MonthDay)new MonthDay.NthWeekday(nth, (IsoDayOfWeek)weekday)));

    private static readonly Gen<Schedule> SomeSchedule = Gen.OneOf<Schedule>(
        Gen.Select(Gen.Int[1, 520], Day, (weeks, anchor) => (Schedule)new Schedule.EveryWeeks(weeks, anchor)),
        Gen.Select(Gen.Int[1, 120], Day, (months, anchor) => (Schedule)new Schedule.EveryMonths(months, anchor)),
        Gen.Select(SomeDay, SomeDay, (one, other) => (Schedule)new Schedule.TwiceMonthly(one, other)),
        SomeDay.Select(day => (Schedule)new Schedule.Monthly(day)),
        Day.Array[1, 4].Select(dates => (Schedule)new Schedule.OnDates([.. dates])));

    [Fact]
    public void Bill_WrittenAsALine_IsReadBackTheSame() => Gen.Select(SomeFacts, Name, SomeSchedule.Select(ScheduleDraft.Of).Null(), Gen.Long[0, 9_999_999], Gen.Long[0, 500_000].Nullable(), Day.Nullable(), Changes).Sample(
        (facts, name, schedule, amount, has, until, later) =>
        {
            var bill = new BillDraft { Name = name, Amount = Of(amount, facts), Schedule = schedule, SetAside = has is { } put ? Of(put, facts) : null, Until = until, Later = Later(later, facts) };
            Same(bill, ItemText.Of(bill, facts), line => ItemLine.Bill(line, facts));
        },
        iter: 500);

    [Fact]
    public void Source_WrittenAsALine_IsReadBackTheSame() => Gen.Select(SomeFacts, Name, SomeSchedule.Select(ScheduleDraft.Of).Null(), Gen.Long[0, 9_999_999], Day.Nullable(), Changes).Sample(
        (facts, name, schedule, amount, until, later) =>
        {
            var source = new SourceDraft { Name = name, Expected = Of(amount, facts), Schedule = schedule, Until = until, Later = Later(later, facts) };
            Same(source, ItemText.Of(source, facts), line => ItemLine.Source(line, facts));
        },
        iter: 500);

    [Fact]
    public void Debt_WrittenAsALine_IsReadBackTheSame() => Gen.Select(SomeFacts, Name, SomeSchedule.Null(), Gen.Long[0, 9_999_999], Gen.Int[0, 99_999].Nullable(), Gen.Int[0, 3], Gen.Long[0, 90_000]).Sample(
        (facts, name, due, balance, rate, kind, least) =>
        {
            var debt = new DebtDraft
            {
                Name = name,
                Balance = Of(balance, facts),
                Rate = rate / 10_000m,
                Minimum = kind switch
                {
                    0 => null,
                    1 => new() { Kind = MinimumKind.Fixed, Fixed = Of(least, facts) },
                    _ => new() { Kind = MinimumKind.Part, Percent = least % 1_000 / 1_000m, Floor = Of(least, facts), PlusInterest = kind == 2 ? true : null },
                },
                Due = (due as Schedule.Monthly)?.Day,
                Schedule = due is null or Schedule.Monthly ? null : ScheduleDraft.Of(due),
            };
            Same(debt, ItemText.Of(debt, facts), line => ItemLine.Debt(line, facts));
        },
        iter: 500);

    [Fact]
    public void Pot_WrittenAsALine_IsReadBackTheSame() => Gen.Select(SomeFacts, Name, SomeKind, Gen.Enum<Place>().Nullable(), Gen.Long[0, 90_000].Nullable(), Changes).Sample(
        (facts, name, kind, place, has, later) =>
        {
            PotDraft pot = kind(facts) with
            {
                Name = name,
                Place = place,
                Has = has is { } put ? Of(put, facts) : null,
            };
            pot = pot.Kind == PotUse.Ladder ? pot : pot with { Later = Later(later, facts) };
            Same(pot, ItemText.Of(pot, facts), line => ItemLine.Pot(line, facts));
        },
        iter: 500);

    private static Gen<(LocalDate From, long Amount)[]> Changes => Gen.Select(Day, Gen.Long[0, 999_999]).Array[0, 2];

    private static Gen<Func<LineFacts, PotDraft>> SomeKind => Gen.OneOf<Func<LineFacts, PotDraft>>(
        Gen.Select(Gen.Long[0, 90_000], Gen.Enum<FillPer>(), (amount, per) => (Func<LineFacts, PotDraft>)(facts => new() { Kind = PotUse.Spending, Amount = Of(amount, facts), Per = per })),
        Gen.Select(Gen.Long[1, 90_000], Day, SomeSchedule.Null(), Gen.Bool, (target, by, again, same) => (Func<LineFacts, PotDraft>)(facts => new()
        {
            Kind = PotUse.Sinking,
            Target = Of(target, facts),
            By = by,
            Repeats = again is null ? null : ScheduleDraft.Of(same && again is Schedule.EveryMonths months ? months with { Anchor = by } : again),
        })),
        Gen.Select(Gen.Long[1, 9_000], Gen.Int[1, 1_000], Gen.Enum<LadderOrder>(), (unit, steps, order) => (Func<LineFacts, PotDraft>)(facts => new() { Kind = PotUse.Ladder, Unit = Of(unit, facts), Steps = steps, Order = order })),
        Gen.Select(Gen.Long[1, 900_000], Gen.Long[1, 9_000], (level, each) => (Func<LineFacts, PotDraft>)(facts => new() { Kind = PotUse.Reserve, Level = Of(level, facts), PerPayday = Of(each, facts) })));

    private static decimal Of(long minor, LineFacts facts) => Money.FromMinorUnits(minor, facts.Currency).ToDecimal();

    private static ImmutableArray<LaterDraft>? Later((LocalDate From, long Amount)[] changes, LineFacts facts) =>
        changes.Length == 0 ? null : [.. changes.Select(change => new LaterDraft { From = change.From, Amount = Of(change.Amount, facts) })];

    private static void Same<T>(T item, string line, Func<string, Result<T>> read)
        where T : ItemDraft
    {
        Result<T> back = read(line);
        Assert.True(back.Ok, $"{line}: {back.Faults.FirstOrDefault()}");
        Assert.Equal($"{line}\n{Members(item)}", $"{line}\n{Members(back.Value!)}");
    }

    // All members, whatever they are: one that is added later is compared too.
    private static string Members(object? value) => value switch
    {
        null => "-",
        decimal amount => amount.ToString("0.############", System.Globalization.CultureInfo.InvariantCulture),
        string or Enum or LocalDate or int or bool or MonthDay => value.ToString()!,
        IEnumerable many => $"[{string.Join(", ", many.Cast<object?>().Select(Members))}]",
        _ => $"({string.Join(", ", value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(one => one.GetIndexParameters().Length == 0).OrderBy(one => one.Name).Select(one => $"{one.Name} {Members(one.GetValue(value))}"))})",
    };
}
