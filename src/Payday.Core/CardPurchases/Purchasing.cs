using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Undo;

namespace Payday.Core.CardPurchases;

/// <summary>What was paid by card, and what the pots owe back for it.</summary>
/// <remarks>
/// The account paid, so <c>account/owed-back</c> goes below zero by the amount: that is what cash must bring back. The
/// pot's cash, rounded up by the setting (<see cref="OwedAmount"/>), waits as <c>cash/owed-back</c>; the rounding goes to the buffer with it.
/// Where the card is one of the debts nothing leaves the account: the balance rises, and what the pot gives waits for the debt's
/// next payment as <c>account/for-card</c>, that of a cash pot once it is at the bank.
/// A purchase over several pots is a record for each, tied together by <see cref="CardPurchase.Whole"/>: each part is owed back,
/// refunded and counted by itself, and all are one line at the bank and undone together.
/// </remarks>
public static class Purchasing
{
    /// <summary>Enters a purchase with all its parts; below zero it is a refund, see <see cref="CardRefunds"/>.</summary>
    /// <returns>The book afterwards, the parts being its last purchases; or why it can't be entered, and then no part is.</returns>
    public static Result<Book> Enter(Book book, PurchaseEntry entry)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(entry);
        if (Fault(book, entry) is { } fault)
        {
            return Result.Refused<Book>(fault);
        }

        Book after = book;
        foreach (PurchasePart part in entry.Parts)
        {
            Result<Book> entered = Part(after, entry.With([part]));
            if (!entered.Ok)
            {
                return entered;
            }

            after = entered.Value;
        }

        return Result.Of(entry.Others.IsEmpty ? after : Tied(after, book.Weeks.Purchases.Count));
    }

    // By the number of the first.
    private static Book Tied(Book book, int before)
    {
        long whole = before + 1;
        return book with { Weeks = book.Weeks with { Purchases = book.Weeks.Purchases.From((int)whole - 1).Aggregate(book.Weeks.Purchases, (all, part) => all.Put(part with { Whole = whole })) } };
    }

    private static Result<Book> Part(Book book, PurchaseEntry entry)
    {
        if (entry.Amount.IsNegative)
        {
            return CardRefunds.Enter(book, entry with { Amount = -entry.Amount });
        }

        Pot? pot = book.Household.Pots.FirstOrDefault(pot => pot.Id == entry.PotId);
        if (Fault(book, entry, pot) is { } fault)
        {
            return Result.Refused<Book>(fault);
        }

        var writer = new WeekWriter(book);
        TakenUp taken = pot is { Place: Place.Cash } ? WalletFills.TakeUp(writer, pot, entry.Date) : TakenUp.Nothing;

        long first = writer.Next;
        Money has = Has(writer.Book, pot);
        if (has < entry.Amount)
        {
            return Result.Refused<Book>(TooLittle(entry, pot, has));
        }

        Money owedBack = pot is { Place: Place.Cash }
            ? PutApart(writer, pot, entry, has)
            : PayFromAccount(writer, pot, entry);
        writer.Record(weeks => weeks with
        {
            Purchases = weeks.Purchases.Add(new CardPurchase(
                weeks.Purchases.Count + 1, entry.Date, pot?.Id, entry.Amount, owedBack, entry.What.Trim(), first, writer.Last)
            {
                Card = entry.Card,
                TakenUp = taken,
            }),
        });
        return Result.Of(writer.Book);
    }

    /// <summary>Undoes a purchase, all its parts: all is as if it had never been entered.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">The purchase, by any of its parts.</param>
    /// <param name="date">The day on which it is undone.</param>
    /// <returns>The book afterwards; or why it can't be undone.</returns>
    public static Result<Book> Undo(Book book, long number, LocalDate date) => new PurchaseUndo().Undo(book, number, date);

    /// <summary>What is in the way of undoing a purchase; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, long number) => new PurchaseUndo().InTheWay(book, number);

    /// <summary>Puts another purchase in the place of one: undoes it and enters it again, both or neither.</summary>
    /// <returns>The book afterwards, the new purchase being its last; or why it can't be.</returns>
    public static Result<Book> Change(Book book, long number, PurchaseEntry entry, LocalDate date)
    {
        if (number >= 1 && number <= book.Weeks.Purchases.Count && book.Weeks.Purchases[(int)number - 1].IsRefund)
        {
            return Result.Refused<Book>(new PurchaseFault.RefundUnchangeable());
        }

        Result<Book> undone = Undo(book, number, date);
        return undone.Ok ? Enter(undone.Value, entry) : undone;
    }

    private static PurchaseFault? Fault(Book book, PurchaseEntry entry)
    {
        if (entry.Card is { } card && book.Household.Debts.All(debt => debt.Id != card))
        {
            return new PurchaseFault.NoSuchCard(card);
        }

        if (entry.Parts.Any(part => part.Amount.IsPositive) && entry.Parts.Any(part => part.Amount.IsNegative))
        {
            return new PurchaseFault.BothWays();
        }

        return entry.Parts.GroupBy(part => part.PotId).FirstOrDefault(same => same.Count() > 1) is { Key: var twice }
            ? new PurchaseFault.SamePotTwice(book.Household.Pots.FirstOrDefault(pot => pot.Id == twice)?.Name ?? twice?.Text)
            : null;
    }

    private static PurchaseFault? Fault(Book book, PurchaseEntry entry, Pot? pot)
    {
        if (!entry.Amount.IsPositive)
        {
            return new PurchaseFault.Zero();
        }

        if (entry.PotId is not null && pot is null)
        {
            return new PurchaseFault.NoSuchPot(entry.PotId.Value);
        }

        return entry.Date < book.Household.Start
            ? new PurchaseFault.BeforeStart(entry.Date, book.Household.Start)
            : null;
    }

    private static Money Has(Book book, Pot? pot) => pot switch
    {
        null => book.Ledger.Balances[LedgerEnd.InAccount(Purpose.Buffer)],
        { Place: Place.Cash } => PotMoney.InCash(book.Ledger.Balances, pot.Id),
        _ => book.Ledger.Balances[LedgerEnd.InAccount(Purpose.Pot(pot.Id))],
    };

    private static PurchaseFault TooLittle(PurchaseEntry entry, Pot? pot, Money has) => (pot, has.IsPositive) switch
    {
        (null, _) => new PurchaseFault.BufferHasLess(has, entry.Amount),
        (_, true) => new PurchaseFault.PotHasLess(pot.Name, has, entry.Amount),
        _ => new PurchaseFault.PotHasNothing(pot.Name, entry.Amount),
    };

    private static Money PayFromAccount(WeekWriter writer, Pot? pot, PurchaseEntry entry)
    {
        // As with bills: on its day where the money was there by then, else on the first day on which it was.
        LedgerEnd from = LedgerEnd.InAccount(pot is null ? Purpose.Buffer : Purpose.Pot(pot.Id));
        LocalDate day = EndCourse.Of(writer.Book.Ledger, from).DayFor(entry.Amount, entry.Date) ?? entry.Date;
        if (entry.Card is { } card)
        {
            writer.Move(entry.Date, new LedgerEnd.Owed(card), LedgerEnd.SpentFrom(pot?.Id), entry.Amount, Reason(entry));
            writer.Move(day, from, LedgerEnd.InAccount(Purpose.ForCard(card)), entry.Amount, "waits for the card");
        }
        else
        {
            writer.Move(day, from, LedgerEnd.SpentFrom(pot?.Id), entry.Amount, Reason(entry));
        }

        return Money.Zero(entry.Amount.Currency);
    }

    private static Money PutApart(WeekWriter writer, Pot pot, PurchaseEntry entry, Money has)
    {
        Money owedBack = Money.Min(OwedAmount.Of(writer.Book.Household, entry.Amount), has);
        writer.Move(
            entry.Date, entry.Card is { } card ? new LedgerEnd.Owed(card) : LedgerEnd.InAccount(Purpose.OwedBack(pot.Id)), LedgerEnd.SpentFrom(pot.Id), entry.Amount, Reason(entry));
        PotCash.TakeOut(writer, pot, LedgerEnd.InCash(Purpose.OwedBack(pot.Id)), owedBack, entry.Date, "to pay back");
        return owedBack;
    }

    private static string Reason(PurchaseEntry entry) => entry.What.Trim() is { Length: > 0 } what ? $"card: {what}" : "card purchase";
}
