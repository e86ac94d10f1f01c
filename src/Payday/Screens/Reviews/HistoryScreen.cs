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
    private const int HeaderLines = 2;

    private readonly PotHistory history = PotHistory.Of(session.Book, pot.Id);
    private readonly PotPlan? plan = PotPlan.Of(session.Book, pot);
    private PageTable? table;

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
    protected override PageTable? Table => table;

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        FrameLine[] sentence = [.. plan is null ? [] : TextWrap.Lines(PotPlanText.Sentence(plan, session.Style), width - 2).Select(line => FrameLine.Of(" " + line, plan.Ahead.IsNegative ? Ink.Alert : Ink.Plain)).Append(FrameLine.Empty)];
        IReadOnlyList<string> lines = HistoryReport.Lines(history, session.Style, width - 2);

        // Its rows stand last, under a line of headings and a rule.
        table = history.Lines.IsEmpty ? null : new PageTable(sentence.Length + lines.Count - history.Lines.Length - HeaderLines, HeaderLines, history.Lines.Length);
        return new JoinedLines<FrameLine>(sentence, new ShownLines<string, FrameLine>(lines, line => line.Length == 0 ? FrameLine.Empty : FrameLine.Of(" " + line)));
    }
}
