using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Counts;

/// <summary>Differences of counts that are still open: since when, and how they are cleared up.</summary>
internal sealed class DifferencesScreen(BookSession session) : CursorScreen
{
    /// <inheritdoc/>
    public override string Title => "Open differences";

    /// <inheritdoc/>
    protected override int Count => Open.Length;

    /// <inheritdoc/>
    protected override string Empty => "No count has an open difference. Esc leads back.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => Count == 0
        ? [TakeBack]
        :
        [
            Letters.Explain.Does("explained", "It is known what it went for: what was missing was spent, what was found had not been.", () => Settle(DifferenceEnd.Explained)),
            Letters.TurnedUp.Does("turned up", "What was missing turned up and is in the pot again.", () => Settle(DifferenceEnd.TurnedUp)),
            TakeBack,
        ];

    /// <inheritdoc/>
    protected override string Detail => Count == 0 ? "" : WeekText.Difference(session.Book, Open[Cursor]);

    private Binding TakeBack => Letters.Undo.Does("take back", "Open the difference again that was cleared up last.", Reopen);

    private ImmutableArray<WeekCount> Open => Differences.Open(session.Book);

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = DifferencesReport.Table(session.Book).Lay(width);
        return (lines.Header, lines.Rows);
    }

    private Way Reopen()
    {
        if (Differences.LastSettled(session.Book) is not { } last)
        {
            Message = "No difference was cleared up yet.";
            return Way.Stay;
        }

        if (Differences.InTheWay(session.Book, last) is { } obstacle)
        {
            Message = UndoTexts.WithKeys(obstacle, session.Style);
            return Way.Stay;
        }

        Result<Book> after = Differences.Reopen(session.Book, last, session.Today);
        if (after.Ok)
        {
            session.Take(after.Value);
        }

        Message = (after.Fault is { } fault ? FaultTexts.Of(fault, session.Style) : null) ?? "The difference is open again.";
        return Way.Stay;
    }

    private Way Settle(DifferenceEnd how)
    {
        Result<Book> after = Differences.Settle(session.Book, Open[Cursor].Number, how, session.Today);
        if (after.Ok)
        {
            session.Take(after.Value);
        }

        Message = (after.Fault is { } fault ? FaultTexts.Of(fault, session.Style) : null) ?? "It is cleared up.";
        return Way.Stay;
    }
}
