using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Undo;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>What undoing a movement would write, and why it is undone.</summary>
internal sealed class UndoScreen(BookSession session, Movement movement) : PageScreen
{
    private readonly OfBook<(Result<Book> Trial, Obstacle? Obstacle)> now = new(
        session, () => (Undoing.Of(session.Book, movement.Number, session.Today, "trial"), Undoing.InTheWay(session.Book, movement.Number)));

    // Undone here, with what it belongs to, or before.
    private bool IsDone => session.Book.Ledger.UndoneBy(movement.Number) is not null;

    /// <inheritdoc/>
    public override string Title => $"Undo ledger line {movement.Number}";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(movement.Date);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => now.Value.Trial.Ok && !IsDone
        ? [new(Key.Enter, "Enter", "undo it", "Say why, and write the reverse to the ledger.", () => new Way.Edit(new CellEdit("Undone because", "", Undo)))]
        : FirstBack.Keys(session, IsDone ? null : now.Value.Obstacle);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        (Result<Book> trial, Obstacle? obstacle) = now.Value;
        Said[] lines = IsDone ? [MovementText.Sentence(session.Book, movement), "", "It is undone. Esc leads back to the ledger."]
            : trial.Ok ? [MovementText.Sentence(session.Book, movement), "", .. After(trial.Value)]
            : [MovementText.Sentence(session.Book, movement), "", Said.Alert(obstacle is null ? FaultTexts.Of(trial.Fault!, session.Style) : FirstBack.Text(session, obstacle))];
        return Said.Lines(lines, width);
    }

    private IEnumerable<Said> After(Book after)
    {
        yield return $"This will be written: {MovementText.Ends(session.Book, after.Ledger.Movements[^1])}.";
        Money left = after.Ledger.Balances[LedgerEnd.InAccount(Purpose.LeftToPlace)];
        if (!left.IsZero)
        {
            yield return $"{left.ToString(session.Style)} is left to place then; the next payday carries it over.";
        }

        if (Undoing.OpenedAgain(session.Book, after) is not null)
        {
            yield return "The bill is to be paid then; the next payday takes it up again.";
        }

        if (MovementPair.Of(session.Book, movement) is { } other)
        {
            yield return Said.Alert($"Ledger line {other.Number} goes with it and stays as it is: {MovementText.Ends(session.Book, other)}. Undo that one too where both are wrong{(IsCash(other) ? "; as it moves notes, by taking the whole payday up again (z in the ledger)" : "")}.");
        }

        yield return "The line and its reverse both stay in the ledger.";
    }

    private static bool IsCash(Movement other) => other.From is LedgerEnd.At { Place: Place.Cash } || other.To is LedgerEnd.At { Place: Place.Cash };

    private string? Undo(string reason)
    {
        Result<Book> undone = Undoing.Of(session.Book, movement.Number, session.Today, CleanText.OneLine(reason));
        if (!undone.Ok)
        {
            return FaultTexts.Of(undone.Fault, session.Style);
        }

        session.Take(undone.Value);
        return null;
    }
}
