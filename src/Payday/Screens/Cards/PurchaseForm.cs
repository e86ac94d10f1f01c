using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Cards;

/// <summary>One card purchase: what, how much, from which pot or pots, when, and by which card.</summary>
internal sealed class PurchaseForm : CursorScreen
{
    private const int Amount = 1;
    private const int Pot = 2;
    private const int Day = 3;
    private const int Card = 4;
    private const int LongestWhat = 60;

    private readonly BookSession session;
    private readonly CardPurchase? changes;
    private readonly ImmutableArray<PotId?> pots;
    private string what;
    private Money? amount;
    private ImmutableArray<SaidPart> parts;
    private DebtId? card;
    private bool potChosen;
    private LocalDate? typed;

    /// <param name="session">The book.</param>
    /// <param name="changes">The purchase to change, or null for another one.</param>
    public PurchaseForm(BookSession session, CardPurchase? changes)
    {
        this.session = session;
        this.changes = changes;
        pots = [.. session.Book.Household.Pots.Select(pot => pot.Id), null];
        ImmutableArray<CardPurchase> whole = changes is null ? [] : session.Book.Weeks.PartsOf(changes.Number);
        what = changes?.What ?? "";
        amount = changes is null ? null : Money.Sum(whole.Select(part => part.Amount), session.Book.Household.Currency);
        parts = changes is null ? [new SaidPart(pots[0], null)] : [.. whole.Select((part, i) => new SaidPart(part.PotId, i == 0 ? null : part.Amount))];
        card = changes?.Card;
        potChosen = changes is not null;
        typed = changes?.Date;
    }

    /// <summary>Whether it is in the ledger, and the form done with.</summary>
    public bool IsEntered { get; private set; }

    /// <inheritdoc/>
    public override string Title => changes is null ? "Bought by card" : $"Change card purchase {changes.WholeNumber}";

    /// <inheritdoc/>
    protected override int Count => session.Book.Household.Debts.IsEmpty ? Card : Card + 1;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Enter, "Enter", "change", "Change this field; in the rows of the pot and of the card, pick one.", () => Cursor switch
        {
            Pot => new Way.To(Picks()),
            Card => new Way.To(Cards()),
            _ => new Way.Edit(Edit(Typed())),
        }),
        new(Key.N.WithCtrl, "Ctrl+N", "several pots", "Split it over several pots: each has its part, and its own to pay back.", Split),
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
        Pot when parts.Length > 1 => "Each pot has its part; Ctrl+N changes them, Enter gives all to one pot.",
        Pot => potChosen
            ? $"The pot it is for; a letter goes to the next one that begins with it. A cash pot has it to pay back to the account{(session.Book.Household.Settings.CardRounding == CardRounding.Up ? ", rounded up to a note; the rest goes to the buffer" : "")}."
            : "A guess from what was bought before; a letter goes to the next pot that begins with it.",
        Day => "The day of the purchase, like 2026-03-12 or 12 Mar; yesterday works too.",
        _ => card is null
            ? "The account paid. Enter or a letter picks a debt whose card did."
            : "Nothing leaves the account: the balance rises, and the pot's money waits for the debt's next payment. A refund lowers it again.",
    };

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        if (Cursor == Card)
        {
            ImmutableArray<PickItem<DebtId?>> cards = PotPicks.Cards(session);
            card = cards[NextName.From([.. cards.Select(one => one.Name)], cards.ToList().FindIndex(one => one.Value == card), text)].Value;
            return null;
        }

        if (Cursor != Pot)
        {
            return Edit(text);
        }

        parts = [new SaidPart(pots[NextName.From([.. pots.Select(pot => WeekText.PotName(session.Book, pot))], pots.IndexOf(parts[0].PotId), text)], null)];
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
                [parts.Length > 1 ? "Pots" : "Pot", PotsText],
                ["Day", DateText.Long(Date)],
                .. session.Book.Household.Debts.IsEmpty ? Array.Empty<ImmutableArray<string>>() : [["Paid by", PaidBy]],
            ],
            decimalMark: "").Lay(width).Rows
    );

    private string PotsText => parts.Length == 1
        ? WeekText.PotName(session.Book, parts[0].PotId)
        : string.Join(", ", parts.Select(part => $"{WeekText.PotName(session.Book, part.PotId)} {(part.Amount ?? Rest)?.ToString(session.Style) ?? "the rest"}"));

    // Of one part alone.
    private Money? Rest => amount - Money.Sum(parts.Select(part => part.Amount).OfType<Money>(), session.Book.Household.Currency);

    private string PaidBy => card is { } debt ? EndText.Debt(session.Book.Household, debt) : "the account";

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
            parts = [new SaidPart(guess.PotId, null)];
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

    private PickScreen<PotId?> Picks() => new("Which pot", PotPicks.Of(session), parts[0].PotId, pot =>
    {
        parts = [new SaidPart(pot, null)];
        potChosen = true;
        return Way.Back;
    });

    private PickScreen<DebtId?> Cards() => new("Paid by", PotPicks.Cards(session), card, picked =>
    {
        card = picked;
        return Way.Back;
    });

    private Way Split()
    {
        if (amount is not { } paid)
        {
            return NoAmount();
        }

        Cursor = Pot;
        return new Way.To(new PartsScreen(session, what.Length == 0 ? "Several pots" : $"Several pots: {what}", paid, parts, said =>
        {
            parts = said;
            potChosen = true;
        }));
    }

    private Way NoAmount()
    {
        Message = "Type what the card paid first.";
        Cursor = Amount;
        return Way.Stay;
    }

    private Way Enter()
    {
        if (amount is not { } paid)
        {
            return NoAmount();
        }

        Result<Book> after = PurchaseParts.Of([.. parts.Select(part => (part.PotId, part.Amount))], paid)
            .Map(all => new PurchaseEntry(Date, null, paid, what) { Card = card }.With(all))
            .Then(entry => changes is null
                ? Purchasing.Enter(session.Book, entry)
                : Purchasing.Change(session.Book, changes.Number, entry, session.Today));
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
