using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Returns;

/// <summary>Cash that pots owe the account, the notes to pull for it, and the slip for the bank.</summary>
internal sealed class ReturnScreen : CursorScreen
{
    private readonly BookSession session;
    private ReturnPlan plan;

    /// <summary>Plans the return of all that is owed, or goes on with the one that was left.</summary>
    public ReturnScreen(BookSession session)
    {
        this.session = session;
        plan = ReturnPlan.Of(session.Book, session.Return);
    }

    /// <inheritdoc/>
    public override string Title => "Cash return";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Cash return", "taking the cash to pay back to the bank, with its own slip."),
        ("Swap", "notes of equal worth that change places between two pots, so that both are right and the sum can be made; do it before you pull the notes."),
        ("You choose", "which notes lie in the pot isn't known: any that make the amount will do; say which if you like."),
    ];

    /// <inheritdoc/>
    protected override string Aside => $"{Plan.Total.ToString(session.Style)} to the bank";

    /// <inheritdoc/>
    protected override int Count => Plan.Lines.Length;

    /// <inheritdoc/>
    protected override string Empty => "No pot has cash to pay back. Esc leads back.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => Here is not { } line
        ? [TakeBack]
        :
        [
            new(Key.Space, "Space", line.Goes ? "leave" : "take along", "Whether this pot's cash goes to the bank this time.", Turn),
            new(Key.Enter, "Enter", "notes", "Say which notes you pull from this pot.", () => new Way.To(Notes(line))),
            Letters.Proposal.Does("", "The notes of this pot as planned.", () => Decide(Plan.Draft with { Picked = Plan.Draft.Picked.Remove(line.Pot.Id) })),
            TakeBack,
        ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. Plan.Total.IsPositive ? [Letters.Confirm.Does("slip", "The slip for the bank, to print or to save; there it is confirmed too.", ToSlip)] : Array.Empty<Binding>(),
        ShellKeys.Help(this),
        ShellKeys.Back,
    ];

    /// <inheritdoc/>
    protected override string Detail => Here is { } line ? $"{line.Pot.Name}: {WayText(line)}" : "";

    /// <inheritdoc/>
    protected override string Status => Plan.Total.IsZero
        ? ""
        : $"Slip: {NoteText.Listed(Plan.SlipNotes, Plan.Total.Currency, session.Style)}{(Plan.Unlisted.IsZero ? "" : $", and {Plan.Unlisted.ToString(session.Style)} in notes that you choose")}";

    private Binding TakeBack => Letters.Undo.Does(Here is null ? "take back" : "", "Take back the last cash return, after a question.", () => ReturnBack.Question(session));

    // Another screen may have changed the book since, as taking back does.
    private ReturnPlan Plan => ReferenceEquals(plan.Book, session.Book) ? plan : plan = ReturnPlan.Of(session.Book, session.Return);

    private ReturnLine? Here => Plan.Lines.IsEmpty ? null : Plan.Lines[Math.Clamp(Cursor, 0, Plan.Lines.Length - 1)];

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [Report.Names("Pot"), Report.Amounts(width < 74 ? "pay back" : "to pay back"), new("pull") { Shrinks = true, MinWidth = 12 }, new("swap before") { Shrinks = true, MinWidth = 10 }, new("")],
            [.. Plan.Lines.Select(line => ImmutableArray.Create(
                line.Pot.Name,
                line.Owes.ToString(session.Style),
                line.Notes is { } notes ? NoteText.Listed(notes, line.Owes.Currency, session.Style) : line.Way == ReturnWay.NoWay ? "no way" : "you choose",
                line.Swap is { } swap ? $"{NoteText.Listed(swap.Gives, line.Owes.Currency, session.Style)} for {NoteText.Listed(swap.Gets, line.Owes.Currency, session.Style)}" : "",
                line.Goes ? "" : "stays"))],
            gap: width < 74 ? 1 : 2,
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => Plan.Lines[row] switch
    {
        { Fault: not null } => ('!', Ink.Alert),
        { Way: ReturnWay.NoWay or ReturnWay.NotesUnknown } => ('!', Ink.Alert),
        { Goes: true } => (RowSigns.Done, Ink.Plain),
        _ => (' ', Ink.Quiet),
    };

    private string WayText(ReturnLine line)
    {
        if (line.Fault is { } fault)
        {
            return ReturnTexts.Of(fault, session.Style);
        }

        if (ReturnTexts.Advice(line, session.Style) is { } advice)
        {
            return advice;
        }

        string pull = line.Notes is { } notes ? $"pull {NoteText.Listed(notes, line.Owes.Currency, session.Style)}" : "";
        return line.Swap is { } swap
            ? $"first give its {NoteText.Listed(swap.Gives, line.Owes.Currency, session.Style)} to {(swap.With is null ? "the loose notes" : WeekText.PotName(session.Book, swap.With))} for {NoteText.Listed(swap.Gets, line.Owes.Currency, session.Style)}, then {pull}."
            : pull + ".";
    }

    private NotesScreen Notes(ReturnLine line) => new(
        session,
        $"Notes to pull from {line.Pot.Name}",
        $"{line.Owes.ToString(session.Style)} to pay back.",
        line.Notes ?? Core.Cash.Notes.None,
        notes => Decide(Plan.Draft with { Picked = Plan.Draft.Picked.SetItem(line.Pot.Id, notes) }));

    private Way Turn()
    {
        ReturnLine line = Here!;
        return Decide(Plan.Draft with { Leaves = line.Goes ? Plan.Draft.Leaves.Add(line.Pot.Id) : Plan.Draft.Leaves.Remove(line.Pot.Id) });
    }

    private Way Decide(ReturnDraft draft)
    {
        session.Return = draft;
        plan = ReturnPlan.Of(session.Book, draft);
        return Way.Stay;
    }

    private Way ToSlip()
    {
        Message = string.Join(' ', Plan.Lines.Where(line => line.Fault is not null).Select(line => ReturnTexts.Of(line.Fault!, session.Style)));
        return Message.Length > 0 ? Way.Stay : new Way.To(new DepositScreen(session, Plan));
    }
}
