using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Weeks;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Weeks;

/// <summary>The week-end count: what is left of each cash pot, and what becomes of it.</summary>
internal sealed class CountScreen : CursorScreen
{
    private readonly BookSession session;
    private CountPlan plan;

    /// <summary>Goes on with the count begun, or begins that of the first week that is to be counted.</summary>
    public CountScreen(BookSession session)
    {
        this.session = session;
        plan = CountPlan.Of(session.Book, CountWeeks.Begun(session.Book, session.Today));
    }

    /// <inheritdoc/>
    public override string Title => $"Week-end count, {DateText.Weekday(plan.Draft.Date)}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Filled", "what was in the pot since its last count: what stayed, what was filled in, what came from other pots."),
        ("Owed back", "bought by card against a cash pot: that cash goes to the bank, so it isn't spent here."),
        ("Stays, moves on", "what is left remains in the pot, or goes to another pot, a debt or the account."),
        ("Difference", "money that is missing, or was found, under a name, until it is cleared up."),
    ];

    /// <inheritdoc/>
    protected override string Aside => $"week of {DateText.Short(plan.Week)}, {plan.Counted} of {plan.Rows.Length} counted";

    /// <inheritdoc/>
    protected override int Count => plan.Rows.Length;

    /// <inheritdoc/>
    protected override string Empty => "No cash pot has anything to count. Esc leads back.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => Here is null
        ? [Day]
        :
        [
            new(Key.Enter, "Enter", "left", "Type what is left; a sum like 12.50+3 is taken, and nothing at all leaves the pot uncounted.", () => new Way.Edit(Left(Here!, Typed(Here!)))),
            new(new Key('n'), "n", "by notes", "Count what is left note by note.", () => new Way.To(ByNotes(Here!))),
            new(Key.Space, "Space", "stays, moves on", "What is left stays in the pot, or moves on to where the pot proposes.", Turn),
            new(new Key('t'), "t", "", "What is left moves on to another pot, a debt or the account.", () => new Way.To(Targets(Here!))),
            new(new Key('d'), "d", "", "Name what is missing from what was spent, or what was found.", () => new Way.Edit(Difference(Here!))),
            new(new Key('o'), "o", "", "Differences of earlier counts that are still open.", () => new Way.To(new DifferencesScreen(session))),
            Day,
        ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. plan.Counted > 0 ? [new Binding(new Key('c'), "c", "confirm", "Write what was counted to the ledger; pots without a figure stay uncounted.", Confirm)] : Array.Empty<Binding>(),
        ShellKeys.Help(this),
        ShellKeys.Back,
    ];

    /// <inheritdoc/>
    protected override string Detail => Here is not { } row
        ? ""
        : row.Fault is { } fault
            ? row.Left > row.Expected ? $"{fault} d names it." : fault
            : $"{row.Pot.Name}: {Shown(row.Expected)} should be there, {(row.Since is { } since ? $"since the count of {DateText.Weekday(since)}" : "not counted before")}.{Split(row)}{Open(row)}";

    /// <inheritdoc/>
    protected override string Status => $"Spent so far {Shown(plan.Spent)}.{Later()}";

    private Binding Day => new(new Key('w'), "w", "", "Count for another day, such as a week's end that was missed.", () => new Way.Edit(new CellEdit("Count for", LocalDatePattern.Iso.Format(plan.Draft.Date), Move)));

    private CountRow? Here => plan.Rows.IsEmpty ? null : plan.Rows[Math.Clamp(Cursor, 0, plan.Rows.Length - 1)];

    /// <inheritdoc/>
    public override CellEdit? Typing(string text) => Here is { } row && char.IsAsciiDigit(text[0]) ? Left(row, text) : null;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, ImmutableArray<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [
                Report.Names("Pot"), Report.Amounts("filled"), Report.Amounts("owed back") with { Drops = 1 }, Report.Amounts("expected"),
                Report.Amounts("left"), Report.Amounts("spent"), new("then") { Shrinks = true, MinWidth = 5 },
            ],
            [.. plan.Rows.Select(Cells)],
            gap: width < 74 ? 1 : 2,
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => plan.Rows[row] switch
    {
        { Fault: not null } => ('!', Ink.Hand),
        { Entry: not null } => ('v', Ink.Done),
        _ => (' ', Ink.Plain),
    };

    private ImmutableArray<string> Cells(CountRow row) =>
    [
        row.Pot.Name,
        Shown(row.Expected + row.OwedBack),
        Shown(row.OwedBack),
        Shown(row.Expected),
        row.Entry is null ? "" : Shown(row.Left),
        row.Entry is null || row.Fault is not null ? "" : Shown(row.Spent),
        Then(row),
    ];

    private string Then(CountRow row) => row switch
    {
        { Entry: not null, Left.IsZero: true } => "",
        { MovesOnTo: null } => row.Entry is null ? "" : "stays",
        _ => "to " + row.MovesOnTo!.NameIn(session.Book.Household),
    };

    private string Split(CountRow row) => row.Difference.IsZero
        ? ""
        : $" {Shown(row.Difference.IsNegative ? -row.Difference : row.Difference)} {(row.Difference.IsNegative ? "found" : "missing")}: {row.Entry!.DifferenceName}.";

    private string Open(CountRow row) => string.Concat(Differences.Open(session.Book)
        .Where(count => count.PotId == row.Pot.Id)
        .Select(count => " " + WeekText.Difference(session.Book, count)));

    private string Later()
    {
        int later = CountWeeks.Open(session.Book, session.Today).Count(week => week.LastDay > plan.Draft.Date);
        return later == 0 ? "" : $" {"later week".ToQuantity(later)} to count after this.";
    }

    private string Typed(CountRow row) => row.Entry is null ? "" : Shown(row.Left);

    private CellEdit Left(CountRow row, string text) => new($"Left of {row.Pot.Name}", text, typed =>
    {
        if (typed.Trim().Length == 0)
        {
            Keep(plan.Draft.Without(row.Pot.Id));
            return null;
        }

        Read<Money> amount = Money.ParseSum(typed, session.Book.Household.Currency, session.Style);
        if (!amount.Ok)
        {
            return amount.Fault;
        }

        if (amount.Value.IsNegative)
        {
            return "What is left can't be below zero.";
        }

        Enter(row, (row.Entry ?? new CountEntry(amount.Value)) with { Left = amount.Value, Notes = null, IsFind = false });
        return null;
    });

    private NotesScreen ByNotes(CountRow row) => new(
        session,
        $"Count {row.Pot.Name} by notes",
        $"{Shown(row.Expected + row.StillOwed)} should be there{(row.StillOwed.IsZero ? "" : $", with the {Shown(row.StillOwed)} it owes back")}.",
        row.Entry?.Notes ?? ImmutableSortedDictionary<long, int>.Empty,
        notes =>
        {
            Money worth = NotesScreen.Worth(notes, session.Book.Household.Currency);
            Enter(row, (row.Entry ?? new CountEntry(worth)) with { Left = worth, Notes = notes, IsFind = false });
        });

    // What is wrong with an entry stands beside it, and nothing is confirmed until it is mended.
    private void Enter(CountRow row, CountEntry entry)
    {
        Keep(plan.Draft.With(row.Pot.Id, entry));
        CountRow entered = plan.Rows.Single(known => known.Pot.Id == row.Pot.Id);
        if (entered.Fault is null)
        {
            Cursor = Math.Min(Cursor + 1, Count - 1);
        }
    }

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
            Keep(plan.Draft.With(row.Pot.Id, row.Entry with { Then = CountThen.Stays }));
            return Way.Stay;
        }

        if (row.Pot.MovesOnTo is null)
        {
            return new Way.To(Targets(row));
        }

        Keep(plan.Draft.With(row.Pot.Id, row.Entry with { Then = null }));
        return Way.Stay;
    }

    private PickScreen<MoveTarget?> Targets(CountRow row) => new(
        $"What is left of {row.Pot.Name}",
        [
            new PickItem<MoveTarget?>(null, "Stays in the pot", ""),
            new PickItem<MoveTarget?>(MoveTarget.Buffer, "The account's buffer", "account"),
            .. session.Book.Household.Debts.Select(debt => new PickItem<MoveTarget?>(MoveTarget.Debt(debt.Id), debt.Name, "debt")),
            .. session.Book.Household.Pots.Where(pot => pot.Id != row.Pot.Id)
                .Select(pot => new PickItem<MoveTarget?>(MoveTarget.Pot(pot.Id), pot.Name, "pot, " + PotsReport.Place(pot))),
        ],
        row.MovesOnTo,
        target =>
        {
            if (row.Entry is null)
            {
                Message = "Type what is left first.";
            }
            else
            {
                Keep(plan.Draft.With(row.Pot.Id, row.Entry with { Then = new CountThen(target) }));
            }

            return Way.Back;
        });

    // E.g. Lost coin=0.50; where more is left than was there, a name alone says that it was found.
    private CellEdit Difference(CountRow row)
    {
        bool found = row.Entry is not null && row.Left > row.Expected;
        return new CellEdit(found ? "Found; what is it" : "Missing, as Name=AMOUNT", row.Entry?.DifferenceName ?? "", text =>
        {
            if (row.Entry is null)
            {
                return "Type what is left first.";
            }

            if (found)
            {
                Enter(row, row.Entry with { IsFind = true, DifferenceName = CleanText.OneLine(text).Trim() });
                return null;
            }

            int at = text.LastIndexOf('=');
            if (text.Trim().Length == 0)
            {
                Enter(row, row.Entry with { Missing = Money.Zero(row.Left.Currency), DifferenceName = "" });
                return null;
            }

            if (at < 1)
            {
                return "Write it like Lost coin=0.50.";
            }

            Read<Money> amount = Money.ParseSum(text[(at + 1)..], row.Left.Currency, session.Style);
            if (!amount.Ok)
            {
                return amount.Fault;
            }

            Enter(row, row.Entry with { Missing = amount.Value, DifferenceName = CleanText.OneLine(text[..at]).Trim() });
            return null;
        });
    }

    private string? Move(string text)
    {
        if (LocalDatePattern.Iso.Parse(text.Trim()) is not { Success: true, Value: var date })
        {
            return "Write the day like 2026-03-12.";
        }

        if (date > session.Today)
        {
            return $"{DateText.Weekday(date)} has not come yet; count for today or before.";
        }

        Keep(plan.Draft with { Date = date });
        return null;
    }

    private void Keep(CountDraft draft)
    {
        session.Take(session.Book with { Weeks = session.Book.Weeks with { Draft = draft } });
        plan = CountPlan.Of(session.Book, draft);
    }

    private Way Confirm()
    {
        Read<Core.Households.Book> after = plan.Confirm();
        if (!after.Ok)
        {
            Message = after.Fault;
            return Way.Stay;
        }

        string done = $"{"pot".ToQuantity(plan.Counted)} counted, {Shown(plan.Spent)} spent.";
        LocalDate counted = plan.Draft.Date;
        session.Take(after.Value);
        if (!CountWeeks.Open(session.Book, session.Today).Any(week => week.LastDay > counted))
        {
            return new Way.Home(done);
        }

        plan = CountPlan.Of(session.Book, CountWeeks.Begun(session.Book, session.Today, counted));
        Cursor = 0;
        Message = done + " The next week is to be counted too.";
        return Way.Stay;
    }

    private string Shown(Money amount) => amount.ToString(session.Style);
}
