using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.StatementTaking;
using Payday.Core.Undo;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Statements.Taking;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Statements;

/// <summary>The bank's statements held against the book: what it has is folded, what is new or unclear stands line by line with what it might become. Nothing is written before the end.</summary>
internal sealed class StatementScreen : CursorScreen
{
    private readonly BookSession session;
    private readonly StatementWork work;
    private readonly LineKeys lineKeys;
    private readonly PathsAsked paths;

    public StatementScreen(BookSession session)
    {
        this.session = session;
        work = new StatementWork(session);
        lineKeys = new LineKeys(session, Chosen);
        paths = new PathsAsked(work.Add, () => Cursor = 0);
    }

    /// <inheritdoc/>
    public override string Title => "The bank's statements";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Matched", "the book has the line already; it is at the bank once the statement is taken."),
        ("New", "the book has nothing for it; it becomes what you choose, or is left."),
        ("Unclear", "it may be one of several lines of the account, or none: pick which."),
        ("Left", "nothing is written for it; the difference stays in view, and the same file offers the line again."),
        ("A name with ?", "proposed; it counts once it is taken with Space or Ctrl+A."),
    ];

    /// <inheritdoc/>
    protected override string Aside => Plan is { } plan ? $"{DateText.Day(plan.Statements[0].From!.Value)} to {DateText.Day(plan.Last.To!.Value)}" : "";

    /// <inheritdoc/>
    protected override int Count => Asks is { } asks ? asks.Length : Lines.Length;

    /// <inheritdoc/>
    protected override string Empty => !work.IsBegun ? "No file yet: Enter types the path of one from the bank, or of a folder with some, in CSV, OFX, camt.053, camt.052 or MT940. The beginning of a name is enough where only one file has it, and paths can be pasted."
        : Plan is not null ? "All lines are matched; c takes the statement."
        : Refusal;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Asks is { IsEmpty: false } asks ? [new(Key.Enter, "Enter", "pick", "Pick what is right; it is remembered for the next file.", () => Done(asks[Cursor].Pick))]
            : Here is { } line ? lineKeys.Of(line, Lines.Any(IsSure) ? new(Key.A.WithCtrl, "Ctrl+A", "all sure", "Take all that is proposed as sure.", TakeSure) : null)
            : !work.IsBegun ? [new(Key.Enter, "Enter", "file", "Type the path of a file from the bank.", File)]
            : Array.Empty<Binding>(),
        .. work.IsBegun && work.Paths.Length < StatementWork.MostFiles ? [Letters.Add.Does("", "Add another file from the bank.", File)] : Array.Empty<Binding>(),
        .. Plan is { Last.Closing: null } ? [Letters.Bank.Does("balance", "Type the bank's balance after the last line: the file has none.", () => new Way.Edit(new CellEdit("The bank's balance", Plan.Closing?.ToString(session.Style) ?? "", Balance)))] : Array.Empty<Binding>(),
        new(Key.K.WithCtrl, "Ctrl+K", Here is null ? "rules" : "", "The rules that are kept for lines of statements.", () => new Way.To(new RulesScreen(session))),
        .. work.IsBegun ? [new(Key.Delete, "Del", Plan is null ? "forget" : "", "Forget the files and what was chosen, and begin anew.", Forget)] : Array.Empty<Binding>(),
        Letters.Undo.Does(work.IsBegun ? "" : "take back", "Take back the statements taken last, as a whole, after a question.", () => TakenBack.Question(session)),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. Plan is null ? Array.Empty<Binding>() : [Letters.Confirm.Does("finish", "Take the statement: shows what will be written, and asks.", Confirm)],
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", "Back; files and choices stay here, also where the terminal goes.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => Asks is not null ? Question
        : Here is { } line ? CleanText.OneLine($"{PlanText.What(line.Line)}: {Ended(PlanText.Becomes(session.Book.Household, line, isSureTaken: false))} {PlanText.Why(session.Book.Household, line)}{lineKeys.Notes(line)}".TrimEnd())
        : "";

    /// <inheritdoc/>
    protected override string Status => Plan is { } plan && work.Taken(plan) is var after
        ? after.Ok ? PlanText.Difference(after.Value, session.Style) : TextOf(after.Fault)
        : "";

    private StatementPlan? Plan => work.Plan is { Ok: true } plan ? plan.Value : null;

    private ImmutableArray<PlannedLine> Lines => Plan is { } plan ? [.. plan.Others] : [];

    private PlannedLine? Here => Lines.IsEmpty ? null : Lines[Math.Clamp(Cursor, 0, Lines.Length - 1)];

    // What only the person can say before anything can be proposed; null where nothing is asked.
    private ImmutableArray<(string Name, Action Pick)>? Asks =>
        !work.IsBegun ? null
        : work.Input.Question is { Question.Kind: not CsvQuestionKind.Currency } asked ? [.. asked.Question.Choices.Select((choice, i) => (CleanText.OneLine(choice.Reads), (Action)(() => work.Answer(i + 1))))]
        : work.Plan switch
        {
            { Fault: PlanFault.WhichAccount which } => [.. which.Accounts.Select(account => (CleanText.OneLine(account.Length == 0 ? "The one without a number" : account), (Action)(() => work.Choose(account))))],
            { Fault: PlanFault.OtherAccount other } => [($"{CleanText.OneLine(other.Account)} is the household's account", () => work.Choose(other.Account))],
            { Fault: PlanFault.OfACard card } => [($"{CleanText.OneLine(card.Account)} is the household's account", () => work.Choose(card.Account))],
            _ => null,
        };

    private string Question => work.Input.Question is { } asked ? StatementTexts.Asked(asked.Path, asked.Question) : work.Plan is { Ok: false } refused ? FaultTexts.Of(refused.Fault, session.Style) + " Enter says which is the household's." : "";

    private string Refusal => string.Join(' ', new[]
    {
        work.Input.Refused.Select(fault => FaultTexts.Of(fault, session.Style)),
        work.Input.Broken.Select(broken => $"{broken.Path}: {Payday.Statements.Faults.FaultTexts.Of(broken.Fault)}"),
        work.Plan is { Ok: false } refused ? [FaultTexts.Of(refused.Fault, session.Style)] : [],
    }.SelectMany(texts => texts).Append("Del forgets the file; a adds another."));

    /// <inheritdoc/>
    public override bool Pasted(string text)
    {
        Message = paths.Pasted(text) ?? Message;
        return text.Trim().Length > 0;
    }

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Under(int width)
    {
        if (Plan is not { } plan)
        {
            return work.IsBegun ? Said.Lines([Said.Quiet(string.Join(", ", work.Paths.Select(path => CleanText.OneLine(System.IO.Path.GetFileName(path)))))], width) : [];
        }

        IEnumerable<Said> said =
        [
            PlanText.Summary(plan, session.Style),
            .. work.Input.Noticed.Take(1).Select(notice => Said.Alert(Payday.Statements.Faults.FaultTexts.Of(notice.Fault))),
            .. plan.Gaps.Take(1).Select(gap => Said.Alert(StatementTexts.Gap(gap, session.Style))),
        ];
        return Said.Lines(said, width);
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        if (Asks is { } asks)
        {
            return ([], [.. asks.Select(ask => ask.Name)]);
        }

        if (Lines.IsEmpty)
        {
            return ([], []);
        }

        TextTableLines table = new TextTable(
            [new("date"), new("line") { Shrinks = true, MinWidth = 10 }, Report.Amounts("amount"), new("becomes") { Shrinks = true, MinWidth = 12 }],
            [.. Lines.Select(line => ImmutableArray.Create(
                DateText.Short(line.Line.Date), PlanText.What(line.Line), line.Line.Amount.ToString(session.Style), PlanText.Becomes(session.Book.Household, line, isSureTaken: false)))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (table.Header, table.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => Asks is not null || row >= Lines.Length ? (' ', Ink.Plain)
        : Lines[row] is { Choice: { } chosen } ? chosen is { Target.Use: LineUse.Leave, Lines.IsEmpty: true } ? ('x', Ink.Quiet) : (RowSigns.Done, Ink.Plain)
        : (' ', Ink.Plain);

    private string TextOf(Fault fault) => FaultTexts.Of(fault, session.Style) + (fault is TakingFault.NoBalance ? " @ types it." : "");

    private static bool IsSure(PlannedLine line) => line is { Choice: null, Proposal.IsSure: true };

    private Way File() => new Way.Edit(paths.One());

    private Way TakeSure()
    {
        PlannedLine[] sure = [.. Lines.Where(IsSure)];
        work.Choose(sure.Select(line => (line, line.Proposal)));
        Cursor = Math.Max(0, Lines.ToList().FindIndex(line => line.Choice is null));
        News = $"{"line".ToQuantity(sure.Length)} taken as proposed; c writes them once the others are chosen or left.";
        return Way.Stay;
    }

    private void Chosen(PlannedLine line, Proposal? choice)
    {
        work.Choose((line, choice));
        Cursor = Math.Min(Cursor + 1, Lines.Length - 1);
    }

    private string? Balance(string text)
    {
        Result<Money> balance = Money.ParseSum(text, session.Book.Household.Currency, session.Style);
        if (!balance.Ok)
        {
            return FaultTexts.Of(balance.Fault, session.Style);
        }

        work.Say(balance.Value);
        return null;
    }

    // What is a question needs no stop behind it.
    private static string Ended(string text) => text.EndsWith('?') ? text : text + ".";

    private static Way Done(Action act)
    {
        act();
        return Way.Stay;
    }

    private Way Forget()
    {
        work.Forget();
        Cursor = 0;
        return Way.Stay;
    }

    private Way Confirm()
    {
        StatementPlan plan = Plan!;
        Result<Book> after = work.Taken(plan);
        if (!after.Ok)
        {
            if (after.Fault is TakingFault.AtLine at)
            {
                Cursor = Math.Max(0, Lines.ToList().FindIndex(line => line.Line.Date == at.Line.Date && line.Line.Amount == at.Line.Amount && line.Line.Party == at.Line.Party && line.Line.Text == at.Line.Text));
            }

            Message = TextOf(after.Fault);
            return Way.Stay;
        }

        return new Way.To(new TakeStatementScreen(session, work, plan));
    }
}
