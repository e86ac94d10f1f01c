using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Asking;

/// <summary>Notes and coins by value, counted one value after the other.</summary>
internal sealed class NotesScreen : CursorScreen
{
    private const int Most = 10_000;

    private readonly BookSession session;
    private readonly string title;
    private readonly string about;
    private readonly Action<Notes> take;
    private readonly ImmutableArray<long> values;
    private Notes notes;
    private bool touched;

    /// <param name="session">The book.</param>
    /// <param name="title">What is counted.</param>
    /// <param name="about">A sentence on what is expected.</param>
    /// <param name="notes">What is known so far, by value in minor units.</param>
    /// <param name="take">Takes what was counted.</param>
    public NotesScreen(BookSession session, string title, string about, Notes notes, Action<Notes> take)
    {
        this.session = session;
        this.title = title;
        this.about = about;
        this.notes = session.HalfCounted.GetValueOrDefault(Place) ?? notes;
        touched = session.HalfCounted.ContainsKey(Place);
        this.take = take;
        CashPieces cash = session.Book.Household.Settings.Cash;
        values = [.. cash.Notes.Concat(cash.Coins).Select(piece => piece.MinorUnits).Union(notes.Values).OrderDescending()];
    }

    private string Place => $"{title}: {about}";

    /// <inheritdoc/>
    public override string Title => title;

    /// <inheritdoc/>
    protected override int Count => values.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Enter, "Enter", "how many", "Type how many there are of this value.", () => new Way.Edit(HowMany(Number(values[Cursor])))),
        .. touched ? [Letters.TakeOut.Does("as it was", "Clear what was typed here, and go back.", LeaveOut)] : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. touched ? [new Binding(Key.CursorRight, "Right", "take it", "Take the notes as they stand here, and go back.", Done)] : Array.Empty<Binding>(),
        ShellKeys.Help(this),
        ShellKeys.Back,
    ];

    /// <inheritdoc/>
    protected override string Detail => about;

    /// <inheritdoc/>
    protected override string Status =>
        $"Together {notes.Worth(session.Book.Household.Currency).ToString(session.Style)}{(touched ? ". Right takes it, x leaves what was there before." : "")}";

    /// <inheritdoc/>
    public override CellEdit? Typing(string text) => char.IsAsciiDigit(text[0]) ? HowMany(text) : null;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        Currency currency = session.Book.Household.Currency;
        TextTableLines lines = new TextTable(
            [new("Value", Align.Right) { MinWidth = 8 }, new("how many", Align.Right), Report.Amounts("amount") with { MinWidth = 12 }],
            [.. values.Select(value => ImmutableArray.Create(
                NoteText.Value(value, currency, session.Style),
                notes.Values.Contains(value) ? Number(value) : ".",
                notes.Values.Contains(value) ? (Money.FromMinorUnits(value, currency) * notes[value]).ToString(session.Style) : ""))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    private string Number(long value) => notes[value].ToString(CultureInfo.InvariantCulture);

    private CellEdit HowMany(string text) => new($"How many {NoteText.Value(values[Cursor], session.Book.Household.Currency, session.Style)}", text, typed =>
    {
        if (!int.TryParse(typed.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count > Most)
        {
            return $"Write a whole number, at most {Most}.";
        }

        notes = notes.With(values[Cursor], count);
        touched = true;
        session.HalfCounted[Place] = notes;
        Cursor = Math.Min(Cursor + 1, Count - 1);
        return null;
    });

    private Way Done()
    {
        session.HalfCounted.Remove(Place);
        take(notes);
        return Way.Back;
    }

    private Way LeaveOut()
    {
        session.HalfCounted.Remove(Place);
        return Way.Back;
    }
}
