using NodaTime;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using static Payday.Core.ItemLines.SplitLine;

namespace Payday.Core.ItemLines;

/// <summary>
/// Reads an item of a household from a line as a person would note it: a name, an amount, and when or what for, such as
/// <c>Rent 1450 1st</c> or <c>Car insurance 684 every 6 months from 9 Nov</c>.
/// </summary>
/// <remarks>
/// What a line doesn't say stays open in the draft, for the form to ask or to propose. The name is what stands before the first
/// amount behind which all can be read, so a name may hold figures of its own; one in quotes (<c>"Club 12" 20</c>) is taken as it stands. What can
/// be read two ways is refused with both. The words are plain English; a way of writing of our own. <see cref="ItemText"/> writes them.
/// </remarks>
public static class ItemLine
{
    /// <summary>Reads a bill: <c>NAME AMOUNT [WHEN] [until DATE] [has AMOUNT][, AMOUNT from DATE]...</c>.</summary>
    public static Result<BillDraft> Bill(string line, LineFacts facts)
    {
        Result<BillDraft> read = Read(line, facts, (name, amount, words) =>
        {
            ScheduleDraft? schedule = When(words, facts);
            LocalDate? until = words.Take("until") ? words.Date() : null;
            decimal? has = words.Take("has") ? words.Amount() : null;
            return new BillDraft { Name = name, Amount = amount, Schedule = schedule, Until = until, SetAside = has, Later = words.Changes() };
        });
        return read.Ok && read.Value.Name is { } name && name.Contains('%', StringComparison.Ordinal) && Quoted(line).Name is null
            ? Result.Refused<BillDraft>(new LineFault.ReadsAsDebt(line.Trim()))
            : read;
    }

    /// <summary>Reads an income source: <c>NAME AMOUNT [WHEN] [until DATE][, AMOUNT from DATE]...</c>.</summary>
    public static Result<SourceDraft> Source(string line, LineFacts facts) => Read(line, facts, (name, amount, words) =>
    {
        ScheduleDraft? schedule = When(words, facts);
        LocalDate? until = words.Take("until") ? words.Date() : null;
        return new SourceDraft { Name = name, Expected = amount, Schedule = schedule, Until = until, Later = words.Changes() };
    });

    /// <summary>Reads a debt: <c>NAME BALANCE [at] [RATE%] [min] [AMOUNT | PART% [plus interest] [or AMOUNT]] [WHEN]</c>.</summary>
    public static Result<DebtDraft> Debt(string line, LineFacts facts) => Read(line, facts, (name, amount, words) =>
    {
        words.TakeAny("at", "with");
        var debt = new DebtDraft { Name = name, Balance = amount, Rate = words.Percent() };
        words.TakeAny("and", "with");
        if (words.TakeAny("min", "minimum", "at least", "least") || MinimumWords.Begin(words, debt.Rate is not null))
        {
            debt = debt with { Minimum = MinimumWords.Take(words) };
        }

        words.TakeAny("due on the", "due the", "on the", "due on", "due", "the", "on");
        return words.Left == 0 ? debt
            : ScheduleWords.Take(words, facts.From) is not { } schedule ? debt
            : schedule.Kind == ScheduleKind.Monthly ? debt with { Due = schedule.Day }
            : debt with { Schedule = schedule };
    });

    /// <summary>
    /// Reads a pot: <c>NAME AMOUNT [a week | a month | a payday]</c>, <c>NAME TARGET by DATE [every ... | again ...]</c>, <c>NAME UNIT in STEPS steps
    /// [falling | even]</c>, <c>NAME UNIT x STEPS</c> or <c>NAME FIRST..LAST</c>, or <c>NAME LEVEL with AMOUNT a payday</c>; then <c>in cash</c> or <c>in the account</c>, and <c>has AMOUNT</c>; but for steps what it changes to, like <c>220 from Jan 2027</c>.
    /// </summary>
    public static Result<PotDraft> Pot(string line, LineFacts facts) => Read(line, facts, (name, amount, words) =>
    {
        PotDraft pot = PotWords.Take(new PotDraft { Name = name }, amount, words, facts);
        if (words.TakeAny("in cash", "cash"))
        {
            pot = pot with { Place = Place.Cash };
        }
        else if (words.TakeAny("in the account", "in account", "account"))
        {
            pot = pot with { Place = Place.Account };
        }

        pot = words.Take("has") ? pot with { Has = words.Amount() } : pot;

        // An amount that nothing is said of is one a week, the usual choice of a new pot.
        pot = pot.Kind is null ? pot with { Kind = PotUse.Spending, Amount = amount, Per = FillPer.Week } : pot;
        return pot.Kind is PotUse.Ladder ? pot : pot with { Later = words.Changes() };
    });

    private static ScheduleDraft? When(LineWords words, LineFacts facts) =>
        words.IsEmpty || words.Begins("until") || words.Begins("has") ? null : ScheduleWords.Take(words, facts.From);
}
