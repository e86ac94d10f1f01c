using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.CashReturns;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>A year month by month: income, outgoings, savings and debts.</summary>
internal sealed class YearScreen(BookSession session) : PageScreen
{
    private int year = session.Today.Year;

    /// <inheritdoc/>
    public override string Title => $"Year {year.ToString(CultureInfo.InvariantCulture)}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("To pots", "put in pots, less what was taken from them again for another purpose."),
        ("Spent", "spent from pots, in cash once it is counted, and by card."),
        ("Owed", "what is owed on all debts at the month's end."),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. year > session.Book.Household.Start.Year ? [new Binding(Key.CursorLeft, "Left", "year before", "The year before.", () => Turn(-1))] : Array.Empty<Binding>(),
        .. year < session.Today.Year ? [new Binding(Key.CursorRight, "Right", "year after", "The year after.", () => Turn(1))] : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        ImmutableArray<MonthSummary> months = MonthSummary.OfYear(session.Book.Ledger, year, session.Book.Household.Start, session.Today, Roundings.Of(session.Book));
        return months.IsEmpty
            ? [FrameLine.Of(" The household begins later.")]
            :
            [
                .. YearReport.Lines(months, year, session.Book, width - 2).Select(line => FrameLine.Of(" " + line)),
                FrameLine.Empty,
                .. TextWrap.Lines("By the dates of the movements; what was undone doesn't count.", width - 2).Select(line => FrameLine.Of(" " + line, Ink.Quiet)),
            ];
    }

    private Way Turn(int by)
    {
        year += by;
        ToTop();
        return Way.Stay;
    }
}
