using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.ItemLines;

/// <summary>
/// Reads an item of a household from a line as a person would note it: a name, an amount, and when or what for, such as
/// <c>Rent 1450 1st</c> or <c>Car insurance 684 every 6 months from 9 Nov</c>.
/// </summary>
/// <remarks>
/// What a line doesn't say stays open in the draft, for the form to ask or to propose. The name is what stands before the first
/// amount behind which all can be read, so a name may hold figures of its own. The words are plain English; a way of writing of our own.
/// </remarks>
public static class ItemLine
{
    /// <summary>Reads a bill: <c>NAME AMOUNT [WHEN][, AMOUNT from DATE]...</c>.</summary>
    public static Result<BillDraft> Bill(string line, LineFacts facts) => Read(line, facts, (name, amount, words) =>
    {
        ScheduleDraft? schedule = words.IsEmpty ? null : ScheduleWords.Take(words, facts.From);
        return new BillDraft { Name = name, Amount = amount, Schedule = schedule, Later = words.Changes() };
    });

    /// <summary>Reads an income source: <c>NAME AMOUNT [WHEN][, AMOUNT from DATE]...</c>.</summary>
    public static Result<SourceDraft> Source(string line, LineFacts facts) => Read(line, facts, (name, amount, words) =>
    {
        ScheduleDraft? schedule = words.IsEmpty ? null : ScheduleWords.Take(words, facts.From);
        return new SourceDraft { Name = name, Expected = amount, Schedule = schedule, Later = words.Changes() };
    });

    /// <summary>Reads a debt: <c>NAME BALANCE [at RATE%] [min AMOUNT | min PART% [or AMOUNT]] [DAY]</c>.</summary>
    public static Result<DebtDraft> Debt(string line, LineFacts facts) => Read(line, facts, (name, amount, words) =>
    {
        var debt = new DebtDraft { Name = name, Balance = amount };
        words.TakeAny("at", "with");
        if (words.Percent() is { } rate)
        {
            debt = debt with { Rate = rate };
        }

        words.TakeAny("and", "with");
        if (words.TakeAny("min", "minimum", "at least", "least"))
        {
            debt = debt with { Minimum = Minimum(words) };
        }

        words.TakeAny("due on the", "due the", "on the", "due", "the", "on");
        return words.Day() is { } day ? debt with { Due = day } : debt;
    });

    /// <summary>
    /// Reads a pot: <c>NAME AMOUNT a week | a month | a payday</c>, <c>NAME TARGET by DATE [every ...]</c>, <c>NAME UNIT in STEPS steps
    /// [falling | even]</c>, or <c>NAME LEVEL with AMOUNT a payday</c>; then <c>in cash</c> or <c>in the account</c>, and <c>has AMOUNT</c>; but for steps what it changes to, like <c>220 from Jan 2027</c>.
    /// </summary>
    public static Result<PotDraft> Pot(string line, LineFacts facts) => Read(line, facts, (name, amount, words) =>
    {
        PotDraft pot = Kind(new PotDraft { Name = name }, amount, words);
        if (words.TakeAny("in cash", "cash"))
        {
            pot = pot with { Place = Place.Cash };
        }
        else if (words.TakeAny("in the account", "in account", "account"))
        {
            pot = pot with { Place = Place.Account };
        }

        pot = words.Take("has") ? pot with { Has = words.Amount() } : pot;
        return pot.Kind is null or PotUse.Ladder ? pot : pot with { Later = words.Changes() };
    });

    private static PotDraft Kind(PotDraft pot, decimal amount, LineWords words)
    {
        if (words.TakeAny("a week", "per week", "each week", "every week", "weekly"))
        {
            return pot with { Kind = PotUse.Spending, Amount = amount, Per = FillPer.Week };
        }

        if (words.TakeAny("a month", "per month", "each month", "every month", "monthly"))
        {
            return pot with { Kind = PotUse.Spending, Amount = amount, Per = FillPer.Month };
        }

        if (words.TakeAny("a payday", "per payday", "each payday", "every payday"))
        {
            return pot with { Kind = PotUse.Spending, Amount = amount, Per = FillPer.Payday };
        }

        if (words.Take("by"))
        {
            return Sinking(pot with { Kind = PotUse.Sinking, Target = amount, By = words.Date() }, words);
        }

        if (words.TakeAny("in", "x", "times") && words.Count() is { } steps)
        {
            words.TakeAny("steps", "step");
            LadderOrder order = words.TakeAny("falling") ? LadderOrder.Falling : words.TakeAny("even") ? LadderOrder.Even : LadderOrder.Rising;
            words.TakeAny("rising");
            return pot with { Kind = PotUse.Ladder, Unit = amount, Steps = steps, Order = order };
        }

        return words.TakeAny("with", "at") && words.Amount() is { } perPayday && words.TakeAny("a payday", "per payday", "each payday", "every payday")
            ? pot with { Kind = PotUse.Reserve, Level = amount, PerPayday = perPayday }
            : pot;
    }

    private static PotDraft Sinking(PotDraft pot, LineWords words)
    {
        int? months = words.TakeAny("every year", "yearly", "each year") ? 12
            : words.TakeAny("twice a year", "half-yearly", "every 6 months") ? 6
            : words.TakeAny("quarterly", "every 3 months") ? 3
            : null;
        return months is { } known && pot.By is { } by ? pot with { Repeats = new() { Kind = ScheduleKind.EveryMonths, Months = known, Anchor = by } } : pot;
    }

    private static MinimumDraft? Minimum(LineWords words)
    {
        if (words.Percent() is { } part)
        {
            words.TakeAny("or", "at least", "but");
            return new() { Kind = MinimumKind.Part, Percent = part, Floor = words.Amount() };
        }

        return words.Amount() is { } amount ? new() { Kind = MinimumKind.Fixed, Fixed = amount } : null;
    }

    private static Result<T> Read<T>(string line, LineFacts facts, Func<string, decimal, LineWords, T> read)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(facts);
        ImmutableArray<string> words = [.. line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)];
        LineWords? first = null;
        int change = Enumerable.Range(1, words.Length).FirstOrDefault(at => LineWords.BeginsWithAChange(Plain(words.Skip(at)), facts), words.Length);
        for (int at = 1; at < words.Length; at++)
        {
            // What an amount changes to is in no name, where another amount stands before it.
            if (change < at || (change == at && first is not null))
            {
                break;
            }

            Result<Money> amount = LineWords.AmountOf(Word(words[at]), facts);
            if (!amount.Ok)
            {
                continue;
            }

            int cut = ChangesAt(words, at + 1, facts);
            var rest = new LineWords(Plain(words[(at + 1)..cut]), Plain(words[cut..]), facts);
            T item = read(Word(string.Join(' ', words[..at])), amount.Value.ToDecimal(), rest);
            if (rest.IsRead)
            {
                return Result.Of(item);
            }

            first ??= rest;
        }

        return Result.Refused<T>(first is { } unread ? new LineFault.RestUnread(line.Trim(), unread.Rest) : new LineFault.NoAmount(line.Trim()));
    }

    // Where a comma ends what comes before a change, so that no date before it takes the amount for its year.
    private static int ChangesAt(ImmutableArray<string> words, int from, LineFacts facts)
    {
        ImmutableArray<string> plain = [.. words.Select(Word)];
        for (int at = from + 1; at < words.Length; at++)
        {
            if (words[at - 1].Length > plain[at - 1].Length && LineWords.IsChange(plain, at, facts))
            {
                return at;
            }
        }

        return words.Length;
    }

    private static IEnumerable<string> Plain(IEnumerable<string> words) => words.Select(Word).Where(word => word.Length > 0);

    // What parts the words is none of them.
    private static string Word(string word) => word.TrimEnd(',', ';');
}
