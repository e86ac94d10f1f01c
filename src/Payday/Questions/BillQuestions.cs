using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Routines;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Step 2: the bills that are due, and how money is set aside for later ones.</summary>
internal sealed class BillQuestions(RoutineWork work) : StepQuestions(work)
{
    private readonly BillsView view = new(work);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Bills;

    /// <inheritdoc/>
    public override IEnumerable<string> Opening => [view.Note.Text];

    /// <inheritdoc/>
    public override IEnumerable<Question> All =>
    [
        .. Plan.Bills.Dues.Zip(view.Rows, Of),
        SetAsides(),
    ];

    private Question Of(DueRow due, StepRow row)
    {
        string changed = due.Changed && due.Amount != due.Usual ? $", usually {Shown(due.Usual)}" : "";
        return PaidQuestion.Of(
            $"bill {due.Key.Bill!.Value.Text} {due.Key.Scheduled:uuuu-MM-dd}",
            $"{due.Name}, due {DateText.Weekday(due.Date)}: {Shown(due.Amount)}{changed}, {(due.Paid ? "paid" : "to pay")}. How much, or is it paid?",
            row,
            due.Paid,
            Work.Session.Style,
            () => Plan.Bills.Dues.FirstOrDefault(one => one.Key == due.Key) is { } now ? $"{now.Name}: {Shown(now.Amount)}, {(now.Paid ? "paid" : "to pay")}." : "")
            with { Words = view.Words };
    }

    private Question SetAsides()
    {
        SetAsideMode mode = Plan.Bills.Mode;
        return new Question(
            "set aside",
            $"{Shown(Plan.Bills.Total)} is set aside today for bills, {(mode == SetAsideMode.Level ? "an even part of every pay: even" : "only what is due before the next payday: when due")} proposed. Even or when due?",
            answer => answer.Length == 0 ? Taken.On
                : IsWord(answer, "even") ? Set(SetAsideMode.Level)
                : IsWord(answer, "when due") || IsWord(answer, "due") ? Set(SetAsideMode.AsTheyFall)
                : new Taken.Refused("Type even or when due."))
        {
            Help = [RuleTexts.Later, "It is for this payday alone; the household's settings stay as they are.", .. Ahead()],
            Words = view.Words,
        };
    }

    private Taken Set(SetAsideMode mode)
    {
        string before = Shown(Plan.Bills.Total);
        return mode == Plan.Bills.Mode ? Taken.On : Decide(draft => draft with { SetAsides = mode }, () => $"{Shown(Plan.Bills.Total)} is set aside today; before it was {before}.");
    }

    private IEnumerable<string> Ahead() => Plan.Bills.ByNextDue
        .Where(line => line is { NextDue: not null, HeldAfter.IsPositive: true })
        .Select(line => $"{line.Name}: {Shown(line.HeldAfter)} set aside from today; next {Shown(line.NextAmount)} on {DateText.Long(line.NextDue!.Value)}.");
}
