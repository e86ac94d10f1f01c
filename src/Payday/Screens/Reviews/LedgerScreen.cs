using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Histories;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>What was done with money, the newest day first, each with its movements where it is unfolded; or the movements about one thing, or of some days.</summary>
internal sealed class LedgerScreen(BookSession session) : CursorScreen
{
    private MovementFilter filter = new();
    private ShownMovements? shown;
    private LedgerRows? rows;

    /// <inheritdoc/>
    public override string Title => filter.Subject is { } subject ? "Ledger: " + SubjectText.Of(session.Book.Household, subject) : "Ledger";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Ledger line", "an amount that goes from one place and purpose to another. It is never changed; a mistake is undone by its reverse."),
        ("Undone", "what was done and what undid it; neither is in any figure."),
        ("Left to place", "money that waits for a purpose; the next payday carries it over."),
    ];

    /// <inheritdoc/>
    protected override string Aside => filter.Dates is { } dates
        ? dates.First == dates.Last ? DateText.Long(dates.First) : $"{DateText.Long(dates.First)} to {DateText.Long(dates.Last)}"
        : "newest day first";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Row is { } row ? [new(Key.Enter, "Enter", Rows.IsUnfolded(row.Group) ? "fold" : "unfold", "The ledger lines of what was done, or no more.", () => Turn(row))] : Array.Empty<Binding>(),
        Letters.One.Does("only one", "Only lines about one source, bill, debt or pot.", () => new Way.To(Subjects())),
        Letters.Days.Does("dates", "Only lines of a day, a month or some days; empty for all.", () => new Way.Edit(new CellEdit("Day, month, or one to another", "", Between))),
        .. Here is null && Row is null ? Array.Empty<Binding>() : [session.Changing(this, Letters.Undo.Does("undo", "Undo this ledger line by its reverse, with a reason; of what was entered as a whole it says what leads there.", Undo))],
        session.Reopens(this),
    ];

    /// <inheritdoc/>
    protected override int Count => IsGrouped ? Rows.Count : Shown.Movements.Length;

    /// <inheritdoc/>
    protected override string Empty => filter == new MovementFilter() ? "Nothing has moved yet." : "No ledger line is like that; o and d change what is shown.";

    /// <inheritdoc/>
    protected override string Detail => Here is { } movement ? MovementText.Sentence(session.Book, movement)
        : Row is { } row ? $"{LedgerGroupText.Of(session.Book, row.Group)}: {"ledger line".ToQuantity(row.Group.Movements.Length)}."
        : "";

    private ShownMovements Shown => shown?.IsOf(session.Book, filter) == true ? shown : shown = new ShownMovements(session.Book, filter);

    // What isn't looked for is grouped; what is looked for is a list.
    private bool IsGrouped => filter == new MovementFilter();

    private LedgerRows Rows => rows?.IsOf(session.Book) == true ? rows : rows = new LedgerRows(session.Book, rows);

    private LedgerRow? Row => IsGrouped && Rows.Count > 0 ? Rows[Math.Clamp(Cursor, 0, Rows.Count - 1)] : null;

    private Movement? Here => IsGrouped ? Row?.Movement
        : Shown.Movements is { IsEmpty: false } movements ? movements[Math.Clamp(Cursor, 0, movements.Length - 1)] : null;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        if (IsGrouped)
        {
            return ([], Rows.Texts(width));
        }

        var table = new LongTable(
            [new("", Align.Right), new("date"), new("from") { Shrinks = true, MinWidth = 12 }, new("to") { Shrinks = true, MinWidth = 12 }, Report.Amounts("amount")],
            Shown.Widest,
            Count,
            Shown.Cells,
            width,
            decimalMark: session.Style.DecimalMark);
        return (table.Header, table);
    }

    private PickScreen<LedgerSubject?> Subjects() => new(
        "Show ledger lines about",
        [
            new PickItem<LedgerSubject?>(null, "Everything", ""),
            .. SubjectText.All(session.Book.Household).Select(subject =>
                new PickItem<LedgerSubject?>(subject, SubjectText.Of(session.Book.Household, subject), SubjectText.List(subject))),
        ],
        filter.Subject,
        Only);

    private Way Only(LedgerSubject? subject)
    {
        filter = filter with { Subject = subject };
        Cursor = 0;
        return Way.Back;
    }

    private string? Between(string text)
    {
        Result<DateSpan> dates = text.Trim().Length == 0 ? default : DateSpan.Parse(text, session.Book.Household.Settings.DateOrder);
        if (!dates.Ok)
        {
            return FaultTexts.Of(dates.Fault, session.Style);
        }

        filter = filter with { Dates = text.Trim().Length == 0 ? null : dates.Value };
        Cursor = 0;
        return null;
    }

    private Way Turn(LedgerRow row)
    {
        Cursor = Rows.Turn(row.Group);
        return Way.Stay;
    }

    private Way Undo()
    {
        if (Here is { } movement)
        {
            return new Way.To(new UndoScreen(session, movement));
        }

        LedgerGroup group = Row!.Group;
        if (group.Kind is LedgerGroupKind.Entry or LedgerGroupKind.Alone)
        {
            return new Way.To(new UndoScreen(session, group.Movements[0]));
        }

        Message = group.Kind == LedgerGroupKind.Payday
            ? "Enter unfolds it; u undoes one of its lines, z takes the last payday up again."
            : "Enter unfolds it.";
        return Way.Stay;
    }
}
