using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Books;
using Payday.Core.AccountEntries;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Entries;

/// <summary>What came in and went out outside paydays, the latest first; one more, or one undone.</summary>
internal sealed class EntriesScreen(BookSession session) : CursorScreen
{
    /// <inheritdoc/>
    public override string Title => "Came in, went out";

    /// <inheritdoc/>
    protected override int Count => session.Book.Weeks.Entries.Length;

    /// <inheritdoc/>
    protected override string Empty => "Nothing came in or went out outside a payday yet; a enters the first. Refunds are among the card purchases.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        session.Changing(this, Letters.Add.Does("enter", "Enter what came in or went out, or the loose notes counted.", () => new Way.To(new EntryScreen(session)))),
        .. Here is { Undone: false } entry
            ? [session.Changing(this, Letters.Undo.Does("undo", "Undo this entry, after a question: all is as if it had not been.", () => new Way.To(TakeBack(entry))))]
            : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override string Detail => Here is { } entry
        ? CleanText.OneLine($"{DateText.Long(entry.Date)}: {EntryText.Of(session.Book, entry)}.{(entry.Undone ? " Undone." : entry.Notes is { } notes ? $" {NoteText.Listed(notes, session.Book.Household.Currency, session.Style)}." : "")}")
        : "";

    private AccountEntry? Here => Count == 0 ? null : At(Math.Clamp(Cursor, 0, Count - 1));

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new("", Align.Right), new("date"), Report.Names("for"), new("kind"), Report.Amounts("amount"), new("what") { Shrinks = true, MinWidth = 6 }],
            [.. Enumerable.Range(0, Count).Select(At).Select(entry => ImmutableArray.Create(
                entry.Number.ToString(CultureInfo.InvariantCulture),
                DateText.Day(entry.Date),
                PurposeNames.Of(session.Book.Household, entry.For),
                entry.Counted is null ? EntryText.Kind(entry) : "counted",
                entry.Amount.ToString(session.Style),
                entry.What))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => At(row).Undone ? ('x', Ink.Quiet) : (' ', Ink.Plain);

    private AccountEntry At(int row) => session.Book.Weeks.Entries[Count - 1 - row];

    private TakeBackScreen TakeBack(AccountEntry entry) => new(
        session,
        $"Undo entry {entry.Number}",
        [$"{EntryText.Of(session.Book, entry)}, on {DateText.Long(entry.Date)}.", "All is as it was, for every day; the entry stays in the list, marked as undone."],
        Entering.InTheWay(session.Book, entry.Number),
        () => Entering.Undo(session.Book, entry.Number, session.Today),
        $"Entry {entry.Number} is undone.");
}
