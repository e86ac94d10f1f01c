using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Lists;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Reads decisions of a routine that name a bill, a debt or a pot, each into the draft of the routine as it stands.</summary>
internal static class DecisionInput
{
    /// <summary>The word by which a decision goes back to what is proposed.</summary>
    public const string Usual = "usual";

    private const string NotesOption = "--notes";
    private const string Rest = "rest";
    private const string None = "none";

    /// <summary>The decisions of an option that may be given several times, each about something else.</summary>
    /// <param name="option">The option.</param>
    /// <param name="texts">What was given with it.</param>
    /// <param name="read">Takes one into the draft of the routine as it stands.</param>
    public static IEnumerable<Func<RoutinePlan, Result<RoutineDraft>>> Once(string option, IEnumerable<string> texts, Func<RoutinePlan, string, Result<RoutineDraft>> read)
    {
        var told = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (string text in texts)
        {
            string name = text[..(text.IndexOf('=') is > 0 and var at ? (option == NotesOption ? at : text.LastIndexOf('=')) : text.Length)].Trim();
            yield return told.Add(name)
                ? plan => read(plan, text)
                : _ => Result.Refused<RoutineDraft>(new ArgumentFault.GivenTwice($"{option} {text}", name));
        }
    }

    /// <summary><c>--bill NAME[@DUE]=AMOUNT</c>: what a bill comes to this time.</summary>
    public static Result<RoutineDraft> Bill(RoutinePlan plan, string text) =>
        NamedInput.Read("--bill", text, "Electricity=92.40.").Then(named => DueOf(plan, named).Then(row =>
        {
            DueDecision? known = plan.Draft.Dues.GetValueOrDefault(row.Key);
            return named.Is(Usual)
                ? Result.Of(With(plan.Draft, row, known?.Paid is null ? null : known with { Actual = null }))
                : Amount(plan, named).Map(amount => With(plan.Draft, row, new DueDecision(amount, known?.Paid)));
        }));

    /// <summary><c>--paid NAME[=DUE]</c> and <c>--unpaid</c>: that a bill or a minimum has left the account, or hasn't.</summary>
    public static Result<RoutineDraft> Paid(RoutinePlan plan, string text, bool isPaid)
    {
        string option = isPaid ? "--paid" : "--unpaid";
        int at = text.LastIndexOf('=');
        // The day may stand behind an equals sign too, which a name may hold.
        NamedInput named = NamedInput.Alone(option, at > 0 && Core.Calendar.TypedDate.Parse(text[(at + 1)..]).Ok ? $"{text[..at]}@{text[(at + 1)..]}" : text);
        Household household = plan.Book.Household;
        return named.Among(
            [
                .. household.Bills.Select(bill => ((BillId?)bill.Id, (DebtId?)null, bill.Name, bill.Id.Text)).Concat(
                    household.Debts.Select(debt => ((BillId?)null, (DebtId?)debt.Id, debt.Name, debt.Id.Text)))
                    .Select(one => ((one.Item1, one.Item2), one.Name, one.Text)),
            ],
            "bill or debt").Then(owner => owner.Item1 is not null
                ? DueOf(plan, named).Map(row => With(plan.Draft, row, new DueDecision(plan.Draft.Dues.GetValueOrDefault(row.Key)?.Actual, isPaid)))
                : MinimumOf(plan, named).Map(row => plan.Draft with { PaidMinimums = plan.Draft.PaidMinimums.SetItem(row.Key!.Value, isPaid) }));
    }

    /// <summary><c>--debt NAME[@DUE]=AMOUNT</c>: what is paid on a minimum.</summary>
    public static Result<RoutineDraft> Debt(RoutinePlan plan, string text) =>
        NamedInput.Read("--debt", text, "\"Sofa card=60\".").Then(named => MinimumOf(plan, named).Then(row => named.Is(Usual)
            ? Result.Of(plan.Draft with { Minimums = plan.Draft.Minimums.Remove(row.Key!.Value) })
            : Amount(plan, named).Then(amount => Said(named, Deciding.Minimum(plan, row, amount)))));

    /// <summary><c>--pot NAME=AMOUNT</c>: what goes in a pot.</summary>
    public static Result<RoutineDraft> Pot(RoutinePlan plan, string text) =>
        NamedInput.Read("--pot", text, "Food=410.").Then(named => PotOf(plan, named).Then(pot => named.Is(Usual)
            ? Result.Of(plan.Draft with { Fills = plan.Draft.Fills.Remove(pot.Id) })
            : Amount(plan, named).Map(amount => plan.Draft with { Fills = plan.Draft.Fills.SetItem(pot.Id, amount) })));

    /// <summary><c>--place NAME=AMOUNT</c>, <c>NAME=rest</c>, <c>none</c> or <c>usual</c>: where the surplus goes.</summary>
    public static Result<RoutineDraft> Place(RoutinePlan plan, string text)
    {
        switch (text.Trim().ToUpperInvariant())
        {
            case "USUAL":
                return Result.Of(plan.Draft with { Placements = null });
            case "NONE":
                return Result.Of(plan.Draft with { Placements = [] });
            default:
                Household household = plan.Book.Household;
                return NamedInput.Read("--place", text, "Reserve=50, Reserve=rest, none or usual.").Then(named => named.Among(
                    household.Debts.Select(debt => (MoveTarget.Debt(debt.Id), debt.Name, debt.Id.Text))
                        .Concat(household.Pots.Select(pot => (MoveTarget.Pot(pot.Id), pot.Name, pot.Id.Text)))
                        .Concat(household.Bills.Select(bill => (MoveTarget.Bill(bill.Id), bill.Name, bill.Id.Text)))
                        .Append((MoveTarget.Buffer, "Buffer", PotInput.Buffer)),
                    "debt, pot or bill").Then(target => named.Is(Rest)
                        ? Deciding.Placement(plan, target, null)
                        : Amount(plan, named).Then(amount => Said(named, Deciding.Placement(plan, target, amount)))));
        }
    }

    /// <summary><c>--notes POT[@DAY]=20=2,10=1</c>, <c>=usual</c>, <c>=none</c>, or <c>usual</c> for all: the notes of a pot and week.</summary>
    public static Result<RoutineDraft> Notes(RoutinePlan plan, string text)
    {
        if (string.Equals(text.Trim(), Usual, StringComparison.OrdinalIgnoreCase))
        {
            return Result.Of(plan.Draft with { Notes = plan.Draft.Notes.Clear() });
        }

        return NamedInput.OfNotes(plan.Book.Household, NotesOption, text, "\"Food@2026-03-13=20=2,10=1\".").Then(named => PotOf(plan, named).Then(pot => PartOf(plan, named, pot)).Then(part => named.Is(Usual)
            ? Result.Of(plan.Draft with { Notes = plan.Draft.Notes.Remove(new PartKey(part.Row.Pot.Id, part.Week.Week)) })
            : (named.Is(None) ? Result.Of(Core.Cash.Notes.None) : Said(named, NoteList.Read(plan.Book.Household, named.Value)))
                .Then(notes => Said(named, Deciding.Notes(plan, part.Row, part.Week, notes)))));
    }

    private static RoutineDraft With(RoutineDraft draft, DueRow row, DueDecision? decision) =>
        draft with { Dues = decision is null ? draft.Dues.Remove(row.Key) : draft.Dues.SetItem(row.Key, decision) };

    private static Result<DueRow> DueOf(RoutinePlan plan, NamedInput named) => named
        .Among(plan.Book.Household.Bills.Select(bill => (bill, bill.Name, bill.Id.Text)), "bill")
        .Then(bill => OfDay(named, bill.Name, [.. plan.Bills.Dues.Where(row => row.BillId == bill.Id)], row => row.Date));

    private static Result<DebtRow> MinimumOf(RoutinePlan plan, NamedInput named) => named
        .Among(plan.Book.Household.Debts.Select(debt => (debt, debt.Name, debt.Id.Text)), "debt")
        .Then(debt => OfDay(named, debt.Name, [.. plan.Debts.Rows.Where(row => row.DebtId == debt.Id && row.Due is not null)], row => row.Due!.Value));

    private static Result<T> OfDay<T>(NamedInput named, string name, ImmutableArray<T> rows, Func<T, LocalDate> day) => rows.IsEmpty
        ? Result.Refused<T>(new ArgumentFault.NotDue(named.Given, name))
        : named.OnDay(rows, name, day, like => $"{name}@{like}{(named.Value.Length > 0 ? "=" + named.Value : "")}");

    private static Result<Pot> PotOf(RoutinePlan plan, NamedInput named) =>
        named.Among(plan.Book.Household.Pots.Select(pot => (pot, pot.Name, pot.Id.Text)), "pot");

    private static Result<(CashPotRow Row, WeekPart Week)> PartOf(RoutinePlan plan, NamedInput named, Pot pot) =>
        plan.Withdrawal.Pots.FirstOrDefault(row => row.Pot.Id == pot.Id) is not { } row
            ? Result.Refused<(CashPotRow, WeekPart)>(new ArgumentFault.NothingToWithdraw(named.Given, pot.Name))
            : row.Weeks is [{ Week: null } whole] ? Result.Of((row, whole))
            : named.OnDay(row.Weeks, pot.Name, week => week.Week ?? plan.Period.First, like => $"{pot.Name}@{like}={named.Value}").Map(week => (row, week));

    private static Result<Money> Amount(RoutinePlan plan, NamedInput named) =>
        CommandInput.Amount(named.Given, named.Value, plan.Book.Household.Currency, plan.Book.Household.Settings.Numbers);

    private static Result<T> Said<T>(NamedInput named, Result<T> result) =>
        result.Ok ? result : Result.Refused<T>(new ArgumentFault.Of(named.Given, result.Fault));
}
