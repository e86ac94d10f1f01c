using Payday.Core.Histories;
using Payday.Core.Pots;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Reviews;

/// <summary>What happened to a pot: what was spent up to each count, as figures and bars, and every fill, purchase and move.</summary>
/// <remarks>The bars are text like the rest: no colour is needed, and a line costs few bytes.</remarks>
internal sealed class HistoryScreen(BookSession session, Pot pot) : PageScreen
{
    private readonly PotHistory history = PotHistory.Of(session.Book, pot.Id);
    private readonly PotPlan? plan = PotPlan.Of(session.Book, pot);

    /// <inheritdoc/>
    public override string Title => $"History of {pot.Name}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Has", "what the pot had at the end of that day, in the account and in cash, without cash that it has to pay back."),
        ("Amount", "with + or - where the pot has more or less by it; without a sign what is said beside, such as what the card paid, or what went in the wallet."),
        ("Plan", "what it would have if each payday so far had put in what its rule asked for, and nothing else had touched it."),
        ("Opening", "what it had when the household began."),
    ];

    /// <inheritdoc/>
    protected override string Aside => HistoryReport.Average(history, session.Style);

    /// <inheritdoc/>
    protected override object Source => session.Style;

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => new JoinedLines<FrameLine>(
        [.. plan is null ? [] : TextWrap.Lines(PotPlanText.Sentence(plan, session.Style), width - 2).Select(line => FrameLine.Of(" " + line, plan.Ahead.IsNegative ? Ink.Alert : Ink.Plain)).Append(FrameLine.Empty)],
        new ShownLines<string, FrameLine>(HistoryReport.Lines(history, session.Style, width - 2), line => line.Length == 0 ? FrameLine.Empty : FrameLine.Of(" " + line)));
}
