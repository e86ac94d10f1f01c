using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>Asks whether to hold money back in another way this time, and shows what that changes.</summary>
internal sealed class SetAsidesScreen : PageScreen
{
    private readonly RoutineWork work;
    private readonly SetAsideMode mode;
    private readonly Result<RoutinePlan> trial;

    /// <param name="work">The routine worked on.</param>
    /// <param name="mode">The other way.</param>
    public SetAsidesScreen(RoutineWork work, SetAsideMode mode)
    {
        this.work = work;
        this.mode = mode;
        trial = Routine.Plan(work.Plan.Book, Decided(work.Plan.Draft));
    }

    /// <inheritdoc/>
    public override string Title => mode == SetAsideMode.Level ? "Set aside evenly this time" : "Set aside when due this time";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => trial.Ok
        ? [new(Key.Enter, "Enter", "do it", "Set aside in this way for this payday.", Switch)]
        : [];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(Texts(), width);

    private IEnumerable<Said> Texts()
    {
        if (!trial.Ok)
        {
            yield return Said.Alert(FaultTexts.Of(trial.Fault, work.Session.Style));
            yield break;
        }

        NumberStyle style = work.Session.Style;
        RoutinePlan now = work.Plan;
        yield return mode == SetAsideMode.Level
            ? "Even: an even part of every pay, planned over the next 13 months so that no bill is late."
            : "When due: each payday sets aside only what falls due before the next one.";
        yield return "";
        yield return $"Set aside today: {now.Bills.Total.ToString(style)} now, {trial.Value.Bills.Total.ToString(style)} then.";
        yield return $"Left once the pots have theirs: {now.Surplus.Before.ToString(style)} now, {trial.Value.Surplus.Before.ToString(style)} then.";
        if (!trial.Value.Bills.Late.IsEmpty && now.Bills.Late.IsEmpty)
        {
            yield return Said.Alert($"{trial.Value.Bills.Late[0].Due.Name} would be {trial.Value.Bills.Late[0].Short.ToString(style)} short on {DateText.Weekday(trial.Value.Bills.Late[0].Due.Date)}, with the pay expected.");
        }

        yield return "";
        yield return "It is for this payday alone; the household's settings stay as they are.";
    }

    private RoutineDraft Decided(RoutineDraft draft) => draft with { SetAsides = mode };

    private Way Switch()
    {
        if (work.Decide(Decided) is { } fault)
        {
            Message = fault;
            return Way.Stay;
        }

        return Way.Back;
    }
}
