using Payday.Core.Books;
using Payday.Core.Routines;
using Payday.Screens.Routines;
using Payday.Text;

namespace Payday.Questions;

/// <summary>Step 3: the minimums that are due.</summary>
internal sealed class DebtQuestions(RoutineWork work) : StepQuestions(work)
{
    private readonly DebtsView view = new(work);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.DebtMinimums;

    /// <inheritdoc/>
    public override IEnumerable<string> Opening =>
    [
        Plan.Debts.Rows.Any(row => row.Due is not null) ? view.Note.Text + "." : "No minimum falls due before the next payday.",
    ];

    /// <inheritdoc/>
    public override IEnumerable<Question> All => Plan.Debts.Rows.Zip(view.Rows).Where(one => one.First.Due is not null).Select(one => Of(one.First, one.Second));

    private Question Of(DebtRow debt, StepRow row)
    {
        string payment = debt.Payment == debt.Minimum ? $"{Shown(debt.Minimum)} minimum" : $"{Shown(debt.Payment)}, its minimum is {Shown(debt.Minimum)}";
        Question question = PaidQuestion.Of(
            $"debt {debt.DebtId.Text} {debt.Key!.Value.Scheduled:uuuu-MM-dd}",
            $"{debt.Name}, due {DateText.Weekday(debt.Due!.Value)}: {payment}, {(debt.Paid ? "paid" : "to pay")}. How much, or is it paid?",
            row,
            debt.Paid,
            Work.Session.Style,
            () => Plan.Debts.Rows.FirstOrDefault(one => one.Key == debt.Key) is { } now
                ? $"{now.Name}: {Shown(now.Payment)}, {(now.Paid ? "paid" : "to pay")}.{(now.Payment < now.Minimum ? " That is below the minimum." : "")}"
                : "");
        return question with { Help = [.. question.Help, .. row.Detail], Words = view.Words };
    }
}
