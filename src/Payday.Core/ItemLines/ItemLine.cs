using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
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
/// amount behind which all can be read, so a name may hold figures of its own; one in quotes (<c>"Club 12" 20</c>) is taken as it stands. What can
/// be read two ways is refused with both. The words are plain English; a way of writing of our own. <see cref="ItemText"/> writes them.
/// </remarks>
public static class ItemLine
{
    private const string Steps = "..";

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
        if (words.TakeAny("min", "minimum", "at least", "least") || IsMinimum(words, debt.Rate is not null))
        {
            debt = debt with { Minimum = Minimum(words) };
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
        PotDraft pot = Kind(new PotDraft { Name = name }, amount, words, facts);
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

    private static PotDraft Kind(PotDraft pot, decimal amount, LineWords words, LineFacts facts)
    {
        if (Per(words) is { } per)
        {
            return pot with { Kind = PotUse.Spending, Amount = amount, Per = per };
        }

        if (words.Front.StartsWith(Steps, StringComparison.Ordinal))
        {
            return Stairs(pot, amount, words, facts);
        }

        bool isEven = words.TakeAny("x", "times");
        if ((isEven || (words.Begins("in") && !words.Begins("in", "cash") && !words.Begins("in", "the") && !words.Begins("in", "account") && words.Take("in"))) && words.Count() is { } steps)
        {
            words.TakeAny("steps", "step");
            LadderOrder order = words.TakeAny("falling") ? LadderOrder.Falling
                : words.TakeAny("even") ? LadderOrder.Even
                : words.TakeAny("rising") || !isEven ? LadderOrder.Rising
                : LadderOrder.Even;
            return pot with { Kind = PotUse.Ladder, Unit = amount, Steps = steps, Order = order };
        }

        if (words.TakeAny("with", "at") && words.Amount() is { } perPayday)
        {
            words.TakeAny("a payday", "per payday", "each payday", "every payday", "p");
            return pot with { Kind = PotUse.Reserve, Level = amount, PerPayday = perPayday };
        }

        bool isNamed = words.Take("by");
        return words.ByDate() is { } by ? Sinking(pot with { Kind = PotUse.Sinking, Target = amount, By = by }, words, facts)
            : isNamed ? pot with { Kind = PotUse.Sinking, Target = amount }
            : pot;
    }

    private static FillPer? Per(LineWords words)
    {
        if (words.TakeAny("a week", "per week", "each week", "every week", "weekly", "w"))
        {
            return FillPer.Week;
        }

        if (words.TakeAny("a month", "per month", "each month", "every month", "monthly", "m"))
        {
            return words.TakeAny("spread") ? FillPer.MonthSpread : FillPer.Month;
        }

        return words.TakeAny("a payday", "per payday", "each payday", "every payday", "p") ? FillPer.Payday : null;
    }

    // 1..20 are twenty steps of 1, 20..1 the same from the highest down, 5..100 twenty steps of 5.
    private static PotDraft Stairs(PotDraft pot, decimal first, LineWords words, LineFacts facts)
    {
        Result<Money> last = LineWords.AmountOf(words.Front[Steps.Length..], facts);
        decimal to = last.Ok ? last.Value.ToDecimal() : 0;
        decimal unit = Math.Min(first, to);
        decimal most = Math.Max(first, to);
        if (unit <= 0 || unit == most || most % unit != 0 || most / unit > HouseholdLimits.MostSteps)
        {
            return pot;
        }

        words.Now = words.Now.RemoveAt(0);
        words.TakeAny("ladder", "steps");
        return pot with { Kind = PotUse.Ladder, Unit = unit, Steps = (int)(most / unit), Order = first < to ? LadderOrder.Rising : LadderOrder.Falling };
    }

    private static PotDraft Sinking(PotDraft pot, LineWords words, LineFacts facts)
    {
        if (words.Take("again"))
        {
            return pot with { Repeats = ScheduleWords.Take(words, facts.From) };
        }

        int? months = words.TakeAny("every year", "yearly", "each year", "y") ? 12
            : words.TakeAny("twice a year", "half-yearly", "half yearly") ? 6
            : words.TakeAny("quarterly", "every quarter", "q") ? 3
            : null;
        ScheduleKind kind = months == 12 ? ScheduleKind.Yearly : ScheduleKind.EveryMonths;
        if (months is null && words.Rhythm() is (var count, true))
        {
            (months, kind) = (count, count == 12 ? ScheduleKind.Yearly : ScheduleKind.EveryMonths);
        }

        return months is { } known ? pot with { Repeats = new() { Kind = kind, Months = kind == ScheduleKind.Yearly ? null : known, Anchor = pot.By } } : pot;
    }

    // Behind a rate, a percentage or an amount is a minimum; a lone figure that could be a day too is asked about.
    private static bool IsMinimum(LineWords words, bool hasRate)
    {
        if (!hasRate || words.Left == 0)
        {
            return false;
        }

        ImmutableArray<string> before = words.Now;
        bool isPart = words.Percent() is not null;
        words.Now = before;
        bool isAmount = words.Amount() is not null;
        bool isLast = words.Left == 0;
        words.Now = before;
        bool isDay = words.Day() is not null;
        words.Now = before;
        if (isAmount && isDay && isLast)
        {
            words.Ask(words.Front, $"min {words.Front}", $"on the {ItemText.Nth(int.Parse(words.Front, NumberStyles.None, CultureInfo.InvariantCulture))}");
        }

        return isPart || (isAmount && !(isDay && isLast));
    }

    private static MinimumDraft? Minimum(LineWords words)
    {
        if (words.Percent() is { } part)
        {
            bool? plus = words.TakeAny("plus interest", "and interest", "+ interest") ? true : null;
            bool isSaid = words.TakeAny("or", "at least", "but at least", "but");
            ImmutableArray<string> before = words.Now;
            decimal? least = words.Amount();
            if (!isSaid && least is not null && words.Left == 0 && before.Length == 1 && words.IsADay(before))
            {
                // The last figure alone is the day: there may be no least.
                words.Now = before;
                least = null;
            }

            return new() { Kind = MinimumKind.Part, Percent = part, PlusInterest = plus, Floor = least ?? 0 };
        }

        return words.Amount() is { } amount ? new() { Kind = MinimumKind.Fixed, Fixed = amount } : null;
    }

    private static Result<T> Read<T>(string line, LineFacts facts, Func<string, decimal, LineWords, T> read)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(facts);
        (string? quoted, string rest) = Quoted(line);
        ImmutableArray<string> words = Words(rest, facts, typeof(T) == typeof(PotDraft));
        int first = quoted is null ? 1 : 0;
        int last = quoted is null ? words.Length : Math.Min(1, words.Length);
        LineWords? unread = null;
        int change = Enumerable.Range(1, words.Length).FirstOrDefault(at => LineWords.BeginsWithAChange(Plain(words.Skip(at)), facts), words.Length);
        for (int at = first; at < last; at++)
        {
            // What an amount changes to is in no name, where another amount stands before it.
            if (change < at || (change == at && unread is not null))
            {
                break;
            }

            Result<Money> amount = LineWords.AmountOf(Word(words[at]), facts);
            if (!amount.Ok)
            {
                continue;
            }

            int cut = ChangesAt(words, at + 1, facts);
            var behind = new LineWords(Plain(words[(at + 1)..cut]), Plain(words[cut..]), facts);
            T item = read(quoted ?? Word(string.Join(' ', words[..at])), amount.Value.ToDecimal(), behind);
            if (behind.IsRead)
            {
                return behind.Doubt is { } doubt ? Result.Refused<T>(new LineFault.TwoWays(line.Trim(), doubt.Part, doubt.One, doubt.Other)) : Result.Of(item);
            }

            unread ??= behind;
        }

        return Result.Refused<T>(unread is { } left ? new LineFault.RestUnread(line.Trim(), left.Rest) : new LineFault.NoAmount(line.Trim()));
    }

    // A name in quotes may hold anything; a quote in it is written twice.
    private static (string? Name, string Behind) Quoted(string line)
    {
        string text = line.TrimStart();
        if (!text.StartsWith('"'))
        {
            return (null, line);
        }

        for (int at = 1; at < text.Length; at++)
        {
            if (text[at] != '"')
            {
                continue;
            }

            if (at + 1 < text.Length && text[at + 1] == '"')
            {
                at++;
                continue;
            }

            return at == 1 ? (null, line) : (text[1..at].Replace("\"\"", "\"", StringComparison.Ordinal), text[(at + 1)..]);
        }

        return (null, line);
    }

    private static ImmutableArray<string> Words(string text, LineFacts facts, bool hasSteps)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (string word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            int steps = hasSteps ? word.IndexOf(Steps, StringComparison.Ordinal) : -1;
            if (steps > 0 && LineWords.AmountOf(word[..steps], facts).Ok)
            {
                words.Add(word[..steps]);
                words.Add(word[steps..]);
            }
            else if (facts.Numbers.GroupMark == " " && words.Count > 1 && IsGroup(word) && words[^1].Length <= 3 && words[^1].All(char.IsAsciiDigit))
            {
                // Where thousands are parted by a blank, 1 450,00 is one amount.
                words[^1] += " " + word;
            }
            else
            {
                words.Add(word);
            }
        }

        return words.ToImmutable();
    }

    private static bool IsGroup(string word)
    {
        string plain = Word(word);
        int mark = plain.IndexOf(',', StringComparison.Ordinal);
        string whole = mark < 0 ? plain : plain[..mark];
        return whole.Length == 3 && whole.All(char.IsAsciiDigit) && plain[(mark < 0 ? plain.Length : mark + 1)..].All(char.IsAsciiDigit);
    }

    // Where a comma ends what comes before a change, so that no date before it takes the amount for its year.
    private static int ChangesAt(ImmutableArray<string> words, int from, LineFacts facts)
    {
        ImmutableArray<string> plain = [.. words.Select(Word)];
        for (int at = from; at < words.Length; at++)
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
