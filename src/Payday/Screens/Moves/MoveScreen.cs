using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Forms;
using Payday.Screens.Shell;

namespace Payday.Screens.Moves;

/// <summary>Money moved from one purpose to another: both picked, the effect shown before it is written.</summary>
internal sealed class MoveScreen(BookSession session)
    : BookFormScreen(session, "move", "move it", "Write the move to the ledger, as the lines under the fields say.")
{
    private const string From = "from";
    private const string To = "to";
    private const string Amount = "amount";
    private const string Why = "why";
    private const string Notes = "notes";
    private const string Day = "day";

    /// <inheritdoc/>
    public override string Title => "Move money";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("To pay back", "cash on its way to the account: its purpose there gets it when the cash return is at the bank."),
        ("Not in notes", "money that waits in the account for a cash pot; the next withdrawal brings it."),
        ("Loose notes", "notes at home that are in no pot."),
    ];

    /// <inheritdoc/>
    protected override ImmutableArray<FormField> Fields =>
    [
        new(From, "From", "What gives the money.") { Picks = Picks(MoveEnds.From(Book).Where(end => MoveEnds.Has(Book, end).IsPositive)) },
        new(To, "To", "What gets it: a pot, a bill, a debt, the buffer or the loose notes.") { Picks = Picks(MoveEnds.To(Book).Where(end => end.Key != Form[From])) },
        Session.Amount(Amount, "Amount", $"How much; a sum like {Session.Style.Written("12.50+3")} is taken."),
        TypedFields.Line(Why, "Why", "What for, in a few words; may be left empty."),
        .. NamesNotes ? [NotesField.Of(Session, Form, Notes, "Notes", "The notes that change hands. From the account to cash: those that you fetch today; leave it empty, and the next withdrawal brings them.")] : Array.Empty<FormField>(),
        Session.Day(Day, "Day", "The day, like 2026-03-12 or 12 Mar; yesterday works too."),
    ];

    /// <inheritdoc/>
    protected override Result<Book>? After => Entry() is { } entry ? Moving.Enter(Book, entry) : null;

    /// <inheritdoc/>
    protected override (string Field, string Todo) Missing =>
        End(From) is null ? (From, "Pick what gives the money first.")
        : End(To) is null ? (To, "Pick what gets it first.")
        : (Amount, "Type how much first.");

    /// <inheritdoc/>
    protected override IEnumerable<string> Changes(Book after) =>
        Entry() is { } entry && MoveEffect.Of(Book, entry) is { Ok: true } effect ? MoveText.Of(Book.Household, entry, effect.Value) : [];

    // From cash into the account none change hands yet.
    private bool NamesNotes => (End(From), End(To)) is (LedgerEnd.At from, { } to)
        && (to is LedgerEnd.At { Place: Place.Cash } || from == MoveEnds.Loose);

    private MoveEntry? Entry() => End(From) is { } from && End(To) is { } to && TypedFields.AmountIn(Session, Text(Amount)) is { Ok: true } amount && TypedFields.DayIn(Session, Text(Day)) is { Ok: true } day
        ? new MoveEntry(day.Value, from, to, amount.Value, Text(Why), NamesNotes ? NotesField.In(Session, Form[Notes]) : null)
        : null;

    private LedgerEnd? End(string field) => Form[field] is { } key && (field == From ? MoveEnds.From(Book) : MoveEnds.To(Book)).FirstOrDefault(end => end.Key == key) is { } end ? end : null;

    private ImmutableArray<PickItem<string>> Picks(IEnumerable<LedgerEnd> ends) =>
    [
        .. ends.Select(end => new PickItem<string>(end.Key, PurposeNames.Of(Book.Household, end), $"{MoveEnds.Has(Book, end).ToString(Session.Style)}  {PurposeNames.Sort(end)}")),
    ];
}
