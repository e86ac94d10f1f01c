using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Fills;

/// <summary>Which pots to fill the wallet from, week by week, and with which notes.</summary>
internal sealed class FillsScreen : CursorScreen
{
    private const string ToFill = "to fill";
    private const string Over = "week over";

    private readonly BookSession session;
    private ImmutableArray<FillPart> parts;
    private Book? partsOf;
    private LocalDate partsOn;

    /// <summary>Begins at the first fill that waits, or else at the first that is not marked yet.</summary>
    public FillsScreen(BookSession session)
    {
        this.session = session;
        List<FillPart> all = [.. Parts];
        Cursor = Math.Max(0, all.FindIndex(part => State(part) == ToFill) is >= 0 and int waiting ? waiting : all.FindIndex(part => Marked(part) is null));
    }

    /// <inheritdoc/>
    public override string Title => "Fill the wallet";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Fill day", "the weekday on which the wallet is filled."),
        ("Skipped", "the cash stays at home in its envelope and can still be filled later."),
    ];

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(session.Today);

    /// <inheritdoc/>
    protected override int Count => Parts.Length;

    /// <inheritdoc/>
    protected override string Empty => "No payday has left anything to fill. Esc leads back.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => Here is null
        ? Received
        :
        [
            new(Key.Enter, "Enter", "done", "This pot is filled for this week.", () => Mark(FillState.Done)),
            Letters.KeepAtHome.Does("skip", "Not this time: the cash stays at home.", () => Mark(FillState.Skipped)),
            new(Key.A.WithCtrl, "Ctrl+A", "all done", "All pots to fill this week by today are filled.", All),
            Letters.Undo.Does(Marked(Here!) is null ? "" : "undo", "Take back the mark of this fill: it is as it was before it.", Unmark),
            .. Received,
        ];

    /// <inheritdoc/>
    protected override string Detail => Here is { } part
        ? $"{part.Pot.Name}, week of {DateText.Weekday(part.Key.Day)}: {Detailed(part)}{(State(part) == Over ? " That week is over: its count takes this as done, unless k says that it was skipped." : "")}"
        : "";

    /// <inheritdoc/>
    protected override string Status
    {
        get
        {
            ImmutableArray<FillPart> waiting = WalletFills.Waiting(session.Book, session.Today);
            Money sum = Money.Sum(waiting.Select(part => part.Moves), session.Book.Household.Currency);
            return waiting.IsEmpty ? "Nothing waits to be filled today." : $"{"pot".ToQuantity(waiting.Length)} to fill by today, {sum.ToString(session.Style)}.";
        }
    }

    // Once for each book: a long life has many.
    private ImmutableArray<FillPart> Parts
    {
        get
        {
            if (!ReferenceEquals(partsOf, session.Book) || partsOn != session.Today)
            {
                (partsOf, partsOn) = (session.Book, session.Today);
                parts = WalletFills.ToMark(partsOf, partsOn);
            }

            return parts;
        }
    }

    private Binding[] Received => session.Book.LastClosed is null
        ? []
        : [Letters.Gaps.Does("other notes", "Enter what the bank really gave, where it isn't what the slip asked for.", () => new Way.To(new ReceivedScreen(session)))];

    private FillPart? Here => Parts is { IsEmpty: false } parts ? parts[Math.Clamp(Cursor, 0, parts.Length - 1)] : null;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            FillTable.Columns,
            [.. Parts.Select(part => FillTable.Cells(part, State(part), session.Style))],
            gap: width < 74 ? 1 : 2,
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => Marked(Parts[row])?.State switch
    {
        FillState.Done => (RowSigns.Done, Ink.Done),
        FillState.Skipped => ('-', Ink.Quiet),
        _ => State(Parts[row]) == ToFill ? (' ', Ink.Plain) : (' ', Ink.Quiet),
    };

    // What only a purchase took as done waits, as long as its week lasts.
    private static WalletFill? Marked(FillPart part) => part.IsAssumed ? null : part.Marked;

    private string State(FillPart part) => Marked(part)?.State switch
    {
        FillState.Done => "done",
        FillState.Skipped => "skipped",
        _ when part.Moves.IsZero => "nothing left",
        _ => part.Key.Day > session.Today ? "not yet" : WalletFills.IsOver(session.Book.Household, part, session.Today) ? Over : ToFill,
    };

    private string Detailed(FillPart part) => part.Moves == part.Amount
        ? $"{NoteText.Listed(part.Notes, part.Amount.Currency, session.Style)} = {part.Amount.ToString(session.Style)}."
        : $"{part.Moves.ToString(session.Style)} of {part.Amount.ToString(session.Style)}, as {FillText.Rest(part)}.";

    private Way Mark(FillState state)
    {
        Result<Book> after = WalletFills.Mark(session.Book, Here!.Key, state, WalletFills.DoneOn(Here.Key, session.Today));
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        session.Take(after.Value);
        Cursor = Math.Min(Cursor + 1, Count - 1);
        return Way.Stay;
    }

    private Way Unmark()
    {
        FillKey key = Here!.Key;
        if (WalletFills.InTheWay(session.Book, key) is { } obstacle)
        {
            Message = UndoTexts.WithKeys(obstacle, session.Style);
            return Way.Stay;
        }

        Result<Book> after = WalletFills.Unmark(session.Book, key, session.Today);
        if (after.Ok)
        {
            session.Take(after.Value);
        }

        Tell("The mark is taken back.", after.Fault is { } fault ? FaultTexts.Of(fault, session.Style) : null);
        return Way.Stay;
    }

    private Way All()
    {
        int waiting = WalletFills.Waiting(session.Book, session.Today).Length;
        Result<Book> after = WalletFills.FillAll(session.Book, session.Today);
        if (after.Ok && waiting > 0)
        {
            session.Take(after.Value);
        }

        Tell(waiting == 0 ? "Nothing waits to be filled today." : $"{"pot".ToQuantity(waiting)} filled.", after.Fault is { } fault ? FaultTexts.Of(fault, session.Style) : null);
        return Way.Stay;
    }
}
