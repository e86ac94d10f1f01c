using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Undo;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Cards;

/// <summary>What undoing a card purchase would write, and the question whether to.</summary>
internal sealed class UndoPurchaseScreen(BookSession session, CardPurchase purchase) : PageScreen
{
    private readonly ImmutableArray<CardPurchase> parts = session.Book.Weeks.PartsOf(purchase.Number);
    private readonly OfBook<(Result<Book> Undone, Obstacle? Obstacle)> now = new(
        session, () => (Purchasing.Undo(session.Book, purchase.Number, session.Today), Purchasing.InTheWay(session.Book, purchase.Number)));

    /// <inheritdoc/>
    public override string Title => $"Undo card purchase {purchase.WholeNumber}";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(purchase.Date);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => now.Value.Undone.Ok
        ? [new(Key.Enter, "Enter", "undo it", "Undo the purchase: write the reverse of its lines to the ledger.", Undo)]
        : FirstBack.Keys(session, now.Value.Obstacle);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(Texts(), width);

    private IEnumerable<Said> Texts()
    {
        yield return CleanText.OneLine($"{string.Join(", ", parts.Select(part => $"{part.Amount.ToString(session.Style)} from {WeekText.PotName(session.Book, part.PotId)}"))}{(purchase.What.Length == 0 ? "" : ", " + purchase.What)}.");
        yield return "";
        (Result<Book> undone, Obstacle? obstacle) = now.Value;
        if (!undone.Ok)
        {
            yield return Said.Alert(obstacle is null ? FaultTexts.Of(undone.Fault!, session.Style) : FirstBack.Text(session, obstacle));
            yield break;
        }

        Money owedBack = Money.Sum(parts.Select(part => part.OwedBack), purchase.Amount.Currency);
        if (purchase.Card is { } card)
        {
            yield return $"{EndText.Debt(session.Book.Household, card)} is owed {session.Book.Ledger.Balances.OwedOn(card).ToString(session.Style)} now, and {undone.Value.Ledger.Balances.OwedOn(card).ToString(session.Style)} then.";
        }

        yield return purchase.IsRefund && owedBack.IsZero ? "What came back is gone again."
            : purchase.IsRefund ? "The pot has as much to pay back as before the refund, and gives the cash for it."
            : owedBack.IsZero
                ? purchase.Card is null ? "The account has the money again, for what it was for before." : "What waits for the card is there again for what it was for before."
                : $"{(parts.Length > 1 ? $"{owedBack.ToString(session.Style)} less is to pay back" : $"The pot has {owedBack.ToString(session.Style)} less to pay back")}, and {(purchase.Card is null ? "the account is" : "the debt is")} as if the card had not paid.";
        yield return "The purchase stays in the list, marked as undone, and its lines stay in the ledger beside their reverse.";
    }

    private Way Undo()
    {
        session.Take(now.Value.Undone.Value!);
        return Way.Back;
    }
}
