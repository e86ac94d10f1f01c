using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Store.Fields;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Reads <c>--income "Name=AMOUNT"</c> and <c>--one-off "Name=AMOUNT"</c> into a draft.</summary>
internal static class IncomeInput
{
    private const string Income = "--income";
    private const string OneOff = "--one-off";
    private const int LongestName = 60;

    /// <summary>The draft with what came in from the household's sources.</summary>
    /// <returns>The draft; or what is wrong with the first that can't be taken.</returns>
    public static Result<RoutineDraft> Sources(Book book, RoutineDraft draft, IEnumerable<string> incomes)
    {
        var told = new HashSet<SourceId>();
        foreach (string income in incomes)
        {
            Result<NamedAmount> read = Pair(book, Income, income);
            if (!read.Ok)
            {
                return Result.Refused<RoutineDraft>(read.Fault);
            }

            if (Source(book.Household, read.Value.Name) is not { } source)
            {
                return Result.Refused<RoutineDraft>(Unknown(book.Household, $"{Income} {income}", read.Value.Name));
            }

            if (!told.Add(source.Id))
            {
                return Result.Refused<RoutineDraft>(new ArgumentFault.SourceTwice($"{Income} {income}", source.Name));
            }

            draft = draft with { Incomes = draft.Incomes.SetItem(source.Id, read.Value.Amount) };
        }

        return Result.Of(draft);
    }

    /// <summary>The draft with what came in once, from no source.</summary>
    /// <returns>The draft; or what is wrong with the first that can't be taken.</returns>
    public static Result<RoutineDraft> OneOffs(Book book, RoutineDraft draft, IEnumerable<string> oneOffs)
    {
        var told = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (string oneOff in oneOffs)
        {
            Result<NamedAmount> read = Pair(book, OneOff, oneOff);
            if (!read.Ok)
            {
                return Result.Refused<RoutineDraft>(read.Fault);
            }

            (string name, Money amount) = read.Value;
            if (Source(book.Household, name) is { } source)
            {
                return Result.Refused<RoutineDraft>(new ArgumentFault.IsSource($"{OneOff} {oneOff}", source.Name));
            }

            if (!told.Add(name))
            {
                return Result.Refused<RoutineDraft>(new ArgumentFault.OneOffTwice($"{OneOff} {oneOff}", name));
            }

            string known = draft.OneOffs.Keys.FirstOrDefault(key => string.Equals(key, name, StringComparison.OrdinalIgnoreCase)) ?? name;
            draft = draft with { OneOffs = draft.OneOffs.SetItem(known, amount) };
        }

        return Result.Of(draft);
    }

    private static Result<NamedAmount> Pair(Book book, string option, string text)
    {
        // A name may hold an equals sign, an amount can't: the last one parts them.
        int at = text.LastIndexOf('=');
        string name = at < 0 ? "" : text[..at].Trim();
        if (name.Length is 0 or > LongestName || name.Any(char.IsControl))
        {
            return Result.Refused<NamedAmount>(new ArgumentFault.NoNamedAmount($"{option} {text}", LongestName));
        }

        Result<Money> amount = CommandInput.Amount($"{option} {name}", text[(at + 1)..], book.Household.Currency, book.Household.Settings.Numbers);
        return amount.Ok ? Result.Of(new NamedAmount(name, amount.Value)) : Result.Refused<NamedAmount>(amount.Fault);
    }

    private static IncomeSource? Source(Household household, string name) =>
        household.Sources.FirstOrDefault(known => string.Equals(known.Name, name, StringComparison.OrdinalIgnoreCase));

    private static ArgumentFault.NoSuchSource Unknown(Household household, string given, string name) =>
        new(given, name, NearNames.Of(household.Sources.Select(source => source.Name), name));

    private sealed record NamedAmount(string Name, Money Amount);
}
