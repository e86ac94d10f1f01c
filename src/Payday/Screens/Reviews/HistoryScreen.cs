using Payday.Core.Histories;
using Payday.Core.Pots;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;

namespace Payday.Screens.Reviews;

/// <summary>What happened to a pot: what was spent up to each count, as figures and bars, and every fill, purchase and move.</summary>
/// <remarks>The bars are text like the rest: no colour is needed, and a line costs few bytes.</remarks>
internal sealed class HistoryScreen(BookSession session, Pot pot) : PageScreen
{
    private readonly PotHistory history = PotHistory.Of(session.Book, pot.Id);

    /// <inheritdoc/>
    public override string Title => $"History of {pot.Name}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Has", "what the pot had at the end of that day, in the account and in cash, without cash that it has to pay back."),
        ("Opening", "what it had when the household began."),
    ];

    /// <inheritdoc/>
    protected override string Aside => HistoryReport.Average(history, session.Style);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => HistoryReport.Lines(history, session.Style, width - 2).Select(line => line.Length == 0 ? FrameLine.Empty : FrameLine.Of(" " + line));
}
