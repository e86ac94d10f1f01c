using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Undo;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Asking;

/// <summary>What taking something back would do, and the question whether to; or what is in the way and the keys that lead there.</summary>
/// <param name="session">The book.</param>
/// <param name="title">What is taken back.</param>
/// <param name="texts">What that does, a paragraph each.</param>
/// <param name="obstacle">What is in the way now, or null.</param>
/// <param name="take">Takes it back.</param>
/// <param name="done">What is said once it is.</param>
/// <param name="endsAtHome">Whether home is next, as where it came from shows what is gone; else that screen is.</param>
internal sealed class TakeBackScreen(
    BookSession session, string title, IEnumerable<string> texts, Func<Obstacle?> obstacle, Func<Result<Book>> take, string done, bool endsAtHome = false) : PageScreen
{
    private readonly OfBook<Obstacle?> inTheWay = new(session, obstacle);
    private string? refused;

    private string? Fault => refused ?? (inTheWay.Value is { } first ? FirstBack.Text(session, first) : null);

    /// <inheritdoc/>
    public override string Title => title;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => Fault is null
        ? [new(Key.Enter, "Enter", "take it back", "Take it back: write the reverse of its lines to the ledger.", Take)]
        : FirstBack.Keys(session, refused is null ? inTheWay.Value : null);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(
        (Fault is not { } fault ? texts.Select(Plain) : [.. texts.Take(1).Select(Plain), Said.Alert(CleanText.OneLine(fault))]).SelectMany(said => new Said[] { said, "" }), width);

    private static Said Plain(string text) => CleanText.OneLine(text);

    private Way Take()
    {
        Result<Book> after = take();
        if (!after.Ok)
        {
            refused = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        session.Take(after.Value);
        return endsAtHome ? new Way.Home(done) : new Way.Done(done);
    }
}
