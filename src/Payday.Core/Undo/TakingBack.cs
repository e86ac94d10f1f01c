using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Undo;

/// <summary>Takes back something entered between paydays, so that it is as if it had never been.</summary>
/// <remarks>
/// Rule (design, section 4): what a confirmed count has seen can't be undone before the count is. And no purpose is left
/// with less than nothing on any day: what took the money has to go first.
/// </remarks>
internal sealed class TakingBack
{
    private readonly BookEntry what;
    private readonly ImmutableHashSet<long> counts;
    private readonly HashSet<FillKey> fills = [];
    private readonly SortedSet<long> movements = [];

    /// <param name="book">The book.</param>
    /// <param name="what">What it is.</param>
    /// <param name="counts">The numbers of the counts that are taken back with it.</param>
    public TakingBack(Book book, BookEntry what, params IEnumerable<long> counts)
    {
        Book = book;
        this.what = what;
        this.counts = [.. counts];
    }

    /// <summary>Takes back a record with the movements from its first to its last, and what it took up of a pot.</summary>
    public static TakingBack Of(Book book, BookEntry what, (long First, long Last) movements, PotId? pot, TakenUp taken)
    {
        var taking = new TakingBack(book, what);
        taking.AddRange(movements.First, movements.Last);
        if (pot is { } gave)
        {
            taking.AddTakenUp(gave, taken, movements.First);
        }

        return taking;
    }

    /// <summary>The book, in which what was taken up may belong to a later record by now.</summary>
    public Book Book { get; private set; }

    /// <summary>Takes back movements, those of them that stand.</summary>
    public void Add(params IEnumerable<long> numbers)
    {
        foreach (long number in numbers.Where(number => Book.Ledger.Stands(Book.Ledger.Movements[(int)number - 1])))
        {
            movements.Add(number);
        }
    }

    /// <summary>Takes back the movements of a record, from the first number to the last.</summary>
    public void AddRange(long first, long last)
    {
        for (long number = first; number <= last; number++)
        {
            Add(number);
        }
    }

    /// <summary>
    /// Takes back what a record took up; but what a later purchase or count of the pot would have taken up itself, had it
    /// been the first, belongs to that from now on.
    /// </summary>
    public void AddTakenUp(PotId potId, TakenUp taken, long own)
    {
        foreach (FillKey key in taken.Fills)
        {
            WalletFill? mark = Book.Weeks.Fills.FirstOrDefault(fill => fill.Key == key && fill.State == FillState.Done);
            if (mark is null || (mark.Movement is { } number && !taken.Movements.Contains(number)))
            {
                // It was marked otherwise since.
                continue;
            }

            var piece = new TakenUp([key], mark.Movement is { } one ? [one] : []);
            if (HandedOver(potId, piece, own, key.Day) || mark.IsConfirmed)
            {
                // A fill that a person confirmed since stays one.
                movements.ExceptWith(piece.Movements);
                continue;
            }

            fills.Add(key);
            Add(piece.Movements);
        }

        long[] ofFills = [.. Book.Weeks.Fills.Where(fill => fill.Key.PotId == potId).Select(fill => fill.Movement).OfType<long>()];
        foreach (long number in taken.Movements.Except(ofFills))
        {
            Movement movement = Book.Ledger.Movements[(int)number - 1];
            if (Book.Ledger.Stands(movement) && HandedOver(potId, new TakenUp([], [number]), own, movement.Date))
            {
                movements.Remove(number);
            }
            else
            {
                Add(number);
            }
        }
    }

    /// <summary>What is in the way; null for nothing.</summary>
    public Obstacle? InTheWay()
    {
        Movement[] all = [.. movements.Select(number => Book.Ledger.Movements[(int)number - 1])];
        if (Book.Weeks.StandingCounts.FirstOrDefault(count => !counts.Contains(count.Number) && Array.Exists(all, movement => Sees(count, movement))) is { } seen)
        {
            return Seen(Book, seen, what);
        }

        if (Book.Weeks.StandingEntries.LastOrDefault(entry => entry.Counted is not null && Array.Exists(all, movement => movement.Number < entry.FirstMovement && IsLoose(movement))) is { } loose)
        {
            return new Obstacle.LooseCounted(what, BookEntry.Of(loose));
        }

        if (AccountLines.Seen(Book, movements) is { } reconciled)
        {
            return new Obstacle.AtBank(what, BookEntry.Of(reconciled));
        }

        return TookIt(Book, all) is { } owner
            ? new Obstacle.GoneOn(what, owner)
            : null;
    }

    /// <summary>That a count has seen something.</summary>
    public static Obstacle Seen(Book book, WeekCount count, BookEntry what) => new Obstacle.Counted(what, BookEntry.Of(book, count));

    /// <summary>What took money from an end last, where a ledger would have less than nothing there on some day; null where it has not.</summary>
    /// <param name="book">The book before.</param>
    /// <param name="undone">What is taken back.</param>
    public static BookEntry? TookIt(Book book, IReadOnlyCollection<Movement> undone)
    {
        foreach (LedgerEnd end in undone.Select(movement => movement.To).Where(end => !LedgerCheck.MayBeNegative(end)).Distinct())
        {
            LocalDate from = undone.Where(movement => movement.To == end).Min(movement => movement.Date);
            Money least = EndCourse.Without(book.Ledger, end, undone).LeastFrom(from);
            if (least.IsNegative && least < EndCourse.Of(book.Ledger, end).LeastFrom(from))
            {
                Movement took = book.Ledger.Of(end).Last(movement => movement.From == end && !undone.Contains(movement));
                return BookEntry.Of(book, took.Number) ?? (took.Payday is { } payday
                    ? new BookEntry.Payday(payday)
                    : new BookEntry.Movement(took.Number));
            }
        }

        return null;
    }

    // A count is about the cash of its pot; counted by notes, what was owed back lay among them.
    private static bool Sees(WeekCount count, Movement movement) =>
        movement.Number < count.FirstMovement && movement.Date <= count.Date && (IsOf(count, movement.From) || IsOf(count, movement.To));

    private static bool IsOf(WeekCount count, LedgerEnd end) => end is LedgerEnd.At { Place: Place.Cash } held && held.Purpose.PotId == count.PotId
        && (held.Purpose.Kind is PurposeKind.Pot or PurposeKind.Wallet || (held.Purpose.Kind == PurposeKind.OwedBack && count.Notes is not null));

    private static bool IsLoose(Movement movement) => movement.From == LedgerEnd.InCash(Purpose.Buffer) || movement.To == LedgerEnd.InCash(Purpose.Buffer);

    private static bool GivesCash(LedgerEnd end, PotId potId) => end is LedgerEnd.At { Place: Place.Cash } held && held.Purpose.PotId == potId;

    // To the first record of the pot after it that covers the day.
    private bool HandedOver(PotId potId, TakenUp piece, long own, LocalDate day)
    {
        WeekRecords weeks = Book.Weeks;
        (long First, WeekRecords Records)[] later =
        [
            .. weeks.Purchases.With(PurchaseTraits.Stands, potId)
                .Where(one => one.FirstMovement > own && one.Date >= day)
                .Select(one => (one.FirstMovement, weeks with { Purchases = weeks.Purchases.Put(one with { TakenUp = one.TakenUp.With(piece) }) })),
            .. weeks.StandingMoves
                .Where(one => GivesCash(one.From, potId) && one.FirstMovement > own && one.Date >= day)
                .Select(one => (one.FirstMovement, weeks with { Moves = weeks.Moves.Replace(one, one with { TakenUp = one.TakenUp.With(piece) }) })),
            .. weeks.StandingEntries
                .Where(one => one.Amount.IsNegative && GivesCash(one.For, potId) && one.FirstMovement > own && one.Date >= day)
                .Select(one => (one.FirstMovement, weeks with { Entries = weeks.Entries.Replace(one, one with { TakenUp = one.TakenUp.With(piece) }) })),
            .. weeks.Counts.With(CountTraits.Stands, potId)
                .Where(one => one.FirstMovement > own && one.Date >= day && !counts.Contains(one.Number))
                .Select(one => (one.FirstMovement, weeks with { Counts = weeks.Counts.Put(one with { TakenUp = one.TakenUp.With(piece) }) })),
        ];
        if (later.Length == 0)
        {
            return false;
        }

        Book = Book with { Weeks = later.MinBy(one => one.First).Records };
        return true;
    }

    /// <summary>Takes it back, unless something is in the way.</summary>
    /// <param name="date">The day on which that happens.</param>
    /// <param name="reason">What its reverses say.</param>
    /// <param name="records">What becomes of the records.</param>
    public Result<Book> Done(LocalDate date, string reason, Func<WeekRecords, WeekRecords> records)
    {
        if (InTheWay() is { } obstacle)
        {
            return Result.Refused<Book>(obstacle);
        }

        var writer = new WeekWriter(Book);
        writer.Add(Book.Ledger.Reverse(movements, date, reason).Value);
        writer.Record(weeks => records(weeks with
        {
            Fills = weeks.Fills.RemoveAll(fill => fills.Contains(fill.Key) || (fill.Movement is { } number && movements.Contains(number))),
        }));
        return Result.Of(writer.Book);
    }
}
