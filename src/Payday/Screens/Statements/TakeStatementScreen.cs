using Humanizer;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Statements.Taking;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Statements;

/// <summary>What taking statements will write, and the question whether to.</summary>
internal sealed class TakeStatementScreen(BookSession session, StatementWork work, StatementPlan plan) : PageScreen
{
    /// <inheritdoc/>
    public override string Title => "Take the statement";

    /// <inheritdoc/>
    protected override string Aside => $"{DateText.Day(plan.Statements[0].From!.Value)} to {DateText.Day(plan.Last.To!.Value)}";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => [new(Key.Enter, "Enter", "take it", "Write all of this to the ledger, and the reconciliation; u on the screen before takes it back as a whole.", Take)];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(Texts(), width);

    private IEnumerable<Said> Texts()
    {
        PlannedLine[] chosen = [.. plan.Others.Where(IsTaken)];
        int left = plan.Others.Count() - chosen.Length;
        int matched = plan.Matched.Count();
        if (matched > 0 || chosen.Length == 0)
        {
            yield return matched == 0 ? "No line of the account is matched, and none is written." : $"{"line".ToQuantity(matched)} of the account {(matched == 1 ? "is" : "are")} at the bank from then on.";
        }

        if (chosen.Length > 0)
        {
            yield return matched > 0 ? "" : $"{"line".ToQuantity(chosen.Length)} will be written, and {(chosen.Length == 1 ? "is" : "are")} at the bank from then on.";
            yield return "To be written:";
        }

        foreach (PlannedLine line in chosen)
        {
            yield return CleanText.OneLine($"  {DateText.Short(line.Line.Date)}  {line.Line.Amount.ToString(session.Style)}  {PlanText.What(line.Line)}: {PlanText.Becomes(session.Book.Household, line)}");
        }

        yield return "";
        if (left > 0)
        {
            yield return Said.Alert($"{"line".ToQuantity(left)} left: {(left == 1 ? "it is" : "they are")} in the difference, and the same file offers {(left == 1 ? "it" : "them")} again.");
        }

        if (work.Taken(plan) is { Ok: true } after)
        {
            Reconciliation one = after.Value.Weeks.Reconciliations[^1];
            string text = PlanText.Difference(after.Value, session.Style);
            yield return one.Difference.IsZero ? text : Said.Alert(text + " That stays in view.");
        }
    }

    private static bool IsTaken(PlannedLine line) => line.Choice is { } choice && !(choice is { Target.Use: LineUse.Leave, Lines.IsEmpty: true });

    private Way Take()
    {
        Result<Book> after = work.Taken(plan);
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        string said = PlanText.Difference(after.Value, session.Style);
        work.Done(after.Value);
        return new Way.Home($"The statement is taken. {said}");
    }
}
