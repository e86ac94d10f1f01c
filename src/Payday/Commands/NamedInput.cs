using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>What is written as <c>NAME=VALUE</c> or <c>NAME@DATE=VALUE</c>.</summary>
/// <param name="Given">The option and what was given, for refusals.</param>
/// <param name="Name">The name; of what was typed, the ends without blanks.</param>
/// <param name="Day">The day behind the name, or null.</param>
/// <param name="Value">What stands behind the last equals sign; empty where there is none.</param>
internal sealed record NamedInput(string Given, string Name, LocalDate? Day, string Value)
{
    /// <summary>Reads one; a name may hold an equals sign, what stands behind it can't, so the last one parts them.</summary>
    /// <param name="option">The option.</param>
    /// <param name="text">What was given.</param>
    /// <param name="like">A right one, for refusals.</param>
    public static Result<NamedInput> Read(string option, string text, string like)
    {
        int at = text.LastIndexOf('=');
        return at <= 0 || text[(at + 1)..].Trim().Length == 0 || text[..at].Trim().Length == 0
            ? Result.Refused<NamedInput>(new ArgumentFault.NoPair($"{option} {text}", like))
            : Result.Of(Of($"{option} {text}", text[..at], text[(at + 1)..].Trim()));
    }

    /// <summary>One without a value.</summary>
    public static NamedInput Alone(string option, string text) => Of($"{option} {text}", text, "");

    /// <summary>Reads notes for a pot, such as <c>Food=20=2,10=1</c>; they hold equals signs as names may, so that the longest name of a pot at the beginning is meant.</summary>
    /// <param name="household">The household.</param>
    /// <param name="option">The option.</param>
    /// <param name="text">What was given.</param>
    /// <param name="like">A right one, for refusals.</param>
    public static Result<NamedInput> OfNotes(Household household, string option, string text, string like)
    {
        string trimmed = text.TrimStart();
        Pot? longest = household.Pots
            .Where(pot => trimmed.StartsWith(pot.Name, StringComparison.OrdinalIgnoreCase) && trimmed[pot.Name.Length..].TrimStart() is ['=' or '@', ..])
            .MaxBy(pot => pot.Name.Length);
        int at = trimmed.IndexOf('=', longest?.Name.Length ?? 0);
        return at <= 0
            ? Result.Refused<NamedInput>(new ArgumentFault.NoPair($"{option} {text}", like))
            : Result.Of(Of($"{option} {text}", trimmed[..at], trimmed[(at + 1)..].Trim()));
    }

    /// <summary>Whether the value is a word, whatever the case.</summary>
    public bool Is(string word) => string.Equals(Value, word, StringComparison.OrdinalIgnoreCase);

    /// <summary>The one of some things that has the name, whatever the case, or that has it as its id.</summary>
    /// <param name="all">The things, with what a person calls them and their ids.</param>
    /// <param name="kind">What they are, such as a bill or a pot.</param>
    public Result<T> Among<T>(IEnumerable<(T Thing, string Name, string Id)> all, string kind)
    {
        (T Thing, string Name, string Id)[] known = [.. all];
        (T Thing, string Name, string Id)[] found = [.. known.Where(one => string.Equals(one.Name, Name, StringComparison.OrdinalIgnoreCase))];
        found = found.Length > 0 ? found : [.. known.Where(one => one.Id == Name)];
        return found.Length switch
        {
            1 => Result.Of(found[0].Thing),
            0 => Result.Refused<T>(new ArgumentFault.NoSuchName(Given, kind, Name, NearNames.Of(known.Select(one => one.Name), Name))),
            _ => Result.Refused<T>(new ArgumentFault.SeveralOfName(Given, Name)),
        };
    }

    /// <summary>The one of some parts whose day is named; where none is, the only one.</summary>
    /// <param name="parts">At least one.</param>
    /// <param name="name">What they are of.</param>
    /// <param name="day">The day of a part.</param>
    /// <param name="like">How one is written, from a day.</param>
    public Result<T> OnDay<T>(ImmutableArray<T> parts, string name, Func<T, LocalDate> day, Func<string, string> like)
    {
        ImmutableArray<T> found = Day is { } named ? [.. parts.Where(part => day(part) == named)] : parts;
        return found.Length == 1
            ? Result.Of(found[0])
            : Result.Refused<T>(new ArgumentFault.WhichDay(Given, name, like(NodaTime.Text.LocalDatePattern.Iso.Format(day(parts[^1]))), [.. parts.Select(day).Distinct()]));
    }

    // A name may hold the sign too: only what reads as a date is one.
    private static NamedInput Of(string given, string name, string value)
    {
        int at = name.LastIndexOf('@');
        return at > 0 && TypedDate.Parse(name[(at + 1)..].Trim()) is { Ok: true, Value: var day }
            ? new(given, name[..at].Trim(), day, value)
            : new(given, name.Trim(), null, value);
    }
}
