using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Dues;

/// <summary>The question whether what is to be paid of a due needs no more money.</summary>
internal sealed class FreeScreen(BookSession session, DueLine due) : PageScreen
{
    private readonly Result<Book> after = Paying.Enter(
        session.Book, new DueEntry(due.Key, session.Today, Money.Zero(due.Rest.Currency), FreesRest: true), session.Today);

    /// <inheritdoc/>
    public override string Title => $"Free {due.Name}";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(due.Date);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => after.Ok
        ? [new(Key.Enter, "Enter", "free it", "It needs no more money; u takes that back.", Free)]
        : [];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(Texts().SelectMany(said => new Said[] { said with { Text = CleanText.OneLine(said.Text) }, "" }), width);

    private IEnumerable<Said> Texts() => after.Ok
        ?
        [
            $"{due.Own.ToString(session.Style)} of {due.Name} is to be paid by {DateText.Weekday(due.Date)}{(due.Paid.IsZero ? "" : $"; {due.Paid.ToString(session.Style)} was paid")}.",
            $"Freed, it is asked for no more, and {(due.Has - due.Bought).ToString(session.Style)} that is set aside for it is left to place on the next payday.{(due.Bought.IsPositive ? $" {due.Bought.ToString(session.Style)} for what was bought with the card goes on waiting." : "")}",
        ]
        : [Said.Alert(FaultTexts.Of(after.Fault!, session.Style))];

    private Way Free()
    {
        session.Take(after.Value!);
        return Way.Back;
    }
}
