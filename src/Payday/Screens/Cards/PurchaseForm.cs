using System.Collections.Immutable;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
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

    private readonly BookSession session;
    private readonly CardPurchase? changes;
    private readonly ImmutableArray<PotId?> pots;
    private readonly SaidPurchase said;

    /// <param name="session">The book.</param>
    /// <param name="changes">The purchase to change, or null for another one.</param>
    public PurchaseForm(BookSession session, CardPurchase? changes)
    {
        this.session = session;
        this.changes = changes;
        pots = [.. session.Book.Household.Pots.Select(pot => pot.Id), null];
        said = new SaidPurchase(session, changes);
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
        .. said.IsBegun ? [new Binding(Key.Delete, "Del", "", "Forget what was typed here, and begin an empty form.", Restart)] : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        new(Key.CursorRight, "Right", "store it", "Write the purchase to the ledger.", Enter),
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", changes is null ? "Back; what was typed stays here, also where the terminal goes." : "Back; the purchase stays as it is.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => Cursor switch
    {
        0 => "What it was, in a few words: it helps to guess the pot the next time.",
        Amount => $"What the card paid; a sum like {session.Style.Written("12.50+3")} is taken. Below zero, like {session.Style.Written("-12.50")}, is a refund.",
        Pot when said.Parts.Length > 1 => "Each pot has its part; Ctrl+N changes them, Enter gives all to one pot.",
        Pot => said.IsPotChosen
            ? $"The pot it is for; a letter goes to the next one that begins with it. A cash pot has it to pay back to the account{(session.Book.Household.Settings.CardRounding == CardRounding.Up ? ", rounded up to a note; the rest goes to the buffer" : "")}."
            : (said.IsPotGuessed ? "A guess from what was bought before; a" : "Nothing like it was bought before, so choose the pot: a") + " letter goes to the next pot that begins with it.",
        Day => "The day of the purchase, like 2026-03-12 or 12 Mar; yesterday works too.",
        _ => said.Card is null
            ? "The account paid. Enter or a letter picks a debt whose card did."
            : "Nothing leaves the account: the balance rises, and the pot's money waits for the debt's next payment. A refund lowers it again.",
    };

    /// <inheritdoc/>
    protected override string Status
    {
        get
        {
            try
            {
                return said.Amount is { IsPositive: true } paid && Tried(paid) is { Ok: true, Value.Weeks: var weeks } && weeks.PartsOf(weeks.Purchases.Count) is var parts
                    && Money.Sum(parts.Select(part => part.OwedBack), paid.Currency) is { IsPositive: true } owed
                        ? $"{owed.ToString(session.Style)} to pay back in cash{WeekText.Rounding(parts, session.Style)}."
                        : "";
            }
            catch (OverflowException)
            {
                // Entering it says so.
                return "";
            }
        }
    }

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        if (Cursor == Card)
        {
            ImmutableArray<PickItem<DebtId?>> cards = PotPicks.Cards(session);
            said.TakeCard(cards[NextName.From([.. cards.Select(one => one.Name)], cards.ToList().FindIndex(one => one.Value == said.Card), text)].Value);
            return null;
        }

        if (Cursor != Pot)
        {
            return Edit(text);
        }

        said.Choose(pots[NextName.From([.. pots.Select(pot => WeekText.PotName(session.Book, pot))], pots.IndexOf(said.Parts[0].PotId), text)]);
        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width) =>
    (
        [],
        new TextTable(
            [new(""), new("") { Shrinks = true, MinWidth = 10 }],
            [
                ["What", said.What],
                ["Amount", said.Amount is { } known ? known.ToString(session.Style) : "-"],
                [said.Parts.Length > 1 ? "Pots" : "Pot", said.PotsText],
                ["Day", DateText.Long(said.Date)],
                .. session.Book.Household.Debts.IsEmpty ? Array.Empty<ImmutableArray<string>>() : [["Paid by", said.PaidBy]],
            ],
            decimalMark: "").Lay(width).Rows
    );

    private string Typed() => Cursor switch
    {
        0 => said.What,
        Amount => said.Amount is { } known ? known.ToString(session.Style) : "",
        _ => LocalDatePattern.Iso.Format(said.Date),
    };

    private CellEdit Edit(string text) => Cursor switch
    {
        0 => new CellEdit("What was it", text, typed => Next(said.TakeWhat(typed))),
        Amount => new CellEdit("What the card paid", text, typed => Next(said.TakeAmount(typed))),
        _ => new CellEdit("The day", text, said.TakeDay),
    };

    // A fault leaves the cursor where it is.
    private string? Next(string? fault)
    {
        Cursor += fault is null ? 1 : 0;
        return fault;
    }

    private PickScreen<PotId?> Picks() => new("Which pot", PotPicks.Of(session), said.Parts[0].PotId, pot =>
    {
        said.Choose(pot);
        return Way.Back;
    });

    private PickScreen<DebtId?> Cards() => new("Paid by", PotPicks.Cards(session), said.Card, picked =>
    {
        said.TakeCard(picked);
        return Way.Back;
    });

    private Way Split()
    {
        if (said.Amount is not { } paid)
        {
            return NoAmount();
        }

        Cursor = Pot;
        return new Way.To(new PartsScreen(session, said.What.Length == 0 ? "Several pots" : $"Several pots: {said.What}", paid, said.Parts, said.Choose));
    }

    private Result<Book> Tried(Money paid) => said.Entry(paid).Then(entry => changes is null
        ? Purchasing.Enter(session.Book, entry)
        : Purchasing.Change(session.Book, changes.Number, entry, session.Today));

    private Way Restart()
    {
        said.Forget();
        Cursor = 0;
        return Way.Stay;
    }

    private Way NoAmount()
    {
        Message = "Type what the card paid first.";
        Cursor = Amount;
        return Way.Stay;
    }

    private Way Enter()
    {
        if (said.Amount is not { } paid)
        {
            return NoAmount();
        }

        Result<Book> after = Tried(paid);
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        said.Done(after.Value);
        IsEntered = true;
        return Way.Back;
    }
}
