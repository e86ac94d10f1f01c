using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;

namespace Payday.Core.StatementTaking;

/// <summary>Writes down what one line of the bank's becomes: as a due, a purchase, an entry or a move, each by its own rules.</summary>
internal static class LineWriting
{
    // What the person would type: the rest of a long line says numbers.
    private const int LongestWhat = 60;

    // A bill that came to less than this of what was expected was paid in part; above it, it came to that. Common practice, no source.
    private const int DonePercent = 75;

    // A due is looked for this far beyond the day it was paid on.
    private const int DaysEarly = 15;

    /// <summary>The book with it, its record being the last of its kind; or why it can't be.</summary>
    public static Result<(Book Book, WrittenRecord Record)> Write(Book book, LineDecision decision, LocalDate today)
    {
        LineTarget target = decision.Target!;
        TakenLine line = decision.Line;
        if (target.End is { } end and not LedgerEnd.Outside && !LedgerEnds.IsOf(book.Household, end))
        {
            return Refused(new TakingFault.Gone(target));
        }

        if (target.Other is { } other && !LedgerEnds.IsOf(book.Household, other))
        {
            return Refused(new TakingFault.Gone(target));
        }

        if (target.End is LedgerEnd.Outside { SourceId: { } source } && book.Household.Sources.All(known => known.Id != source))
        {
            return Refused(new TakingFault.Gone(target));
        }

        bool comesIn = line.Amount.IsPositive;
        return target switch
        {
            { Use: LineUse.For, End: LedgerEnd.At { Purpose.BillId: { } bill } } when !comesIn => Due(book, decision, DueOwner.Of(bill), today),
            { Use: LineUse.For, End: LedgerEnd.Owed owed, Other: { } gives } when !comesIn => Move(book, new MoveEntry(line.Date, gives, owed, -line.Amount, What(line))),
            { Use: LineUse.For, End: LedgerEnd.Owed owed } when !comesIn => Due(book, decision, DueOwner.Of(owed.DebtId), today),
            { Use: LineUse.For, End: LedgerEnd.At { Purpose.Kind: PurposeKind.Pot or PurposeKind.Buffer } at } when !comesIn =>
                Purchase(Purchasing.Enter(book, new PurchaseEntry(line.Date, at.Purpose.PotId, -line.Amount, What(line)))),
            { Use: LineUse.For, End: LedgerEnd.Owed owed } => Entry(book, line, EntryKind.Borrowing, owed),
            { Use: LineUse.For, End: { } purpose } => Entry(book, line, EntryKind.Refund, purpose),
            { Use: LineUse.Income } when comesIn => Income(book, line, target.End),
            { Use: LineUse.Fee } => Entry(book, line, comesIn ? EntryKind.Refund : EntryKind.Fee, MoveEnds.Buffer),
            { Use: LineUse.Interest } => Entry(book, line, EntryKind.Interest, MoveEnds.Buffer),
            { Use: LineUse.Gift } => Entry(book, line, EntryKind.Gift, comesIn ? EntryEnds.ToPlace : MoveEnds.Buffer),
            { Use: LineUse.Transfer } => Entry(book, line, EntryKind.Transfer, target.Other ?? (comesIn ? EntryEnds.ToPlace : MoveEnds.Buffer)),
            { Use: LineUse.Cash, End: { } cash } => CashLine.Entry(book, decision, cash).Then(entry => Move(book, entry)),
            { Use: LineUse.Return } when comesIn => CashLine.Return(book, line).Then(plan => Made(plan.Confirm(line.Date), WrittenKind.Return, after => after.Weeks.Returns.Length)),
            _ => Refused(new TakingFault.NotThat(target, comesIn)),
        };
    }

    /// <summary>What a line is called in the book: who is on the other side, else what it is for.</summary>
    public static string What(TakenLine line)
    {
        string what = line.Party.Length > 0 ? line.Party : line.Text;
        return (what.Length > LongestWhat ? what[..LongestWhat] : what).Trim();
    }

    // Of what is open the due nearest to the day on which it left the account; of a debt without one it is paid beside its minimums.
    private static Result<(Book, WrittenRecord)> Due(Book book, LineDecision decision, DueOwner owner, LocalDate today)
    {
        TakenLine line = decision.Line;
        DueLine? due = DueLines.Of(book, line.Date.PlusMonths(BillDues.MonthsAhead))
            .Where(open => decision.Due is { } key ? open.Key == key : open.Key.Owner == owner && (owner.Debt is null || open.Date <= line.Date.PlusDays(DaysEarly)))
            .OrderBy(open => Math.Abs(Period.DaysBetween(open.Date, line.Date)))
            .ThenBy(open => open.Date)
            .FirstOrDefault();
        if (due is null)
        {
            return owner.Debt is { } debt
                ? Move(book, new MoveEntry(line.Date, MoveEnds.Buffer, new LedgerEnd.Owed(debt), -line.Amount, What(line)))
                : Made(Paying.Enter(book, new DueEntry(decision.Due ?? new DueKey(owner, line.Date), line.Date), today), WrittenKind.Payment, _ => 0);
        }

        Money paid = -line.Amount;
        bool isDone = owner.Bill is not null && (Int128)paid.MinorUnits * 100 >= (Int128)due.Rest.MinorUnits * DonePercent;
        return Made(Paying.Enter(book, new DueEntry(due.Key, line.Date, paid, isDone), today), WrittenKind.Payment, after => after.Weeks.Payments.Length);
    }

    private static Result<(Book, WrittenRecord)> Income(Book book, TakenLine line, LedgerEnd? end) =>
        Made(
            Entering.Enter(book, new EntryWish(line.Date, EntryKind.Income, EntryEnds.ToPlace, line.Amount, What(line)) { Source = (end as LedgerEnd.Outside)?.SourceId }),
            WrittenKind.Entry,
            after => after.Weeks.Entries.Length);

    // What came back for a pot or the buffer is among the card purchases.
    private static Result<(Book, WrittenRecord)> Entry(Book book, TakenLine line, EntryKind kind, LedgerEnd end)
    {
        var wish = new EntryWish(line.Date, kind, end, line.Amount, What(line));
        return Entering.IsRefundOfPurchase(wish)
            ? Purchase(Entering.Enter(book, wish))
            : Made(Entering.Enter(book, wish), WrittenKind.Entry, after => after.Weeks.Entries.Length);
    }

    private static Result<(Book, WrittenRecord)> Move(Book book, MoveEntry entry) => Made(Moving.Enter(book, entry), WrittenKind.Move, after => after.Weeks.Moves.Length);

    private static Result<(Book, WrittenRecord)> Purchase(Result<Book> after) => Made(after, WrittenKind.Purchase, book => book.Weeks.Purchases.Count);

    private static Result<(Book, WrittenRecord)> Made(Result<Book> after, WrittenKind kind, Func<Book, long> number) =>
        after.Ok ? Result.Of((after.Value, new WrittenRecord(kind, number(after.Value)))) : Result.Refused<(Book, WrittenRecord)>(after.Faults);

    private static Result<(Book, WrittenRecord)> Refused(Fault fault) => Result.Refused<(Book, WrittenRecord)>(fault);
}
