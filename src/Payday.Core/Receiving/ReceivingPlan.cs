using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.Receiving;

/// <summary>What becomes of a filling when the bank gave other notes than the slip asked for.</summary>
/// <remarks>
/// Rule (design, section 5, rule 17). There are the notes received and the notes at home that the slip used again, and no
/// others. What a pot gets less of them than planned is still its own: as loose notes at home as far as notes are left
/// over, the rest in the account, which then gave less. What was given beyond the slip comes out of the account's buffer,
/// and where that has too little out of what the account keeps back for pots; it lies loose at home.
/// </remarks>
/// <param name="Closed">The payday of the slip.</param>
/// <param name="Got">What was given.</param>
/// <param name="Parts">The notes of each pot and week.</param>
/// <param name="Loose">Notes that no pot can take: they lie loose at home.</param>
/// <param name="LooseOf">By pot: how much of the loose notes is its own, above zero.</param>
/// <param name="BackInAccount">By pot: what the account keeps for it because less was given, above zero.</param>
/// <param name="FromBuffer">What comes out of the account's buffer because more was given.</param>
/// <param name="More">How much more was given than the slip asks for; below zero for less.</param>
/// <param name="Gone">Wishes that gave way.</param>
public sealed record ReceivingPlan(
    ClosedPayday Closed,
    Notes Got,
    ImmutableArray<ClosedPart> Parts,
    Notes Loose,
    ImmutableSortedDictionary<PotId, Money> LooseOf,
    ImmutableSortedDictionary<PotId, Money> BackInAccount,
    Money FromBuffer,
    Money More,
    ImmutableArray<WishGone> Gone)
{
    private Book Book { get; init; } = null!;

    /// <summary>Plans the filling of the last closed payday anew.</summary>
    /// <param name="book">The book. Notes that were entered for that payday before are put in the place of.</param>
    /// <param name="got">What was given.</param>
    /// <returns>The plan; or why it can't be.</returns>
    public static Result<ReceivingPlan> Of(Book book, Notes got)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(got);
        if (book.LastClosed is not { } closed)
        {
            return Result.Refused<ReceivingPlan>(new ReceivingFault.NoSlip());
        }

        if (ReceivingUndo.InTheWay(book) is { } obstacle)
        {
            return Result.Refused<ReceivingPlan>(obstacle);
        }

        CashPieces cash = book.Household.Settings.Cash;
        HashSet<long> pieces = [.. cash.Notes.Concat(cash.Coins).Select(piece => piece.MinorUnits), .. closed.Withdraw.Values];
        if (got.FirstOrDefault(note => note.Value > 0 && !pieces.Contains(note.Key)) is { Value: > 0 } unknown)
        {
            return Result.Refused<ReceivingPlan>(new ReceivingFault.NoSuchPiece(Money.FromMinorUnits(unknown.Key, book.Household.Currency)));
        }

        if (closed.Withdraw.IsEmpty && got.IsEmpty)
        {
            return Result.Refused<ReceivingPlan>(new ReceivingFault.NothingAsked(closed.Payday));
        }

        // What was entered before goes first, so that the payday stands as it was closed.
        Result<Book> before = ReceivingUndo.Last(book) is null ? Result.Of(book) : ReceivingUndo.Of(book, closed.Payday);
        return got == closed.Withdraw && before.Ok && ReceivingUndo.Last(book) is null
            ? Result.Refused<ReceivingPlan>(new ReceivingFault.AsAsked(closed.Payday))
            : before.Then(clean => Plan(clean, closed, got)).Then(plan => !plan.More.IsZero && AtBank(book, closed) is { } seen ? Result.Refused<ReceivingPlan>(seen) : Result.Of(plan));
    }

    /// <summary>Enters it.</summary>
    /// <param name="date">The day on which the notes were fetched.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    /// <remarks>The movements are of the payday, as the withdrawal itself is: it is what was withdrawn then.</remarks>
    public Result<Book> Confirm(LocalDate date)
    {
        if (date < Closed.Payday)
        {
            return Result.Refused<Book>(new ReceivingFault.BeforePayday(Closed.Payday, date));
        }

        var writer = new WeekWriter(Book);
        if (Got == Closed.Withdraw)
        {
            return Result.Of(Book);
        }

        long first = writer.Next;
        LocalDate day = Closed.Payday;
        var buffer = LedgerEnd.InAccount(Purpose.Buffer);
        writer.Move(day, buffer, LedgerEnd.InCash(Purpose.Buffer), FromBuffer, "more notes than asked for", day);
        foreach (PotId pot in Pots)
        {
            LedgerEnd home = LedgerEnd.InCash(Purpose.Pot(pot));
            LedgerEnd waits = LedgerEnd.InAccount(Purpose.KeptBack(pot));
            LedgerEnd loose = LedgerEnd.InCash(Purpose.KeptBack(pot));
            Money nothing = Money.Zero(More.Currency);
            Money own = LooseOf.GetValueOrDefault(pot, nothing);
            Money less = Less(Closed.Parts, Parts, pot, More.Currency);
            writer.Move(day, home, loose, Money.Min(own, less), "note that no pot takes", day);
            writer.Move(day, waits, loose, own - Money.Min(own, less), "more notes than asked for", day);
            writer.Move(day, home, waits, BackInAccount.GetValueOrDefault(pot, nothing), "fewer notes than asked for", day);
        }

        long number = Book.Weeks.Received.Length + 1;
        writer.Record(weeks => weeks with
        {
            Received = weeks.Received.Add(new NotesReceived(number, date, Closed.Payday, Got, Parts, first, writer.Last)),
        });
        return Result.Of(writer.Book);
    }

    // What the bank has shown of a withdrawal is what it paid.
    private static Obstacle.AtBank? AtBank(Book book, ClosedPayday closed) =>
        AccountLines.Seen(book, book.Ledger.Standing
            .Where(movement => movement.Number >= closed.FirstMovement && movement.Number <= closed.LastMovement && movement.To is LedgerEnd.At { Place: Place.Cash })
            .Select(movement => movement.Number)) is { } seen
            ? new Obstacle.AtBank(new BookEntry.Payday(closed.Payday), BookEntry.Of(seen))
            : null;

    private IEnumerable<PotId> Pots => Closed.Parts.Select(part => part.PotId).Concat(LooseOf.Keys).Distinct();

    private static Result<ReceivingPlan> Plan(Book book, ClosedPayday closed, Notes got)
    {
        Currency currency = book.Household.Currency;
        Money nothing = Money.Zero(currency);
        Notes hand = got.Plus(closed.Reused);
        ImmutableArray<ClosedPart> parts = got == closed.Withdraw ? closed.Parts : GivenNotes.Of(book.Household, hand, closed.Parts);
        Notes loose = hand.Less(Notes.Sum(parts.Select(part => part.Notes)));
        Money more = got.Worth(currency) - closed.Withdraw.Worth(currency);
        Money left = loose.Worth(currency) - more.ClampToZero();
        var looseOf = ImmutableSortedDictionary.CreateBuilder<PotId, Money>();
        var back = ImmutableSortedDictionary.CreateBuilder<PotId, Money>();
        foreach ((PotId pot, Money less) in closed.Parts.Select(part => part.PotId).Distinct().Select(pot => (pot, Less(closed.Parts, parts, pot, currency))).OrderByDescending(pot => pot.Item2))
        {
            Money own = Money.Min(left.ClampToZero(), less);
            left -= own;
            Put(looseOf, pot, own);
            Put(back, pot, less - own);
        }

        LocalDate day = closed.Payday;
        Money rest = more.ClampToZero();
        Money fromBuffer = Money.Min(rest, EndCourse.Of(book.Ledger, LedgerEnd.InAccount(Purpose.Buffer)).LeastFrom(day).ClampToZero());
        rest -= fromBuffer;
        foreach (PotId pot in book.Household.Pots.Select(pot => pot.Id))
        {
            Money kept = Money.Min(rest, EndCourse.Of(book.Ledger, LedgerEnd.InAccount(Purpose.KeptBack(pot))).LeastFrom(day).ClampToZero());
            rest -= kept;
            Put(looseOf, pot, looseOf.GetValueOrDefault(pot, nothing) + kept);
        }

        return rest.IsPositive
            ? Result.Refused<ReceivingPlan>(new ReceivingFault.TooMuch(more, rest))
            : Result.Of(new ReceivingPlan(closed, got, parts, loose, looseOf.ToImmutable(), back.ToImmutable(), fromBuffer, more, WishesGone.Of(book.Household, closed.Parts, parts)) { Book = book });
    }

    private static void Put(ImmutableSortedDictionary<PotId, Money>.Builder sums, PotId pot, Money amount)
    {
        if (amount.IsPositive)
        {
            sums[pot] = amount;
        }
    }

    private static Money Less(ImmutableArray<ClosedPart> before, ImmutableArray<ClosedPart> after, PotId pot, Currency currency) =>
        Worth(before, pot, currency) - Worth(after, pot, currency);

    private static Money Worth(ImmutableArray<ClosedPart> parts, PotId pot, Currency currency) =>
        Money.Sum(parts.Where(part => part.PotId == pot).Select(part => part.Notes.Worth(currency)), currency);
}
