using Payday.Charts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Outlooks;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Outlooks;

/// <summary>The coming paydays as their routines would close, with what the account has then as a line; and what a change would do.</summary>
internal sealed class OutlookScreen(BookSession session) : PageScreen
{
    private const int ChartHeight = 6;
    private const int HeaderLines = 2;

    private readonly List<string> tried = [];
    private PageTable? table;
    private (Book Book, Result<Outlook> Plan, Result<Outlook> Trial)? worked;

    /// <inheritdoc/>
    public override string Title => "Outlook";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Outlook", "the coming paydays, each closed with all its proposals taken. Nothing of it is stored."),
        ("Over", "what is left once bills, minimums and pots have theirs; it is placed as the Surplus step proposes."),
        ("Account, cash", "what is there at the period's end: spending pots used up, pots with a target spent on their date."),
        ("!", "a payday that is short: something is cut, the buffer has to help, or something can't be paid."),
        ("What if", "another amount for a bill or an income source from the next payday on, beside the plan; like Rent=1700."),
    ];

    /// <inheritdoc/>
    protected override string Aside => tried.Count == 0 ? "all proposals taken" : $"if {string.Join(", ", tried)}";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Enter, "Enter", "what if", "Try another amount for a bill or an income source; nothing is stored.", () => new Way.Edit(new CellEdit("What if, like Rent=1700", "", Try))),
        .. tried.Count > 0 ? [Letters.Proposal.Does("as planned", "Drop what was tried.", Drop)] : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override PageTable? Table => table;

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        table = null;
        (Result<Outlook> plan, Result<Outlook> trial) = Worked();
        if (!plan.Ok || !trial.Ok)
        {
            return Prose([FaultTexts.Of((plan.Ok ? trial : plan).Fault!, session.Style)], width, Ink.Plain);
        }

        bool isTried = tried.Count > 0;
        Outlook shown = trial.Value;
        FrameLine[] above =
        [
            FrameLine.Of(" In the account at the end of each period", Ink.Quiet),
            .. LineChart.Lines([.. shown.Paydays.Select(payday => payday.AccountAfter)], width - 2, ChartHeight, session.Style, time: OutlookReport.Time(shown)).Select(line => FrameLine.Of(" " + line)),
            .. Prose([OutlookReport.Legend], width, Ink.Quiet),
        ];
        table = new PageTable(above.Length, HeaderLines, shown.Paydays.Length);
        return
        [
            .. above,
            .. OutlookReport.Lines(plan.Value, isTried ? shown : null, session.Style, width - 2).Select((line, i) => FrameLine.Of(" " + line, InkOf(shown, i))),
            FrameLine.Empty,
            .. Prose(OutlookReport.LeftOut(plan.Value, isTried ? shown : null, session.Style, width - 2), width, Ink.Quiet),
            .. Prose(OutlookReport.Notes(shown, isTried ? plan.Value : null, session.Style), width, Ink.Plain),
            .. Prose(["Spending pots are taken as used up by the period's end. Pay and prices will differ."], width, Ink.Quiet),
        ];
    }

    // Two lines stand above the paydays: what the columns are, and a rule.
    private static Ink InkOf(Outlook outlook, int line) => line < HeaderLines ? Ink.Quiet : outlook.Paydays[line - HeaderLines].IsTight ? Ink.Alert : Ink.Plain;

    private static IEnumerable<FrameLine> Prose(IEnumerable<string> sentences, int width, Ink ink) =>
        sentences.SelectMany(sentence => TextWrap.Lines(sentence, width - 2)).Select(line => FrameLine.Of(" " + line, ink));

    // Worked out once for each book: every key would ask again.
    private (Result<Outlook> Plan, Result<Outlook> Trial) Worked()
    {
        if (worked is not { } known || !ReferenceEquals(known.Book, session.Book))
        {
            Result<Outlook> plan = Outlook.Of(session.Book, Outlook.UsualPaydays);
            Book book = tried.Select(text => Trial.Parse(session.Book.Household, text)).Where(trial => trial.Ok).Aggregate(session.Book, (so, trial) => trial.Value!.In(so));
            worked = known = (session.Book, plan, ReferenceEquals(book, session.Book) ? plan : Outlook.Of(book, Outlook.UsualPaydays));
        }

        return (known.Plan, known.Trial);
    }

    private string? Try(string text)
    {
        string clean = CleanText.OneLine(text).Trim();
        Result<Trial> trial = Trial.Parse(session.Book.Household, clean);
        if (!trial.Ok)
        {
            return FaultTexts.Of(trial.Fault, session.Style);
        }

        tried.Add(clean);
        worked = null;
        ToTop();
        return null;
    }

    private Way Drop()
    {
        tried.Clear();
        worked = null;
        ToTop();
        return Way.Stay;
    }
}
