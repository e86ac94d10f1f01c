using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.ItemLines;

/// <summary>Writes an item of a household as the line that <see cref="ItemLine"/> reads it from: all that a line can say of it, in its plainest words.</summary>
/// <remarks>A line says nothing of closed days, of what is essential, of notes and of cuts: these stay as they are in a new item.</remarks>
public static class ItemText
{
    private static readonly LocalDatePattern Full = LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");
    private static readonly LocalDatePattern Short = LocalDatePattern.CreateWithInvariantCulture("d MMM");

    /// <summary>A bill as a line.</summary>
    /// <param name="bill">The bill; what is missing in it is left out.</param>
    /// <param name="facts">The household.</param>
    public static string Of(BillDraft bill, LineFacts facts)
    {
        ArgumentNullException.ThrowIfNull(bill);
        return Named(bill.Name, [Amount(bill.Amount, facts), When(bill.Schedule), Day("until", bill.Until), Has(bill.SetAside, facts)], bill.Later, facts, line => ItemLine.Bill(line, facts).Value?.Name);
    }

    /// <summary>An income source as a line.</summary>
    /// <inheritdoc cref="Of(BillDraft, LineFacts)"/>
    public static string Of(SourceDraft source, LineFacts facts)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Named(source.Name, [Amount(source.Expected, facts), When(source.Schedule), Day("until", source.Until)], source.Later, facts, line => ItemLine.Source(line, facts).Value?.Name);
    }

    /// <summary>A debt as a line.</summary>
    /// <inheritdoc cref="Of(BillDraft, LineFacts)"/>
    public static string Of(DebtDraft debt, LineFacts facts)
    {
        ArgumentNullException.ThrowIfNull(debt);
        return Named(
            debt.Name,
            [
                Amount(debt.Balance, facts),
                debt.Rate is { } rate ? "at " + Percent(rate, facts) : "",
                Minimum(debt.Minimum, facts),
                debt.Due is { } due ? "due on " + DayOf(due) : debt.Schedule is { } schedule ? "due " + When(schedule) : "",
            ],
            null,
            facts,
            line => ItemLine.Debt(line, facts).Value?.Name);
    }

    /// <summary>A pot as a line.</summary>
    /// <inheritdoc cref="Of(BillDraft, LineFacts)"/>
    public static string Of(PotDraft pot, LineFacts facts)
    {
        ArgumentNullException.ThrowIfNull(pot);
        return Named(
            pot.Name,
            [
                .. Kind(pot, facts),
                pot.Place switch { Place.Cash => "in cash", Place.Account => "in the account", _ => "" },
                Has(pot.Has, facts),
            ],
            pot.Later,
            facts,
            line => ItemLine.Pot(line, facts).Value?.Name);
    }

    /// <summary>When something comes round, in a line's words; empty where that isn't known.</summary>
    public static string When(ScheduleDraft? schedule) => schedule switch
    {
        { Kind: ScheduleKind.Weekly } => "every week" + Day("from", schedule.Anchor, before: " "),
        { Kind: ScheduleKind.Fortnightly } => "every 2 weeks" + Day("from", schedule.Anchor, before: " "),
        { Kind: ScheduleKind.EveryWeeks, Weeks: { } weeks } => $"every {weeks} weeks" + Day("from", schedule.Anchor, before: " "),
        { Kind: ScheduleKind.EveryMonths, Months: { } months } => $"every {months} months" + Day("from", schedule.Anchor, before: " "),
        { Kind: ScheduleKind.Yearly } => "every year" + Day("from", schedule.Anchor, before: " "),
        { Kind: ScheduleKind.Monthly, Day: { } day } => "on " + DayOf(day),
        { Kind: ScheduleKind.TwiceMonthly, Days: { } days } => "on " + string.Join(" and ", days.OfType<MonthDay>().Select(DayOf)),
        { Kind: ScheduleKind.Dates, Dates: { } dates } => "on " + string.Join(" and ", dates.Select(Full.Format)),
        _ => "",
    };

    /// <summary>A day and a month, such as <c>9 Nov</c>.</summary>
    internal static string DayAndMonth(LocalDate date) => Short.Format(date);

    /// <summary>A number of a day, such as <c>2nd</c>.</summary>
    internal static string Nth(int number)
    {
        string digits = number.ToString(CultureInfo.InvariantCulture);
        return digits + (number % 100 is >= 11 and <= 13 ? "th" : (number % 10) switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" });
    }

    private static string Named(string? name, ImmutableArray<string> parts, ImmutableArray<LaterDraft>? later, LineFacts facts, Func<string, string?> read)
    {
        string rest = string.Join(' ', parts.Where(part => part.Length > 0));
        foreach (LaterDraft change in later ?? [])
        {
            rest += $", {Amount(change.Amount, facts)}{Day("from", change.From, before: " ")}";
        }

        // A name that a line would cut elsewhere stands in quotes.
        string plain = $"{name} {rest}";
        return name is { Length: > 0 } && read(plain) != name ? $"\"{name.Replace("\"", "\"\"", StringComparison.Ordinal)}\" {rest}" : plain;
    }

    private static IEnumerable<string> Kind(PotDraft pot, LineFacts facts) => pot.Kind switch
    {
        PotUse.Spending => [Amount(pot.Amount, facts), pot.Per switch
        {
            FillPer.Payday => "a payday",
            FillPer.Month => "a month",
            FillPer.MonthSpread => "a month spread",
            _ => "a week",
        }],
        PotUse.Sinking => [Amount(pot.Target, facts), Day("by", pot.By), Again(pot)],
        PotUse.Ladder => [Amount(pot.Unit, facts), $"in {pot.Steps ?? 0} steps", pot.Order switch { LadderOrder.Falling => "falling", LadderOrder.Even => "even", _ => "" }],
        PotUse.Reserve => [Amount(pot.Level, facts), $"with {Amount(pot.PerPayday, facts)} a payday"],
        _ => [Amount(pot.Amount, facts)],
    };

    private static string Again(PotDraft pot) => pot.Repeats switch
    {
        null => "",
        { Kind: ScheduleKind.Yearly } same when same.Anchor == pot.By => "every year",
        { Kind: ScheduleKind.EveryMonths, Months: { } months } same when same.Anchor == pot.By => $"every {months} months",
        { } other => "again " + When(other),
    };

    private static string Minimum(MinimumDraft? minimum, LineFacts facts) => minimum switch
    {
        { Kind: MinimumKind.Part, Percent: { } part } => $"min {Percent(part, facts)}{(minimum.PlusInterest == true ? " plus interest" : "")} or {Amount(minimum.Floor ?? 0, facts)}",
        { Fixed: { } amount } => $"min {Amount(amount, facts)}",
        _ => "",
    };

    private static string DayOf(MonthDay day) => day switch
    {
        MonthDay.Numbered numbered => "the " + Nth(numbered.Day),
        MonthDay.LastWorkingDay => "the last working day",
        MonthDay.FirstWorkingDay => "the first working day",
        MonthDay.NthWeekday { Nth: MonthDay.LastNth } last => $"the last {last.Weekday}",
        MonthDay.NthWeekday nth => $"the {Nth(nth.Nth)} {nth.Weekday}",
        _ => "the last day",
    };

    private static string Has(decimal? amount, LineFacts facts) => amount is { } has ? "has " + Amount(has, facts) : "";

    private static string Day(string word, LocalDate? date, string before = "") => date is { } day ? $"{before}{word} {Full.Format(day)}" : "";

    // Without marks between thousands, which a line is cut at in some regions.
    private static string Amount(decimal? amount, LineFacts facts) => amount is { } known
        ? facts.Numbers.Written(known.ToString("0." + (known == decimal.Truncate(known) ? "" : new string('0', facts.Currency.Decimals)) + "##########", CultureInfo.InvariantCulture))
        : "";

    private static string Percent(decimal part, LineFacts facts) => facts.Numbers.Written((part * 100).ToString("0.##########", CultureInfo.InvariantCulture)) + "%";
}
