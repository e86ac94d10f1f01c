using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Core.ItemLines;

/// <summary>The words of a line behind its name: figures, days and dates are taken from their front.</summary>
internal sealed class LineWords
{
    private static readonly string[] Nths = ["first", "second", "third", "fourth", "fifth"];

    private readonly LineFacts facts;
    private ImmutableArray<string> words;
    private ImmutableArray<string> changes;

    /// <param name="words">The words.</param>
    /// <param name="changes">Those behind them that say what the amount changes to, told by the comma before them; they are read by themselves.</param>
    /// <param name="facts">The household.</param>
    public LineWords(IEnumerable<string> words, IEnumerable<string> changes, LineFacts facts) =>
        (this.facts, this.words, this.changes) = (facts, [.. words], [.. changes]);

    /// <summary>Whether nothing is left of what isn't a change.</summary>
    public bool IsEmpty => words.IsEmpty;

    /// <summary>Whether nothing is left at all.</summary>
    public bool IsRead => words.IsEmpty && changes.IsEmpty;

    /// <summary>What is left, as it was written.</summary>
    public string Rest => string.Join(' ', words.Concat(changes));

    /// <summary>What can be read two ways, the first of them; null where all is plain.</summary>
    public Doubt? Doubt { get; private set; }

    /// <summary>The word at the front as it was written; empty where none is left.</summary>
    public string Front => words.IsEmpty ? "" : words[0];

    /// <summary>The words as they are now, to come back to.</summary>
    public ImmutableArray<string> Now
    {
        get => words;
        set => words = value;
    }

    /// <summary>How many words are left of what isn't a change.</summary>
    public int Left => words.Length;

    /// <summary>Notes what can be read two ways.</summary>
    public void Ask(string part, string one, string other) => Doubt ??= new Doubt(part, one, other);

    /// <summary>Whether words stand at the front, whatever their case.</summary>
    public bool Begins(params ReadOnlySpan<string> wanted)
    {
        ImmutableArray<string> before = words;
        bool isThere = Take(wanted);
        words = before;
        return isThere;
    }

    /// <summary>Whether some words are a day of the month and nothing else.</summary>
    public bool IsADay(ImmutableArray<string> some)
    {
        ImmutableArray<string> before = words;
        words = some;
        bool isDay = Day() is not null && words.IsEmpty;
        words = before;
        return isDay;
    }

    /// <summary>Takes words where they stand at the front, whatever their case.</summary>
    public bool Take(params ReadOnlySpan<string> wanted)
    {
        for (int i = 0; i < wanted.Length; i++)
        {
            if (i >= words.Length || !Is(words[i], wanted[i]))
            {
                return false;
            }
        }

        words = words[wanted.Length..];
        return true;
    }

    /// <summary>Takes one of several words, or none.</summary>
    public bool TakeAny(params ReadOnlySpan<string> wanted)
    {
        foreach (string word in wanted)
        {
            if (Take(word.Split(' ')))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes an amount, zero or more.</summary>
    public decimal? Amount()
    {
        if (words.IsEmpty || !AmountOf(words[0], facts).Ok)
        {
            return null;
        }

        decimal amount = AmountOf(words[0], facts).Value.ToDecimal();
        words = words[1..];
        return amount;
    }

    /// <summary>Takes a percentage as a fraction: <c>23.49%</c> or <c>23.49 %</c>.</summary>
    public decimal? Percent()
    {
        bool isApart = words.Length > 1 && words[1] == "%";
        if (words.IsEmpty || (!isApart && !words[0].EndsWith('%')))
        {
            return null;
        }

        string plain = facts.Numbers.DecimalMark == "," ? words[0].TrimEnd('%').Replace(',', '.') : words[0].TrimEnd('%');
        if (!decimal.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal percent))
        {
            return null;
        }

        words = words[(isApart ? 2 : 1)..];
        return percent / 100;
    }

    /// <summary>Takes a whole number, in figures or as a small word.</summary>
    public int? Count()
    {
        if (words.IsEmpty)
        {
            return null;
        }

        int at = Array.IndexOf(["one", "two", "three", "four", "five", "six"], words[0].ToLowerInvariant());
        if (at < 0 && !(words[0].All(char.IsAsciiDigit) && words[0].Length <= 4))
        {
            return null;
        }

        int count = at >= 0 ? at + 1 : int.Parse(words[0], NumberStyles.None, CultureInfo.InvariantCulture);
        words = words[1..];
        return count;
    }

    /// <summary>Takes a count of weeks or months, such as <c>every 6 months</c>, <c>2 weeks</c> or <c>6m</c>: how many, and whether they are months.</summary>
    public (int Count, bool Months)? Rhythm()
    {
        ImmutableArray<string> before = words;
        TakeAny("every", "each");
        string front = Front.ToLowerInvariant();
        if (front.Length > 1 && front[^1] is 'w' or 'm' && front[..^1].All(char.IsAsciiDigit) && front.Length <= 4)
        {
            words = words.SetItem(0, front[..^1]).Insert(1, front[^1..]);
        }

        if (Count() is { } count and > 0)
        {
            if (count <= HouseholdLimits.MostWeeks && TakeAny("weeks", "week", "w"))
            {
                return (count, false);
            }

            if (count <= HouseholdLimits.MostMonths && TakeAny("months", "month", "m"))
            {
                return (count, true);
            }
        }

        words = before;
        return null;
    }

    /// <summary>The weekday after a number or a word like <c>second</c> at the front; null where none stands there.</summary>
    public IsoDayOfWeek? PeekNthWeekday() => words.Length > 1 && NthOf(words[0]) is <= MonthDay.LastNth ? Weekday(words[1]) : null;

    /// <summary>Takes a day of the month: <c>1st</c>, <c>15</c>, <c>last</c>, <c>last working day</c>, <c>2nd Friday</c>.</summary>
    public MonthDay? Day()
    {
        if (TakeAny("last working day", "last workday"))
        {
            return new MonthDay.LastWorkingDay();
        }

        if (TakeAny("first working day", "first workday"))
        {
            return new MonthDay.FirstWorkingDay();
        }

        if (words.Length > 1 && Is(words[0], "last") && Weekday(words[1]) is { } lastOne)
        {
            words = words[2..];
            return new MonthDay.NthWeekday(MonthDay.LastNth, lastOne);
        }

        if (words.Length > 1 && NthOf(words[0]) is { } nth and <= MonthDay.LastNth && Weekday(words[1]) is { } weekday)
        {
            words = words[2..];
            return new MonthDay.NthWeekday(nth, weekday);
        }

        if (TakeAny("last day", "last", "end", "month-end"))
        {
            return new MonthDay.Last();
        }

        if (words.IsEmpty || NthOf(words[0]) is not { } day || day > MonthDay.LastDay || (words.Length > 1 && Month(words[1])))
        {
            return null;
        }

        words = words[1..];
        return new MonthDay.Numbered(day);
    }

    /// <summary>Takes a weekday.</summary>
    public IsoDayOfWeek? Weekday()
    {
        if (words.IsEmpty || Weekday(words[0]) is not { } day)
        {
            return null;
        }

        words = words[1..];
        return day;
    }

    /// <summary>Takes the day by which something must be there: a date, or a month, whose first day it is.</summary>
    public LocalDate? ByDate()
    {
        if (Date() is { } date)
        {
            return date;
        }

        if (MonthAlone() is { } month)
        {
            return month;
        }

        Result<LocalDate> first = words.IsEmpty ? Result.Refused<LocalDate>(new DateFault.NotADate()) : Next("1 " + words[0]);
        if (!first.Ok)
        {
            return null;
        }

        words = words[1..];
        return first.Value;
    }

    /// <summary>Takes a date; one without a year is the next one.</summary>
    public LocalDate? Date()
    {
        if (InFigures() is { } figures)
        {
            return figures;
        }

        for (int length = Math.Min(4, words.Length); length > 0; length--)
        {
            string text = string.Join(' ', words[..length].Select(word => NthOf(word) is { } day && !word.All(char.IsAsciiDigit) ? day.ToString(CultureInfo.InvariantCulture) : word));
            Result<LocalDate> date = TypedDate.Parse(text, order: facts.Order);
            if (!date.Ok && date.Fault is DateFault.YearMissing)
            {
                date = Next(text);
            }

            if (date.Ok)
            {
                words = words[length..];
                return date.Value;
            }
        }

        return null;
    }

    /// <summary>Takes what the amount changes to: <c>1480 from Jan 2027</c>, one or more; null where none stands there.</summary>
    public ImmutableArray<LaterDraft>? Changes()
    {
        var taken = ImmutableArray.CreateBuilder<LaterDraft>();
        while (Change() is { } change)
        {
            taken.Add(change);
        }

        if (words.IsEmpty)
        {
            (words, changes) = (changes, []);
            while (Change() is { } change)
            {
                taken.Add(change);
            }
        }

        return taken.Count == 0 ? null : taken.ToImmutable();
    }

    private LaterDraft? Change()
    {
        ImmutableArray<string> before = words;
        if (IsChange(words, 0, facts) && Amount() is { } amount && Take("from") && (MonthAlone() ?? Date()) is { } date)
        {
            return new LaterDraft { From = date, Amount = amount };
        }

        words = before;
        return null;
    }

    private LocalDate? MonthAlone()
    {
        if (words.Length < 2 || TypedDate.Month($"{words[0]} {words[1]}") is not { } month)
        {
            return null;
        }

        words = words[2..];
        return month.OnDayOfMonth(1);
    }

    /// <summary>Whether an amount and <c>from</c> stand at a place of some words.</summary>
    public static bool IsChange(ImmutableArray<string> words, int at, LineFacts facts) =>
        at + 1 < words.Length && Is(words[at + 1], "from") && AmountOf(words[at], facts).Ok;

    /// <summary>Whether words begin with what an amount changes to.</summary>
    public static bool BeginsWithAChange(IEnumerable<string> words, LineFacts facts) => new LineWords(words, [], facts).Change() is not null;

    /// <summary>A word as an amount; a currency sign or code on it is left out.</summary>
    public static Result<Money> AmountOf(string word, LineFacts facts)
    {
        string plain = string.Concat(word.Where(letter => char.GetUnicodeCategory(letter) != UnicodeCategory.CurrencySymbol));
        return plain.StartsWith('-') || plain.Length == 0 || !plain.Any(char.IsAsciiDigit)
            ? Result.Refused<Money>(new LineFault.NoAmount(word))
            : Money.Parse(plain, facts.Currency, facts.Numbers);
    }

    // A day and a month, such as 9/11, without a year.
    private LocalDate? InFigures()
    {
        // With a point it is an amount where numbers have one, and where it changes to that.
        bool isPointed = Front.TrimEnd('.').Contains('.', StringComparison.Ordinal);
        string[] parts = Front.TrimEnd('.').Split(['/', '.']);
        if (parts.Length != 2 || (isPointed && (facts.Numbers.DecimalMark == "." || IsChange(words, 0, facts))) || parts.Any(part => part.Length is 0 or > 2 || !part.All(char.IsAsciiDigit)))
        {
            return null;
        }

        int[] figures = [.. parts.Select(part => int.Parse(part, NumberStyles.None, CultureInfo.InvariantCulture))];
        LocalDate? dayFirst = Next(figures[0], figures[1]);
        LocalDate? monthFirst = Next(figures[1], figures[0]);
        LocalDate? date = facts.Order switch
        {
            DateOrder.DayFirst => dayFirst ?? monthFirst,
            DateOrder.MonthFirst => monthFirst ?? dayFirst,
            _ => dayFirst ?? monthFirst,
        };
        if (facts.Order == DateOrder.Unknown && dayFirst is { } one && monthFirst is { } other && one != other)
        {
            Ask(Front, ItemText.DayAndMonth(one), ItemText.DayAndMonth(other));
        }

        words = date is null ? words : words[1..];
        return date;
    }

    private LocalDate? Next(int day, int month)
    {
        if (month is < 1 or > 12)
        {
            return null;
        }

        Result<LocalDate> date = Next($"{day} {CultureInfo.InvariantCulture.DateTimeFormat.MonthNames[month - 1]}");
        return date.Ok ? date.Value : null;
    }

    // The latest such day within the year to come is the next one.
    private Result<LocalDate> Next(string text) => TypedDate.Parse(text, facts.From.PlusYears(1).PlusDays(-1));

    private static int? NthOf(string word)
    {
        string lower = word.ToLowerInvariant();
        int named = Array.IndexOf(Nths, lower);
        if (named >= 0)
        {
            return named + 1;
        }

        string digits = lower.Length > 2 && lower[^2..] is "st" or "nd" or "rd" or "th" ? lower[..^2] : lower;
        return digits.Length is 1 or 2 && digits.All(char.IsAsciiDigit) && int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture) is > 0 and var day ? day : null;
    }

    private static bool Month(string word) => word.Length >= 3
        && CultureInfo.InvariantCulture.DateTimeFormat.MonthNames.Any(name => name.StartsWith(word, StringComparison.OrdinalIgnoreCase));

    private static IsoDayOfWeek? Weekday(string word) => word.Length < 3
        ? null
        : Enumerable.Range(1, 7).Select(day => (IsoDayOfWeek?)day)
            .FirstOrDefault(day => day!.Value.ToString().StartsWith(word.TrimEnd('s'), StringComparison.OrdinalIgnoreCase));

    private static bool Is(string word, string wanted) => string.Equals(word, wanted, StringComparison.OrdinalIgnoreCase);
}
