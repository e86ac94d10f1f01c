using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Statements;

/// <summary>The rules that are kept for lines of statements: seen, added, changed, dropped.</summary>
internal sealed class RulesScreen(BookSession session) : CursorScreen
{
    private const int Longest = 60;
    private const string Field = "words";

    // Kept, so that Esc loses nothing.
    private readonly KeptForm form = new(session, "statement rule");

    private string? Typed => form[Field];

    /// <inheritdoc/>
    public override string Title => "Rules for lines of statements";

    /// <inheritdoc/>
    protected override int Count => Rules.Length;

    /// <inheritdoc/>
    protected override string Empty => "No rule is kept. a adds one; on a line of a statement # keeps what that becomes.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Rules.IsEmpty ? Array.Empty<Binding>() : [new(Key.Enter, "Enter", "becomes", "Pick what lines of this rule become.", () => new Way.To(Picks(Rules[Cursor].Words, Rules[Cursor].Target)))],
        .. Typed is not { } typed ? Array.Empty<Binding>() : [new(Key.CursorRight, "Right", "pick", "Pick what lines with the words that were typed become; they stay here until then.", () => new Way.To(Picks(typed, null)))],
        Letters.Add.Does("add", "Add a rule: the words that a line has, all of them, or its mandate; with nothing typed it is forgotten.", () => new Way.Edit(new CellEdit("Lines with these words", Typed ?? "", Type))),
        .. Rules.IsEmpty ? Array.Empty<Binding>() : [Letters.TakeOut.Does("drop", "Drop this rule.", Drop)],
    ];

    /// <inheritdoc/>
    protected override string Detail => Typed is { } typed ? $"Lines with '{typed}': Right picks what they become."
        : Rules.IsEmpty ? "" : "A rule counts for lines that the book has nothing for, before anything else is proposed.";

    private ImmutableArray<StatementRule> Rules => session.Book.Weeks.StatementRules;

    /// <summary>What is wrong with the words of a rule; null for nothing.</summary>
    public static string? FaultOf(string words) => !words.Any(char.IsLetterOrDigit) ? "Write the words that such lines have, or their mandate."
        : Clean(words).Length > Longest ? $"At most {Longest} characters, please."
        : null;

    /// <summary>The words of a rule as they are kept.</summary>
    public static string Clean(string words) => CleanText.OneLine(words).Trim().ToLowerInvariant();

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        if (Rules.IsEmpty)
        {
            return ([], []);
        }

        TextTableLines table = new TextTable(
            [Report.Names("lines with"), Report.Names("become")],
            [.. Rules.Select(rule => ImmutableArray.Create(rule.Words, TargetText.Name(session.Book.Household, rule.Target)))],
            decimalMark: "").Lay(width);
        return (table.Header, table.Rows);
    }

    private string? Type(string text)
    {
        if (Typed is not null && text.Trim().Length == 0)
        {
            form.Forget();
            return null;
        }

        if (FaultOf(text) is { } fault)
        {
            return fault;
        }

        form.Keep((Field, Clean(text)));
        return null;
    }

    private PickScreen<LineTarget?> Picks(string of, LineTarget? now)
    {
        ImmutableArray<PickItem<LineTarget?>> picks = TargetPicks.Of(session.Book, comesIn: null);
        return new PickScreen<LineTarget?>(
            $"Lines with '{of}' become",
            picks,
            now ?? picks[0].Value,
            target => target is null ? new Way.Instead(MovePicks.Of(session.Book, comesIn: null, move => Kept(of, move))) : Kept(of, target));
    }

    private Way Kept(string of, LineTarget target)
    {
        Book ruled = session.Book with { Weeks = session.Book.Weeks.With(new StatementRule(of, target)) };
        if (of == Typed)
        {
            form.Done(ruled);
        }
        else
        {
            session.Take(ruled);
        }

        Cursor = Math.Max(0, Rules.ToList().FindIndex(rule => rule.Words == of));
        return Way.Back;
    }

    private Way Drop()
    {
        session.Take(session.Book with { Weeks = session.Book.Weeks with { StatementRules = Rules.RemoveAt(Cursor) } });
        return Way.Stay;
    }
}
