using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Cards;

/// <summary>One card purchase: what, how much, from which pot, when.</summary>
internal sealed class PurchaseForm : CursorScreen
{
    private const int Amount = 1;
    private const int Pot = 2;
    private const int LongestWhat = 60;

    private readonly BookSession session;
    private readonly CardPurchase? changes;
    private readonly ImmutableArray<PotId?> pots;
    private string what;
    private Money? amount;
    private PotId? potId;
    private bool potChosen;
    private LocalDate? typed;

    /// <param name="session">The book.</param>
    /// <param name="changes">The purchase to change, or null for another one.</param>
    public PurchaseForm(BookSession session, CardPurchase? changes)
    {
        this.session = session;
        this.changes = changes;
        pots = [.. session.Book.Household.Pots.Select(pot => pot.Id), null];
        what = changes?.What ?? "";
        amount = changes?.Amount;
        potId = changes is null ? pots[0] : changes.PotId;
        potChosen = changes is not null;
        typed = changes?.Date;
    }

    /// <summary>Whether it is in the ledger, and the form done with.</summary>
    public bool IsEntered { get; private set; }

    /// <inheritdoc/>
    public override string Title => changes is null ? "Bought by card" : $"Change card purchase {changes.Number}";

    /// <inheritdoc/>
    protected override int Count => 4;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Enter, "Enter", "change", "Change this field; in the pot's row, pick one.", () => Cursor == Pot ? new Way.To(Picks()) : new Way.Edit(Edit(Typed()))),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        new(Key.CursorRight, "Right", "enter it", "Write the purchase to the ledger.", Enter),
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", "Back; what was typed is here again the next time.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => Cursor switch
    {
        0 => "What it was, in a few words: it helps to guess the pot the next time.",
        Amount => $"What the card paid; a sum like {session.Style.Written("12.50+3")} is taken. Below zero, like {session.Style.Written("-12.50")}, is a refund.",
        Pot => potChosen
            ? "The pot it is for; a letter goes to the next one that begins with it. For a cash pot that cash is owed back to the account."
            : "A guess from what was bought before; a letter goes to the next pot that begins with it.",
        _ => "The day of the purchase, like 2026-03-12 or 12 Mar; yesterday works too.",
    };

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        if (Cursor != Pot)
        {
            return Edit(text);
        }

        potId = pots[NextName.From([.. pots.Select(pot => WeekText.PotName(session.Book, pot))], pots.IndexOf(potId), text)];
        potChosen = true;
        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width) =>
    (
        [],
        new TextTable(
            [new(""), new("") { Shrinks = true, MinWidth = 10 }],
            [
                ["What", what],
                ["Amount", amount is { } known ? known.ToString(session.Style) : "-"],
                ["Pot", WeekText.PotName(session.Book, potId)],
                ["Day", DateText.Long(Date)],
            ],
            decimalMark: "").Lay(width).Rows
    );

    // Today is asked for anew until a day is typed: a form begun yesterday is of today.
    private LocalDate Date => typed ?? session.Today;

    private string Typed() => Cursor switch
    {
        0 => what,
        Amount => amount is { } known ? known.ToString(session.Style) : "",
        _ => LocalDatePattern.Iso.Format(Date),
    };

    private CellEdit Edit(string text) => Cursor switch
    {
        0 => new CellEdit("What was it", text, TakeWhat),
        Amount => new CellEdit("What the card paid", text, TakeAmount),
        _ => new CellEdit("The day", text, TakeDay),
    };

    private string? TakeWhat(string text)
    {
        string clean = CleanText.OneLine(text).Trim();
        if (clean.Length > LongestWhat)
        {
            return $"At most {LongestWhat} characters, please.";
        }

        what = clean;
        if (!potChosen && PotGuess.For(session.Book, what) is { } guess)
        {
            potId = guess.PotId;
        }

        Cursor++;
        return null;
    }

    private string? TakeAmount(string text)
    {
        Result<Money> read = Money.ParseSum(text, session.Book.Household.Currency, session.Style);
        if (!read.Ok)
        {
            return FaultTexts.Of(read.Fault, session.Style);
        }

        if (read.Value.IsZero)
        {
            return "Write what the card paid, or below zero what came back.";
        }

        amount = read.Value;
        Cursor++;
        return null;
    }

    private string? TakeDay(string text)
    {
        Result<LocalDate> day = TypedDate.Parse(text, session.Today, session.Book.Household.Settings.DateOrder);
        if (!day.Ok)
        {
            return FaultTexts.Of(day.Fault, session.Style);
        }

        if (day.Value > session.Today)
        {
            return $"{DateText.Long(day.Value)} has not come yet; write today or a day before.";
        }

        typed = day.Value;
        return null;
    }

    private PickScreen<PotId?> Picks() => new(
        "Which pot",
        [.. pots.Select(pot => new PickItem<PotId?>(pot, WeekText.PotName(session.Book, pot), Place(pot)))],
        potId,
        pot =>
        {
            potId = pot;
            potChosen = true;
            return Way.Back;
        });

    private string Place(PotId? pot) => pot is null ? "account" : PotsReport.Place(session.Book.Household.Pots.Single(known => known.Id == pot));

    private Way Enter()
    {
        if (amount is not { } paid)
        {
            Message = "Type what the card paid first.";
            Cursor = Amount;
            return Way.Stay;
        }

        var entry = new PurchaseEntry(Date, potId, paid, what);
        Result<Book> after = changes is null
            ? Purchasing.Enter(session.Book, entry)
            : Purchasing.Change(session.Book, changes.Number, entry, session.Today);
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        session.Take(after.Value);
        IsEntered = true;
        return Way.Back;
    }
}
