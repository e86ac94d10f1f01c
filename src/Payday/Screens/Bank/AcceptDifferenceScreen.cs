using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Reconciling;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Bank;

/// <summary>The question whether to write down a reconciliation that has a difference, and what that is called. A name that is typed is stored as the rest of it.</summary>
internal sealed class AcceptDifferenceScreen(BookSession session, ReconciliationPlan begun) : PageScreen
{
    private const int LongestName = 60;

    private ReconciliationPlan plan = begun;

    /// <inheritdoc/>
    public override string Title => "Accept with a difference";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(plan.Draft.Date);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => [new(Key.Enter, "Enter", "accept it", "Write it down; the difference stays in view on home.", Accept), Letters.Explain.Does("name it", "Say in a few words what the difference may be.", () => new Way.Edit(Name(plan.Name)))];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(Texts().SelectMany(said => new[] { said, "" }), width);

    private IEnumerable<Said> Texts()
    {
        yield return Said.Alert($"The bank has {plan.Draft.Balance!.Value.ToString(session.Style)} and should have {plan.Expected.ToString(session.Style)}: a difference of {plan.Difference!.Value.ToString(session.Style)}.");
        foreach (Culprit culprit in plan.Culprits)
        {
            yield return CulpritText.Of(culprit, session.Book.Household);
        }

        yield return plan.Name.Length == 0 ? "It has no name yet; e gives it one, a few words for what it may be." : $"It is called \"{CleanText.OneLine(plan.Name)}\".";
        yield return "What is ticked is at the bank from then on. The difference stays in view on home until it is explained: enter what is missing, or undo what is wrong, and compare the account with the bank again.";
    }

    private CellEdit Name(string text) => new("Name of the difference", text, typed =>
    {
        string name = CleanText.OneLine(typed).Trim();
        if (name.Length > LongestName)
        {
            return $"At most {LongestName} characters, please.";
        }

        plan = plan.With(plan.Draft with { Name = name });
        session.Take(plan.Kept());
        plan = ReconciliationPlan.Of(session.Book, plan.Draft);
        return null;
    });

    private Way Accept()
    {
        Result<Book> after = plan.Accept();
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        session.Take(after.Value);
        return new Way.Home("Written down; the difference stays in view.");
    }
}
