using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Lists;
using Payday.Reports;
using Payday.Screens.Routines;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Step 6: the cash pots in notes; those of each pot and week are asked for only where they are to be changed.</summary>
internal sealed class WithdrawalQuestions(RoutineWork work) : StepQuestions(work)
{
    private readonly WithdrawalView view = new(work);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Withdrawal;

    /// <inheritdoc/>
    public override IEnumerable<string> Opening => [Plan.Withdrawal.Pots.IsEmpty ? "No cash is needed." : NotInNotesText.First(Plan, Style)];

    /// <inheritdoc/>
    public override IEnumerable<Question> All => Plan.Withdrawal.Pots.IsEmpty
        ? []
        : [Whole(), .. Plan.Withdrawal.Pots.SelectMany(row => row.Weeks.Select(week => Part(row, week)))];

    private NumberStyle Style => Work.Session.Style;

    private CashPieces Cash => Plan.Book.Household.Settings.Cash;

    private bool HasMachine => Plan.Draft.BankFor(Plan.Book.Household.Settings.Bank) is CashSource.Machine;

    private string Listed(Notes notes) => NoteText.Listed(notes, Plan.Withdrawal.Plan.Currency, Style);

    private Question Whole()
    {
        NotePlan notes = Plan.Withdrawal.Plan;
        string reused = notes.ReusedTotal.IsZero ? "" : $" {Shown(notes.ReusedTotal)} of notes at home is used again.";
        string fault = Wrong() is { } wrong ? " " + wrong : "";
        return new Question(
            "notes",
            $"{Shown(notes.WithdrawTotal)} to withdraw from {(HasMachine ? "a machine" : "a teller")}, {"note".ToQuantity(notes.Withdraw.Pieces)}: {Listed(notes.Withdraw)}. {Shown(Plan.Withdrawal.KeptBack)} is not in notes.{reused}{fault} Is that right? yes proposed.",
            Take)
        {
            Help =
            [
                "Type notes to go through the notes of each pot and week, proposal to take all of them as proposed.",
                Plan.Draft.LeavesNotesAtHome ? "home: the loose notes at home stay there now; the word has them used again." : "home: the loose notes at home stay there; now they are used.",
                .. OwedBackOffer.Of(Plan) is { } offer
                    ? [$"pay back: notes that pots have to pay back are {(Plan.Draft.UsesOwedBack ? "used here" : "taken to the bank")} now; the word turns it round. Together {offer.Together.NotesCarried} notes are carried, apart {offer.Apart.NotesCarried}."]
                    : Array.Empty<string>(),
                $"teller: a teller is asked this time. machine: a machine is used this time, with its notes and its limit each time, like machine {MachineText.Usual(Cash, Style)}.",
                RuleTexts.Notes,
            ],
            Words = view.Words,
        };
    }

    private string? Wrong() =>
        Plan.Withdrawal.Pots.FirstOrDefault(row => row.KeptBack.IsNegative) is { } over
            ? $"The notes for {over.Pot.Name} are {Shown(-over.KeptBack)} more than it has; lower one before the payday can be closed."
        : WithdrawalRoom.Of(Plan) is { IsTooLittle: true } less ? ClosingTexts.Of(new ClosingFault.AccountHasLess(less.Has, less.Asked), Style)
        : Plan.Withdrawal.Plan.Faults.IsEmpty ? null : NoteTexts.Of(Plan.Withdrawal.Plan.Faults[0], Style);

    private Taken Take(string answer) => answer.ToUpperInvariant() switch
    {
        "NOTES" or "NO" or "N" => new Taken.To(IdOf(Plan.Withdrawal.Pots[0], Plan.Withdrawal.Pots[0].Weeks[0])),
        "PROPOSAL" => Decided(draft => draft with { Notes = draft.Notes.Clear() }),
        "HOME" => Decided(draft => draft with { LeavesNotesAtHome = !draft.LeavesNotesAtHome }),
        "PAY BACK" when OwedBackOffer.Of(Plan) is not null => Decided(draft => draft with { UsesOwedBack = !draft.UsesOwedBack }),
        "TELLER" => Decided(draft => draft with { AsksATeller = Plan.Book.Household.Settings.Bank is CashSource.Machine, Machine = null }),
        var word when word.StartsWith("MACHINE", StringComparison.Ordinal) => Machine(answer["machine".Length..].Trim()),
        _ => YesOrNo.Read(answer, true) is true ? Taken.On : new Taken.Refused("Type yes, or notes to change them; ? says what else there is."),
    };

    private Taken Machine(string text)
    {
        if (text.Length == 0 && Plan.Book.Household.Settings.Bank is CashSource.Machine)
        {
            return Decided(draft => draft with { AsksATeller = false, Machine = null });
        }

        Result<CashSource.Machine> machine = MachineText.Read(text.Length == 0 ? MachineText.Usual(Cash, Style) : text, Cash, Style);
        return machine.Ok ? Decided(draft => draft with { AsksATeller = false, Machine = machine.Value }) : new Taken.Refused(FaultTexts.Of(machine.Fault, Style));
    }

    private Question Part(CashPotRow row, WeekPart week)
    {
        string of = week.Week is { } day ? $"{row.Pot.Name}, week of {DateText.Weekday(day)}" : row.Pot.Name;
        string share = week.Share == week.Amount ? Shown(week.Amount) : $"{Shown(week.Amount)} of {Shown(week.Share)}";
        return new Question(
            IdOf(row, week),
            $"{of}: {Listed(week.Notes)}, {share}{(week.Changed ? " as you said" : " proposed")}. Which notes?",
            answer => answer.Length == 0 ? Taken.On
                : IsWord(answer, "proposal") ? Decide(draft => draft with { Notes = draft.Notes.Remove(Key(row, week)) }, () => Now(row, week))
                : Notes(row, week, answer))
        {
            IsDetail = true,
            Help = [$"Type how many of each, like {Style.Written("20")}=2,{Style.Written("10")}=1, or none; proposal takes those proposed again.", NotInNotesText.Of(Plan, row, Style), RuleTexts.Notes],
            Words = view.Words,
        };
    }

    private Taken Notes(CashPotRow row, WeekPart week, string answer)
    {
        Result<Notes> read = IsWord(answer, "none") ? Result.Of(Core.Cash.Notes.None) : NoteList.Read(Plan.Book.Household, answer);
        if (!read.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(read.Fault, Style));
        }

        if (read.Value.Values.Except(Cash.Notes.Select(note => note.MinorUnits)).Except(Plan.Withdrawal.Loose.Values).Any())
        {
            return new Taken.Refused("Coins are not fetched for pots; only notes, and what lies loose at home.");
        }

        Money left = row.LeftWith(week, read.Value);
        return left.IsNegative && left < row.KeptBack
            ? new Taken.Refused($"{row.Pot.Name} has {Shown(row.Amount)}, and its notes would come to {Shown(row.Amount - left)}; lower another first.")
            : Decide(draft => draft with { Notes = draft.Notes.SetItem(Key(row, week), read.Value) }, () => Now(row, week));
    }

    private string Now(CashPotRow row, WeekPart week) => Plan.Withdrawal.Pots.FirstOrDefault(one => one.Pot.Id == row.Pot.Id) is { } now && now.Weeks.FirstOrDefault(one => one.Week == week.Week) is { } part
        ? $"{now.Pot.Name}: {Listed(part.Notes)}, {Shown(part.Amount)}."
        : "";

    private Taken Decided(Func<RoutineDraft, RoutineDraft> decide) => Work.Decide(decide) is { } fault ? new Taken.Refused(fault) : new Taken.Again("");

    private static PartKey Key(CashPotRow row, WeekPart week) => new(row.Pot.Id, week.Week);

    private static string IdOf(CashPotRow row, WeekPart week) => $"notes {row.Pot.Id.Text} {week.Week:uuuu-MM-dd}".TrimEnd();
}
