using NodaTime;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>Paydays, fill days and dues, three months at a time: those to come, and back to the household's beginning.</summary>
internal sealed class CalendarScreen(BookSession session) : PageScreen
{
    // As far ahead as plans for bills look; beyond that everything only comes round again.
    private const int MostAhead = Core.Bills.BillDues.MonthsAhead;

    private int turned;

    /// <inheritdoc/>
    public override string Title => "Calendar";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Fill day", "the weekday on which the wallet is filled."),
        ("Extra payday", "a payday beyond the usual count of its month: the third of a fortnightly wage, the fifth of a weekly one."),
        ("Minimum due", "the least that must be paid on a debt by then; as far ahead as nothing more is paid on it."),
        ("Closed, paid", "the payday's routine is done; the bill or minimum was ticked as paid."),
    ];

    /// <inheritdoc/>
    protected override string Aside => $"{DateText.Long(From)} to {DateText.Long(From.PlusMonths(CalendarReport.Months))}";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. From > session.Book.Household.Start ? [new Binding(Key.CursorLeft, "Left", "months before", "The three months before.", () => Turn(-1))] : Array.Empty<Binding>(),
        .. From.PlusMonths(CalendarReport.Months) <= session.Today.PlusMonths(MostAhead)
            ? [new Binding(Key.CursorRight, "Right", "months after", "The three months after.", () => Turn(1))]
            : Array.Empty<Binding>(),
    ];

    private LocalDate From => LocalDate.Max(
        LocalDate.Min(session.Today, session.Book.Household.Start),
        session.Today.PlusMonths(turned * CalendarReport.Months));

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => CalendarReport
        .Lines(CalendarReport.Entries(session.Book, From, session.Today), session.Style, width - 2)
        .Select(line => FrameLine.Of(" " + line));

    private Way Turn(int by)
    {
        turned += by;
        ToTop();
        return Way.Stay;
    }
}
