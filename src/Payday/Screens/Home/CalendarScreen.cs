using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;

namespace Payday.Screens.Home;

/// <summary>Paydays, fill days and dues of the next months.</summary>
internal sealed class CalendarScreen(BookSession session) : PageScreen
{
    /// <inheritdoc/>
    public override string Title => "Calendar";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Fill day", "the weekday on which the wallet is filled."),
        ("Extra payday", "a payday beyond the usual count of its month: the third of a fortnightly wage, the fifth of a weekly one."),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) =>
        CalendarReport.Lines(CalendarReport.Entries(session.Book.Household, session.Today), session.Style, width - 2).Select(line => FrameLine.Of(" " + line));
}
