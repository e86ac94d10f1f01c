using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Moves;

/// <summary>The moves so far, the latest first; one more, or one undone.</summary>
internal sealed class MovesScreen(BookSession session) : EnteredScreen<Move>(session)
{
    /// <inheritdoc/>
    public override string Title => "Moves";

    /// <inheritdoc/>
    protected override string Empty => "No money was moved yet; a moves some.";

    /// <inheritdoc/>
    protected override string Noun => "move";

    /// <inheritdoc/>
    protected override ImmutableArray<Move> All => Session.Book.Weeks.Moves;

    /// <inheritdoc/>
    protected override (string Does, string Help, Func<Screen> Form) More => ("move money", "Move money from one purpose to another.", () => new MoveScreen(Session));

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns =>
        [Report.Names("from"), Report.Names("to"), Report.Amounts("amount"), new("why") { Shrinks = true, MinWidth = 6 }];

    /// <inheritdoc/>
    protected override EnteredFacts Of(Move one) => new(one.Number, one.Date, MoveText.Of(Session.Book, one), one.Notes, one.Undone);

    /// <inheritdoc/>
    protected override ImmutableArray<string> Cells(Move one) =>
        [PurposeNames.Of(Session.Book.Household, one.From), PurposeNames.Of(Session.Book.Household, one.To), one.Amount.ToString(Session.Style), one.Why];

    /// <inheritdoc/>
    protected override TakeBackScreen TakeBack(Move one) => Question(Session, one);

    /// <summary>The question whether to take one back.</summary>
    public static TakeBackScreen Question(BookSession session, Move one) => new(
        session,
        $"Undo move {one.Number}",
        [$"{MoveText.Of(session.Book, one)}, on {DateText.Long(one.Date)}.", "Both have again what they had, for every day; the move stays in the list, marked as undone."],
        () => Moving.InTheWay(session.Book, one.Number),
        () => Moving.Undo(session.Book, one.Number, session.Today),
        $"Move {one.Number} is undone.");
}
