using System.Collections.Immutable;
using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Entries;

/// <summary>What came in and went out outside paydays, the latest first; one more, or one undone.</summary>
internal sealed class EntriesScreen(BookSession session) : EnteredScreen<AccountEntry>(session)
{
    /// <inheritdoc/>
    public override string Title => "Came in, went out";

    /// <inheritdoc/>
    protected override string Empty => "Nothing came in or went out outside a payday yet; a enters the first. Refunds are among the card purchases.";

    /// <inheritdoc/>
    protected override string Noun => "entry";

    /// <inheritdoc/>
    protected override ImmutableArray<AccountEntry> All => Session.Book.Weeks.Entries;

    /// <inheritdoc/>
    protected override (string Does, string Help, Func<Screen> Form) More => ("enter", "Enter what came in or went out, or the loose notes counted.", () => new EntryScreen(Session));

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns =>
        [Report.Names("for"), new("kind"), Report.Amounts("amount"), new("what") { Shrinks = true, MinWidth = 6 }];

    /// <inheritdoc/>
    protected override EnteredFacts Of(AccountEntry one) => new(one.Number, one.Date, EntryText.Of(Session.Book, one), one.Notes, one.Undone);

    /// <inheritdoc/>
    protected override ImmutableArray<string> Cells(AccountEntry one) =>
        [PurposeNames.Of(Session.Book.Household, one.For), one.Counted is null ? EntryText.Kind(one) : "counted", one.Amount.ToString(Session.Style), one.What];

    /// <inheritdoc/>
    protected override TakeBackScreen TakeBack(AccountEntry one) => Question(Session, one);

    /// <summary>The question whether to take one back.</summary>
    public static TakeBackScreen Question(BookSession session, AccountEntry one) => new(
        session,
        $"Undo entry {one.Number}",
        [$"{EntryText.Of(session.Book, one)}, on {DateText.Long(one.Date)}.", "All is as it was, for every day; the entry stays in the list, marked as undone."],
        () => Entering.InTheWay(session.Book, one.Number),
        () => Entering.Undo(session.Book, one.Number, session.Today),
        $"Entry {one.Number} is undone.");
}
