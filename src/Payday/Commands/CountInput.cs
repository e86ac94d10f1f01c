using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Lists;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Reads <c>POT=LEFT</c>, <c>--move POT=TARGET</c>, <c>--missing</c> and <c>--found</c> into a count.</summary>
internal static class CountInput
{
    /// <summary>What is left of each pot: an amount or a sum in the household's own way to write numbers.</summary>
    public static Result<CountDraft> Left(Book book, CountDraft draft, IEnumerable<string> pairs)
    {
        Household household = book.Household;
        foreach (string text in pairs)
        {
            if (PotInput.Pair(text) is not var (name, left))
            {
                return Result.Refused<CountDraft>(new ArgumentFault.NoCount(text));
            }

            Result<Pot> pot = CashPot(household, name);
            if (!pot.Ok)
            {
                return Result.Refused<CountDraft>(pot.Fault);
            }

            Result<Money> amount = Money.ParseSum(left, household.Currency, household.Settings.Numbers);
            if (!amount.Ok)
            {
                return Result.Refused<CountDraft>(new ArgumentFault.Of(name, amount.Fault));
            }

            draft = draft.With(pot.Value.Id, new CountEntry(amount.Value));
        }

        return Result.Of(draft);
    }

    /// <summary>What is left of each pot, note by note: all that lies in it, with what it has to pay back.</summary>
    public static Result<CountDraft> Notes(Book book, CountDraft draft, IEnumerable<string> texts)
    {
        foreach (string text in texts)
        {
            Result<CountDraft> counted = NamedInput.OfNotes(book.Household, "--notes", text, "Food=20=2,5=1.").Then(named => CashPot(book.Household, named.Name).Then(pot =>
                (named.Is("none") ? Result.Of(Core.Cash.Notes.None) : NoteList.Read(book.Household, named.Value))
                    .Map(notes => draft.With(pot.Id, new CountEntry(Money.Zero(book.Household.Currency)) { Notes = notes }))));
            if (!counted.Ok)
            {
                return counted;
            }

            draft = counted.Value;
        }

        return Result.Of(draft);
    }

    /// <summary>Where what is left goes: another pot, a debt, the buffer, or nowhere.</summary>
    public static Result<CountDraft> Moves(Book book, CountDraft draft, IEnumerable<string> pairs) => Each(book, draft, "--move", pairs, (entry, text) =>
    {
        Result<CountThen> then = Then(book.Household, text.Trim());
        return then.Ok ? Result.Of(entry with { Then = then.Value }) : Result.Refused<CountEntry>(then.Fault);
    });

    /// <summary>What is missing, or found beyond what was there, with the name that it is kept by.</summary>
    public static Result<CountDraft> Differences(Book book, CountDraft draft, IEnumerable<string> missing, IEnumerable<string> found, string name)
    {
        Result<CountDraft> less = Each(book, draft, "--missing", missing, (entry, text) =>
        {
            Result<Money> amount = Money.ParseSum(text, book.Household.Currency, book.Household.Settings.Numbers);
            return amount.Ok ? Result.Of(entry with { Missing = amount.Value, DifferenceName = name }) : Result.Refused<CountEntry>(new ArgumentFault.Of("--missing", amount.Fault));
        });
        return less.Ok
            ? Each(book, less.Value, "--found", found.Select(pot => pot + "="), (entry, _) => Result.Of(entry with { IsFind = true, DifferenceName = name }))
            : less;
    }

    private static Result<CountDraft> Each(
        Book book, CountDraft draft, string option, IEnumerable<string> pairs, Func<CountEntry, string, Result<CountEntry>> change)
    {
        foreach (string text in pairs)
        {
            if (PotInput.Pair(text) is not var (name, value))
            {
                return Result.Refused<CountDraft>(new ArgumentFault.NoPair($"{option} {text}", $"{option} Food=..."));
            }

            Result<Pot> pot = CashPot(book.Household, name);
            if (!pot.Ok)
            {
                return Result.Refused<CountDraft>(new ArgumentFault.Of(option, pot.Fault));
            }

            if (draft.Entries.GetValueOrDefault(pot.Value.Id) is not { } entry)
            {
                return Result.Refused<CountDraft>(new ArgumentFault.LeftNotGiven($"{option} {text}", pot.Value.Name));
            }

            Result<CountEntry> changed = change(entry, value);
            if (!changed.Ok)
            {
                return Result.Refused<CountDraft>(changed.Fault);
            }

            draft = draft.With(pot.Value.Id, changed.Value);
        }

        return Result.Of(draft);
    }

    private static Result<CountThen> Then(Household household, string text)
    {
        if (string.Equals(text, "stays", StringComparison.OrdinalIgnoreCase))
        {
            return Result.Of(CountThen.Stays);
        }

        Result<PotOrBuffer> pot = PotInput.PotOrBuffer(household, text);
        if (pot.Ok)
        {
            return Result.Of(new CountThen(pot.Value.PotId is { } id ? MoveTarget.Pot(id) : MoveTarget.Buffer));
        }

        return household.Debts.FirstOrDefault(debt => string.Equals(debt.Name, text, StringComparison.OrdinalIgnoreCase) || debt.Id.Text == text) is { } debt
            ? Result.Of(new CountThen(MoveTarget.Debt(debt.Id)))
            : Result.Refused<CountThen>(new ArgumentFault.NoTarget(text));
    }

    private static Result<Pot> CashPot(Household household, string name)
    {
        Result<Pot> pot = PotInput.Pot(household, name);
        return pot is { Ok: true, Value.Place: Place.Account } ? Result.Refused<Pot>(new ArgumentFault.NotInCash(pot.Value.Name)) : pot;
    }
}
