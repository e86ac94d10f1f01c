using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>Every movement of money, the newest first: all, or those about one thing or of some days.</summary>
internal sealed class LedgerScreen(BookSession session) : CursorScreen
{
    private MovementFilter filter = new();
    private ShownMovements? shown;

    /// <inheritdoc/>
    public override string Title => filter.Subject is { } subject ? "Ledger: " + SubjectText.Of(session.Book.Household, subject) : "Ledger";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Movement", "an amount that goes from one place and purpose to another. It is never changed; a mistake is undone by its reverse."),
        ("Left to place", "money that waits for a purpose; the next payday carries it over."),
    ];

    /// <inheritdoc/>
    protected override string Aside => filter.Dates is { } dates
        ? dates.First == dates.Last ? DateText.Long(dates.First) : $"{DateText.Long(dates.First)} to {DateText.Long(dates.Last)}"
        : "newest first";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Letters.One.Does("only one", "Only movements about one source, bill, debt or pot.", () => new Way.To(Subjects())),
        Letters.Days.Does("dates", "Only movements of a day, a month or some days; empty for all.", () => new Way.Edit(new CellEdit("Day, month, or one to another", "", Between))),
        .. Here is null ? Array.Empty<Binding>() : [session.Changing(this, Letters.Undo.Does("undo", "Undo this movement by its reverse, with a reason.", Undo))],
        session.Reopens(this),
    ];

    /// <inheritdoc/>
    protected override int Count => Shown.Movements.Length;

    /// <inheritdoc/>
    protected override string Empty => filter == new MovementFilter() ? "Nothing has moved yet." : "No movement is like that; o and d change what is shown.";

    /// <inheritdoc/>
    protected override string Detail => Here is { } movement ? MovementText.Sentence(session.Book, movement) : "";

    private ShownMovements Shown => shown?.IsOf(session.Book, filter) == true ? shown : shown = new ShownMovements(session.Book, filter);

    private Movement? Here => Shown.Movements is { IsEmpty: false } movements ? movements[Math.Clamp(Cursor, 0, movements.Length - 1)] : null;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
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
        "Show movements about",
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

    private Way Undo() => new Way.To(new UndoScreen(session, Here!));
}
