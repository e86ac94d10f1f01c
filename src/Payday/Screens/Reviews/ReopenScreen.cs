using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>What reopening the last closed payday would write, and the question whether to.</summary>
internal sealed class ReopenScreen(BookSession session) : PageScreen
{
    private readonly Result<Reopening> reopening = Reopening.Of(session.Book, session.Today);

    /// <inheritdoc/>
    public override string Title => "Reopen the last payday";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => reopening.Ok
        ? [new(Key.Enter, "Enter", "reopen it", "Undo all that the payday wrote, and take it up again.", Reopen)]
        : [];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Texts()
        .SelectMany(line => line.Length == 0 ? [""] : TextWrap.Lines(line, width - 2))
        .Select(line => FrameLine.Of(" " + line, line.StartsWith('!') ? Ink.Hand : Ink.Plain));

    private IEnumerable<string> Texts()
    {
        if (!reopening.Ok)
        {
            yield return "! " + (Reopening.InTheWay(session.Book) is { } obstacle ? UndoTexts.WithKeys(obstacle, session.Style) : FaultTexts.Of(reopening.Fault, session.Style));
            yield break;
        }

        yield return $"The payday of {DateText.Long(reopening.Value.Reopened.Payday)} will be open again, with all that was decided for it.";
        yield return $"{"movement".ToQuantity(reopening.Value.Movements.Length)} will be written to the ledger: the reverse of each that it wrote. Both stay there.";
        if (reopening.Value.Drops is { } dropped)
        {
            yield return $"! The payday of {DateText.Long(dropped.Payday)} is begun; what was decided for it goes.";
        }

        yield return "";
        yield return "If cash has been withdrawn for it already, keep its notes as they are until it is closed again.";
    }

    private Way Reopen()
    {
        session.Take(reopening.Value!.Book);
        return new Way.Home("The payday is open again; Enter goes on with it.");
    }
}
