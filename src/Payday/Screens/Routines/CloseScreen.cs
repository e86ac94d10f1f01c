using Humanizer;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>What closing the payday will write, and the question whether to.</summary>
internal sealed class CloseScreen : PageScreen
{
    private readonly RoutineWork work;
    private readonly Result<Book> closed;

    /// <summary>Looks at what would be written; nothing is yet.</summary>
    public CloseScreen(RoutineWork work)
    {
        this.work = work;
        closed = Closing.Of(work.Plan);
    }

    /// <inheritdoc/>
    public override string Title => "Close the payday";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(work.Plan.Period.First);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => closed.Ok
        ? [new(Key.Enter, "Enter", "close it", "Write all of this to the ledger.", Close)]
        : [];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        if (!closed.Ok)
        {
            return Said.Lines([Said.Alert(FaultTexts.Of(closed.Faults, work.Session.Style))], width);
        }

        RoutinePlan plan = work.Plan;
        int days = NodaTime.Period.DaysBetween(work.Session.Today, plan.Period.First);
        Said[] lines =
        [
            .. days > 1 ? [Said.Alert($"This payday is {"day".ToQuantity(days)} off: close it once the money is there."), ""] : Array.Empty<Said>(),
            .. ClosingReport.Goes(plan, closed.Value).Select(sentence => (Said)sentence),
            "",
            .. ClosingReport.After(plan, closed.Value).Select(sentence => (Said)sentence),
            "",
            Cautions.Advice,
            .. plan.Income.Overdraft.Owed.IsPositive ? [Cautions.Overdraft] : Array.Empty<Said>(),
            Cautions.Cash,
        ];
        return Said.Lines(lines, width);
    }

    private Way Close()
    {
        work.Session.Take(closed.Value!);
        return new Way.Home($"The payday is closed. v shows its slip and sheet. {work.Session.News()}".TrimEnd());
    }
}
