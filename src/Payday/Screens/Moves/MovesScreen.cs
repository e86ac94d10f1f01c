using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Books;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Moves;

/// <summary>The moves so far, the latest first; one more, or one undone.</summary>
internal sealed class MovesScreen(BookSession session) : CursorScreen
{
    /// <inheritdoc/>
    public override string Title => "Moves";

    /// <inheritdoc/>
    protected override int Count => session.Book.Weeks.Moves.Length;

    /// <inheritdoc/>
    protected override string Empty => "No money was moved yet; a moves some.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        session.Changing(this, Letters.Add.Does("move money", "Move money from one purpose to another.", () => new Way.To(new MoveScreen(session)))),
        .. Here is { Undone: false } move
            ? [session.Changing(this, Letters.Undo.Does("undo", "Undo this move, after a question: all is as if it had not been.", () => new Way.To(TakeBack(move))))]
            : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override string Detail => Here is { } move
        ? CleanText.OneLine($"{DateText.Long(move.Date)}: {MoveText.Of(session.Book, move)}.{(move.Undone ? " Undone." : move.Notes is { } notes ? $" {NoteText.Listed(notes, session.Book.Household.Currency, session.Style)}." : "")}")
        : "";

    private Move? Here => Count == 0 ? null : At(Math.Clamp(Cursor, 0, Count - 1));

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new("", Align.Right), new("date"), Report.Names("from"), Report.Names("to"), Report.Amounts("amount"), new("why") { Shrinks = true, MinWidth = 6 }],
            [.. Enumerable.Range(0, Count).Select(At).Select(move => ImmutableArray.Create(
                move.Number.ToString(CultureInfo.InvariantCulture),
                DateText.Day(move.Date),
                PurposeNames.Of(session.Book.Household, move.From),
                PurposeNames.Of(session.Book.Household, move.To),
                move.Amount.ToString(session.Style),
                move.Why))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => At(row).Undone ? ('x', Ink.Quiet) : (' ', Ink.Plain);

    private Move At(int row) => session.Book.Weeks.Moves[Count - 1 - row];

    private TakeBackScreen TakeBack(Move move) => new(
        session,
        $"Undo move {move.Number}",
        [$"{MoveText.Of(session.Book, move)}, on {DateText.Long(move.Date)}.", "Both have again what they had, for every day; the move stays in the list, marked as undone."],
        Moving.InTheWay(session.Book, move.Number),
        () => Moving.Undo(session.Book, move.Number, session.Today),
        $"Move {move.Number} is undone.");
}
