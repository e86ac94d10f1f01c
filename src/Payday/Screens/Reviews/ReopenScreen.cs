using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>What reopening the last closed payday would write, and the question whether to.</summary>
internal sealed class ReopenScreen(BookSession session) : PageScreen
{
    private readonly OfBook<Result<Book>> now = new(session, () => Reopening.Of(session.Book, session.Today));

    /// <inheritdoc/>
    public override string Title => "Reopen the last payday";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => now.Value.Ok
        ? [new(Key.Enter, "Enter", "reopen it", "Undo all that the payday wrote, and take it up again.", Reopen)]
        : FirstBack.Keys(session, Reopening.InTheWay(session.Book));

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(Texts(), width);

    private IEnumerable<Said> Texts()
    {
        Book before = session.Book;
        Result<Book> reopened = now.Value;
        if (!reopened.Ok)
        {
            yield return Said.Alert(Reopening.InTheWay(before) is { } obstacle ? FirstBack.Text(session, obstacle) : FaultTexts.Of(reopened.Fault, session.Style));
            yield break;
        }

        yield return $"The payday of {DateText.Long(before.LastClosed!.Payday)} will be open again, with all that was decided for it.";
        yield return $"{"ledger line".ToQuantity(reopened.Value.Ledger.Since(before.Ledger).Count())} will be written: the reverse of each that it wrote. Both stay there.";
        if (Reopening.Drops(before) is { } dropped)
        {
            yield return Said.Alert($"The payday of {DateText.Long(dropped.Payday)} is begun; what was decided for it goes.");
        }

        yield return "";
        yield return "If cash has been withdrawn for it already, keep its notes as they are until it is closed again.";
    }

    private Way Reopen()
    {
        session.Take(now.Value.Value!);
        return new Way.Home("The payday is open again; Enter goes on with it.");
    }
}
