using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Cards;

/// <summary>What was bought by card, the newest first, and what the pots owe back for it.</summary>
internal sealed class PurchasesScreen(BookSession session) : CursorScreen
{
    // What was typed and not entered is there again the next time.
    private readonly PurchaseListScreen list = new(session);
    private PurchaseForm another = new(session, null);
    private ShownPurchases? shown;

    /// <inheritdoc/>
    public override string Title => "Card purchases";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Card purchase", "bought by card for a pot; for a cash pot the account paid, and the pot has that cash to pay back."),
        ("Refund", "what came back for something bought by card, below zero here; while its cash is still to pay back, that gets less; else the pot has it again."),
        ("Several pots", "one purchase at the bank, a part for each pot; changed and undone as a whole."),
        ("A debt's card", "nothing leaves the account: the balance of the debt rises, and what the pot gives waits for its next payment."),
        ("To pay back", "cash that goes to the bank for what was bought by card: rounded up to the smallest note, or exact, as the household's settings say; the rounding goes to the buffer."),
    ];

    /// <inheritdoc/>
    protected override int Count => Shown.Rows.Length;

    /// <inheritdoc/>
    protected override string Empty => session.IsReadOnly ? "Nothing was bought by card yet." : "Nothing was bought by card yet; a enters the first.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Changing(Letters.Add.Does("add", "Enter another purchase.", () => new Way.To(Another()))),
        Changing(Letters.List.Does("paste a list", "Enter many at once, from a pasted list or a file.", () => new Way.To(list))),
        .. Here is { Undone: false }
            ?
            [
                .. Here.IsRefund ? Array.Empty<Binding>() : [Changing(new(Key.Enter, "Enter", "change", "Change this purchase: it is undone and entered again.", () => new Way.To(new PurchaseForm(session, Here!))))],
                Changing(Letters.Undo.Does("undo", "Undo this purchase, after a question: account and pot are as if it had not been.", () => new Way.To(new UndoPurchaseScreen(session, Here!)))),
            ]
            : Array.Empty<Binding>(),
        Changing(Letters.Return.Does("", "Take the cash that pots have to pay back to the bank.", () => new Way.Visit(new Goal.Return(session)))),
    ];

    /// <inheritdoc/>
    protected override string Detail => Row is { } row
        ? CleanText.OneLine($"{DateText.Long(row.Parts[0].Date)}: {string.Join(", ", row.Of.Select(From))}"
            + $"{(row.Parts[0].What.Length == 0 ? "" : ", " + row.Parts[0].What)}{ByCard(row.Parts[0])}. {State(row)}.{Early(row)}")
        : "";

    /// <inheritdoc/>
    protected override string Status => $"{Shown.OwedBack.ToString(session.Style)} in cash to pay back{(session.IsReadOnly ? "." : "; r takes it to the bank.")}";

    private ShownPurchases Shown => shown?.AreOf(session.Book) == true ? shown : shown = new ShownPurchases(session.Book);

    private ShownPurchases.Row? Row => Shown.Rows is { IsEmpty: false } all ? all[Math.Clamp(Cursor, 0, all.Length - 1)] : null;

    private CardPurchase? Here => Row?.Parts[0];

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        var table = new LongTable(
            [
                new("date"), Report.Names("pot"), new("what") { Shrinks = true, MinWidth = 8 },
                Report.Amounts("amount"), Report.Amounts("to pay back"),
            ],
            Shown.Widest,
            Count,
            Shown.Cells,
            width,
            gap: width < 74 ? 1 : 2,
            decimalMark: session.Style.DecimalMark);
        return (table.Header, table);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => Shown.Rows[row] switch
    {
        { Parts: [{ Undone: true }, ..] } => ('x', Ink.Quiet),
        { OwedBack.IsZero: true } => (RowSigns.Done, Ink.Plain),
        var shown => shown.Of.All(part => part.OwedBack.IsZero || Shown.IsBack(part)) ? (RowSigns.Done, Ink.Done) : (' ', Ink.Plain),
    };

    private string From(CardPurchase part) => part.IsRefund
        ? $"{(-part.Amount).ToString(session.Style)} back to {WeekText.PotName(session.Book, part.PotId)}"
        : $"{part.Amount.ToString(session.Style)} from {WeekText.PotName(session.Book, part.PotId)}";

    private string ByCard(CardPurchase purchase) => purchase.Card is { } card ? $", by {EndText.Debt(session.Book.Household, card)}" : "";

    private string State(ShownPurchases.Row row) => row.Parts[0] switch
    {
        { Undone: true } => "Undone",
        { IsRefund: true, Card: not null } when row.OwedBack.IsZero => "A refund: less is owed on the card",
        { IsRefund: true } when row.OwedBack.IsZero => "A refund, there again for what it was bought for",
        { IsRefund: true } => $"A refund: {(-row.OwedBack).ToString(session.Style)} is no longer to pay back",
        { Card: not null } when row.OwedBack.IsZero => "Owed on the card; its money is in the account for the next payment",
        _ when row.OwedBack.IsZero => "Paid from the account",
        _ => string.Join(", ", row.Of.Where(part => part.OwedBack.IsPositive).GroupBy(Shown.IsBack)
            .Select(same => $"{Money.Sum(same.Select(part => part.OwedBack), row.OwedBack.Currency).ToString(session.Style)} {(same.Key ? "came back" : "to pay back")}{WeekText.Rounding(same, session.Style)}")),
    };

    private string Early(ShownPurchases.Row row) => row.Parts[0].Undone ? "" : string.Concat(row.Of.Select(part => WeekText.Early(session.Book, part)).OfType<string>().Select(early => $" {early}."));

    private PurchaseForm Another() => another = another.IsEntered ? new PurchaseForm(session, null) : another;

    private Binding Changing(Binding binding) => session.Changing(this, binding);
}
