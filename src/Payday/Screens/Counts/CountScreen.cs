using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Counts;

/// <summary>The week-end count: what is left of each cash pot, and what becomes of it.</summary>
internal sealed class CountScreen : CursorScreen
{
    private const string NamesIt = "e says where it came from.";

    private readonly BookSession session;
    private readonly CountWork work;
    private readonly CountCells cells;

    /// <summary>Goes on with the count begun, or begins that of the first week that is to be counted.</summary>
    public CountScreen(BookSession session)
    {
        this.session = session;
        work = new CountWork(session);
        cells = new CountCells(work, Entered);
    }

    /// <inheritdoc/>
    public override string Title => $"Week-end count, {DateText.Weekday(Plan.Draft.Date)}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Filled", "what was in the pot since its last count: what stayed, what was filled in, what came from other pots."),
        ("To pay back", "bought by card against a cash pot: that cash goes to the bank, so it isn't spent here."),
        ("Stays, goes to", "what is left remains in the pot, or goes to another pot, a debt or the account."),
        ("Difference", "money that is missing, or was found, under a name, until it is cleared up."),
    ];

    /// <inheritdoc/>
    protected override string Aside => $"week of {DateText.Short(Plan.Week)}, {Plan.Counted} of {Plan.Rows.Length} counted";

    /// <inheritdoc/>
    protected override int Count => Plan.Rows.Length;

    /// <inheritdoc/>
    protected override string Empty => "No cash pot has anything to count. Esc leads back.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => Here is null
        ? [Day, BackKey]
        :
        [
            .. NeedsName ? [NameKey] : Array.Empty<Binding>(),
            new(Key.Enter, "Enter", "left", $"Type what is left; a sum like {session.Style.Written("12.50+3")} is taken, and nothing at all leaves the pot uncounted.", () => new Way.Edit(cells.Left(Here!, Typed(Here!)))),
            new(Key.Space, "Space", Here!.MovesOnTo is null ? "goes to" : "stays", "What is left stays in the pot, or goes to where the pot proposes.", Turn),
            Letters.Notes.Does("notes", "Count what is left note by note.", () => new Way.To(ByNotes(Here!))),
            Letters.To.Does("", "What is left goes to another pot, a debt or the account.", () => ToTargets(Here!)),
            .. NeedsName ? Array.Empty<Binding>() : [NameKey],
            Letters.Gaps.Does(Differences.Open(session.Book).Any() ? "gaps" : "", "Differences of earlier counts that are still open.", () => new Way.To(new DifferencesScreen(session))),
            BackKey,
            Day,
        ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. Plan.Rows.IsEmpty ? Array.Empty<Binding>() : [Letters.Confirm.Does(Plan.Counted > 0 ? "confirm" : "", "Write what was counted to the ledger; pots without a figure stay uncounted.", Confirm)],
        ShellKeys.Help(this),
        ShellKeys.Back,
    ];

    /// <inheritdoc/>
    protected override string Detail => Here is not { } row
        ? ""
        : row.Fault is { } fault
            ? row.Left > row.Expected && !(row.Since > Plan.Draft.Date) ? $"{CountTexts.Of(fault, session.Style)} {NamesIt}" : CountTexts.Of(fault, session.Style)
            : CountRowText.Of(session, row);

    /// <inheritdoc/>
    protected override string Status => $"Spent so far {Shown(Plan.Spent)}.{Later()}";

    private Binding Day => Letters.Days.Does(Here is null ? "another day" : "", "Count for another day, such as a week's end that was missed.", () => new Way.Edit(cells.Day()));

    private Binding BackKey => Letters.Undo.Does("take back", "Take back a count that was confirmed, after a question.", ToCountsBack);

    // More than should be there is either typed wrong or found: the key that says which stands first then.
    private bool NeedsName => Here is { Fault: CountFault.MoreThanThere or CountFault.Unnamed };

    private Binding NameKey => Letters.Explain.Does(
        NeedsName ? "where from" : Here?.Entry is null ? "" : "missing", "Name what is missing from what was spent, or what was found.", ToName);

    private Way ToName()
    {
        if (Here is { Entry: { } })
        {
            return new Way.Edit(cells.Difference(Here));
        }

        Message = "Type what is left first.";
        return Way.Stay;
    }

    private CountPlan Plan => work.Plan;

    private CountRow? Here => Plan.Rows.IsEmpty ? null : Plan.Rows[Math.Clamp(Cursor, 0, Plan.Rows.Length - 1)];

    /// <inheritdoc/>
    public override CellEdit? Typing(string text) => Here is { } row && (char.IsAsciiDigit(text[0]) || text == "-") ? cells.Left(row, text) : null;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            CountTable.Columns(Plan.Rows),
            [.. CountTable.Cells(Plan.Rows, Then, session.Style)],
            gap: CountTable.HasGaps(Plan.Rows) && width < CountTable.Roomy ? 1 : 2,
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => Plan.Rows[row] switch
    {
        { Fault: not null } => ('!', Ink.Alert),
        { Entry: not null } => (RowSigns.Done, Ink.Done),
        _ => (' ', Ink.Plain),
    };

    private string Then(CountRow row) => row switch
    {
        { Entry: not null, Left.IsZero: true } => "",
        { MovesOnTo: null } => row.Entry is null ? "" : "stays",
        _ => "to " + row.MovesOnTo!.NameIn(session.Book.Household),
    };

    private string Later()
    {
        int later = CountWeeks.Open(session.Book, session.Today).Count(week => week.LastDay > Plan.Draft.Date);
        return later == 0 ? "" : $" {"later week".ToQuantity(later)} to count after this.";
    }

    private string Typed(CountRow row) => row.Entry is null ? "" : Shown(row.Left);

    private NotesScreen ByNotes(CountRow row) => new(
        session,
        $"Count {row.Pot.Name} by notes",
        $"{Shown(row.Expected + row.StillOwed)} should be there{(row.StillOwed.IsZero ? "" : $", with the {Shown(row.StillOwed)} it has to pay back")}.",
        row.Entry?.Notes ?? Notes.None,
        notes =>
        {
            Money worth = notes.Worth(session.Book.Household.Currency);
            Entered(work.Enter(row.Pot.Id, (row.Entry ?? new CountEntry(worth)) with { Left = worth, Notes = notes, IsFind = false }));
        });

    private Way Turn()
    {
        CountRow row = Here!;
        if (row.Entry is null)
        {
            Message = "Type what is left first.";
            return Way.Stay;
        }

        if (row.MovesOnTo is not null)
        {
            work.Enter(row.Pot.Id, row.Entry with { Then = CountThen.Stays });
            return Way.Stay;
        }

        if (row.Pot.MovesOnTo is null)
        {
            return ToTargets(row);
        }

        work.Enter(row.Pot.Id, row.Entry with { Then = null });
        return Way.Stay;
    }

    private Way ToTargets(CountRow row) => new Way.To(CountTargets.Picks(session, row, target =>
    {
        if (row.Entry is null)
        {
            Message = "Type what is left first.";
        }
        else
        {
            work.Enter(row.Pot.Id, row.Entry with { Then = new CountThen(target) });
        }

        return Way.Back;
    }));

    private Way ToCountsBack()
    {
        if (CountsBack.Picks(session) is { } picks)
        {
            return new Way.To(picks);
        }

        Message = "No count was confirmed yet.";
        return Way.Stay;
    }

    private Way Confirm()
    {
        string done = $"{"pot".ToQuantity(Plan.Counted)} counted, {Shown(Plan.Spent)} spent.";
        Result<bool> goesOn = work.Confirm();
        if (!goesOn.Ok)
        {
            Message = Refused(FaultTexts.Of(goesOn.Fault, session.Style));
            return Way.Stay;
        }

        if (!goesOn.Value)
        {
            return new Way.Home(done);
        }

        Cursor = 0;
        News = done + " The next week is to be counted too.";
        return Way.Stay;
    }

    // What is wrong with a figure stands beside it already: said again it would look as if nothing had happened. So the
    // refusal says that it is one, and the cursor goes to the first figure to mend.
    private string Refused(string fault)
    {
        CountRow[] wrong = [.. Plan.Rows.Where(row => row.Fault is not null)];
        if (wrong.Length == 0)
        {
            return fault;
        }

        Cursor = Plan.Rows.IndexOf(wrong[0]);
        string others = wrong.Length == 1 ? "" : $", and {"more figure".ToQuantity(wrong.Length - 1)} to mend after it";
        return $"Not confirmed{others}: {CountTexts.Of(wrong[0].Fault!, session.Style)}{(NeedsName ? " " + NamesIt : "")}";
    }

    private void Entered(bool isRight) => Cursor = isRight ? Math.Min(Cursor + 1, Count - 1) : Cursor;

    private string Shown(Money amount) => amount.ToString(session.Style);
}
