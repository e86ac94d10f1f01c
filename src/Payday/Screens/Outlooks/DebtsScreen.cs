using Payday.Core.Faults;
using Payday.Core.Outlooks;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Outlooks;

/// <summary>The debts: how far each has come, and the way out of them.</summary>
internal sealed class DebtsScreen(BookSession session) : PageScreen
{
    // Worked out once for each book: every key would ask again.
    private readonly OfBook<(DebtsAhead Ahead, Result<Outlook> Outlook)> worked = new(session, () => (DebtsAhead.Of(session.Book, session.Today), Outlook.Of(session.Book, Outlook.UsualPaydays)));

    /// <inheritdoc/>
    public override string Title => "Debts";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Paid, of", "how much less is owed than when the household began to write it down, and what was owed then."),
        ("Interest", "what the lender has charged since then, by the ledger."),
        ("To come", "what the lender will charge until the debt is paid off, as the routine proposes to pay; that of the next payday's minimums is in it, while the months and sums below begin after them."),
        ("Minimums alone", "the least that must be paid; what a paid-off debt asked for goes to the next one."),
        ("Proposed", "the same, with what the Surplus step of the next payday proposes for debts."),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        (DebtsAhead ahead, Result<Outlook> outlook) = worked.Value;
        if (ahead.Debts.IsEmpty)
        {
            return [FrameLine.Of(" No debts.")];
        }

        return
        [
            .. DebtsAheadReport.Table(ahead, session.Style, width - 2).Select((line, i) => FrameLine.Of(" " + line, i == 0 ? Ink.Quiet : Ink.Plain)),
            FrameLine.Empty,
            .. DebtsAheadReport.HasWay(ahead) ? [.. DebtsAheadReport.Curves(ahead, session.Today, session.Style, width - 2).Select(line => FrameLine.Of(" " + line)), FrameLine.Empty] : Array.Empty<FrameLine>(),
            .. Said.Lines([.. DebtsAheadReport.Notes(ahead, session.Style).Select(note => (Said)note), .. DebtsAheadReport.Endless(ahead).Select(Said.Alert)], width),
            .. new[] { DebtsAheadReport.EachPayday(ahead, outlook, " (j at home)") }.Where(each => each.Length > 0).SelectMany(each => TextWrap.Lines(each, width - 2)).Select(line => FrameLine.Of(" " + line)),
            FrameLine.Of(" " + DebtsAheadReport.Caution, Ink.Quiet),
        ];
    }
}
