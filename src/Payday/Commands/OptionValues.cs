using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Options and arguments that take a date, a count or one of some words, and say what is wrong with anything else.</summary>
internal static class OptionValues
{
    /// <summary>An option that takes a date; see <see cref="TypedDate"/>.</summary>
    public static Option<LocalDate?> Date(string name, string description) =>
        new(name) { Description = description, HelpName = "DATE", CustomParser = token => Value(token, text => TypedDate.Parse(text)) };

    /// <summary>An option that takes a whole number in a range.</summary>
    public static Option<int?> Count(string name, string description, int least, int most) =>
        new(name) { Description = description, HelpName = "N", CustomParser = token => Value(token, text => ReadCount(text, least, most)) };

    /// <summary>An option that takes whole numbers in a range, one each time it is given.</summary>
    public static Option<int[]> Counts(string name, string description, int least, int most, string helpName) => new(name)
    {
        Description = description,
        HelpName = helpName,
        CustomParser = tokens => [.. tokens.Tokens.Select(token => Value(tokens, token.Value, text => ReadCount(text, least, most)))],
    };

    /// <summary>Lets an option take only some words, and offers them where the shell completes.</summary>
    public static void LimitTo(this Option option, params string[] words)
    {
        option.CompletionSources.Add(words);
        option.Validators.Add(result => RefuseOthers(result, option.Name, result.Tokens, words));
    }

    /// <summary>Lets an argument take only some words, and offers them where the shell completes.</summary>
    public static void LimitTo(this Argument argument, params string[] words)
    {
        argument.CompletionSources.Add(words);
        argument.Validators.Add(result => RefuseOthers(result, argument.Name, result.Tokens, words));
    }

    private static T? Value<T>(ArgumentResult result, Func<string, Result<T>> read)
        where T : struct => Value(result, result.Tokens[0].Value, read);

    private static T Value<T>(ArgumentResult result, string text, Func<string, Result<T>> read)
        where T : struct
    {
        Result<T> value = read(text);
        if (!value.Ok)
        {
            result.AddError($"{((OptionResult)result.Parent!).Option.Name} {text}: {FaultTexts.Of(value.Fault)}");
        }

        return value.Value;
    }

    private static Result<int> ReadCount(string text, int least, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count >= least && count <= most
            ? Result.Of(count)
            : Result.Refused<int>(new ArgumentFault.NoWholeNumber(least, most));

    private static void RefuseOthers(SymbolResult result, string name, IEnumerable<Token> tokens, string[] words)
    {
        foreach (Token token in tokens.Where(token => !words.Contains(token.Value)))
        {
            result.AddError($"{name} {token.Value}: write {string.Join(", ", words[..^1])} or {words[^1]}.");
        }
    }
}
