using System.Collections.Immutable;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Home;

/// <summary>Picks what the ledger is to be about.</summary>
/// <param name="session">The book.</param>
/// <param name="pick">Takes what was picked; null is everything.</param>
internal sealed class LedgerFilterScreen(BookSession session, Action<LedgerSubject?> pick) : CursorScreen
{
    private readonly ImmutableArray<LedgerSubject?> subjects =
        [null, .. SubjectText.All(session.Book.Household).Select(subject => (LedgerSubject?)subject)];

    /// <inheritdoc/>
    public override string Title => "Show movements about";

    /// <inheritdoc/>
    protected override int Count => subjects.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => [new(Key.Enter, "Enter", "show", "Only movements about this.", Pick)];

    /// <inheritdoc/>
    protected override string Detail => "";

    /// <inheritdoc/>
    protected override string Status => "A letter goes to the next name that begins with it.";

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        int found = Enumerable.Range(1, Count)
            .Select(step => (Cursor + step) % Count)
            .FirstOrDefault(row => Name(subjects[row]).StartsWith(text, StringComparison.OrdinalIgnoreCase), Cursor);
        Cursor = found;
        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, ImmutableArray<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [Report.Names("Name"), new("")],
            [.. subjects.Select(subject => ImmutableArray.Create(Name(subject), subject is { } one ? SubjectText.List(one.Kind) : ""))],
            decimalMark: "").Lay(width);
        return (lines.Header, lines.Rows);
    }

    private string Name(LedgerSubject? subject) => subject is { } one ? CleanText.OneLine(SubjectText.Of(session.Book.Household, one)) : "Everything";

    private Way Pick()
    {
        pick(subjects[Cursor]);
        return Way.Back;
    }
}
