using System.Collections.Immutable;
using System.Runtime.InteropServices;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;

namespace Payday.Core.BankLines;

/// <summary>The account lines of a book, worked out from its ledger.</summary>
/// <remarks>
/// Rule (design, section 2): a line is what the bank would show as one. A movement that was undone and its reverse are no
/// lines, nor is what never leaves the account, nor what was there at the start: that is in the bank's balance from the first.
/// What one record wrote is one line each way; a payday has a line for each income and payment, and one for all that it
/// fetches, or one for each trip to a machine.
/// </remarks>
public sealed class AccountLines
{
    private readonly Dictionary<long, AccountLine> byMovement = [];

    private AccountLines(ImmutableArray<AccountLine> all)
    {
        All = all;
        foreach (AccountLine line in all)
        {
            foreach (long movement in line.Movements)
            {
                byMovement[movement] = line;
            }
        }
    }

    /// <summary>All of them, by the number of their first movement.</summary>
    public ImmutableArray<AccountLine> All { get; }

    /// <summary>The line that a movement is a part of; null where it is in none.</summary>
    public AccountLine? this[long movement] => byMovement.GetValueOrDefault(movement);

    /// <summary>The lines of a book.</summary>
    public static AccountLines Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Remembered(Made);
    }

    /// <summary>The numbers of the lines that the bank has shown, by the reconciliations that stand.</summary>
    public static ImmutableHashSet<long> AtBank(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.Weeks.StandingReconciliations.SelectMany(one => one.AtBank)];
    }

    /// <summary>The reconciliation by which one of some movements is at the bank; null where none is.</summary>
    public static Reconciliation? Seen(Book book, IEnumerable<long> movements)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(movements);
        if (!book.Weeks.StandingReconciliations.Any())
        {
            return null;
        }

        AccountLines lines = Of(book);
        HashSet<long> numbers = [.. movements.Select(movement => lines[movement]).OfType<AccountLine>().Select(line => line.Number)];
        return book.Weeks.StandingReconciliations.LastOrDefault(one => one.AtBank.Any(numbers.Contains));
    }

    private static AccountLines Made(Book book)
    {
        LineRecords records = LineRecords.Of(book);
        var groups = new Dictionary<(string Sort, long Number, bool In), List<Movement>>();
        (Movement Movement, (string, long, bool) Key)? before = null;
        foreach (Movement movement in book.Ledger.Standing.Where(Crosses))
        {
            bool isIn = IsAccount(movement.To);
            (string, long, bool) key = records[movement.Number] is { } record && (isIn || record.Sort != LineRecord.Deposit) ? (record.Sort, record.Number, isIn && record.Sort != LineRecord.Withdrawal)
                : movement.Payday is { } payday && IsCash(Other(movement)) ? (LineRecord.Withdrawal, LineRecord.NumberOf(payday), false)
                : before is { } last && GoesOn(last.Movement, movement) ? last.Key
                : ("movement", movement.Number, isIn);
            before = (movement, key);
            (CollectionsMarshal.GetValueRefOrAddDefault(groups, key, out _) ??= []).Add(movement);
        }

        Dictionary<long, ClosedPayday> trips = book.Closed.Where(closed => closed.Trips.Length > 1).ToDictionary(closed => LineRecord.NumberOf(closed.Payday));
        IEnumerable<AccountLine> lines = groups.SelectMany(group => group.Key.Sort == LineRecord.Withdrawal && trips.TryGetValue(group.Key.Number, out ClosedPayday? closed)
            ? Trips(closed, group.Value).Select((trip, day) => Line(trip, records, book) with { Date = closed.Payday.PlusDays(day) })
            : [Line(group.Value, records, book)]);
        return new AccountLines([.. lines.Where(line => !line.Amount.IsZero).OrderBy(line => line.Number)]);
    }

    // The movements of each trip. What was given beyond the slip came with the last one, and what was given less is missing from
    // the last ones.
    private static List<List<Movement>> Trips(ClosedPayday closed, List<Movement> movements)
    {
        List<List<Movement>> trips = [];
        var rests = new Queue<Money>(closed.Trips);
        Money rest = rests.Dequeue();
        trips.Add([]);
        foreach (Movement movement in movements)
        {
            if (!rest.IsPositive && rests.TryDequeue(out Money next))
            {
                rest = next;
                trips.Add([]);
            }

            trips[^1].Add(movement);
            rest -= movement.Number <= closed.LastMovement ? movement.Amount : Money.Zero(movement.Amount.Currency);
        }

        while (trips.Count > 1 && Fetched(trips[^1]) <= 0)
        {
            trips[^2].AddRange(trips[^1]);
            trips.RemoveAt(trips.Count - 1);
        }

        return trips;
    }

    private static Int128 Fetched(List<Movement> trip) =>
        trip.Aggregate((Int128)0, (sum, movement) => sum + (IsAccount(movement.From) ? movement.Amount.MinorUnits : -movement.Amount.MinorUnits));

    private static AccountLine Line(List<Movement> movements, LineRecords records, Book book)
    {
        Movement first = movements[0];
        LineRecord? record = records[first.Number];
        Money amount = Money.Sum(movements.Select(movement => IsAccount(movement.To) ? movement.Amount : -movement.Amount), book.Household.Currency);
        bool isCash = IsCash(Other(first));
        return new AccountLine(
            first.Number,
            record?.Date ?? first.Date,
            amount,
            (amount.IsPositive, isCash) switch
            {
                (true, true) => AccountLineKind.Deposit,
                (true, false) => AccountLineKind.Income,
                (false, true) => AccountLineKind.Withdrawal,
                _ => AccountLineKind.Payment,
            },
            Other(first),
            record is { What.Length: > 0 } ? record.What : first.Reason,
            first.Payday,
            record?.Cheque,
            [.. movements.Select(movement => movement.Number)])
        {
            Further = [.. movements.Skip(1).Select(Other).Where(end => end != Other(first) && end is LedgerEnd.Outside { Kind: OutsideKind.Spending }).Distinct()],
        };
    }

    // One payment that the money of several purposes makes up; one on a debt begins with what was held for its minimum.
    private static bool GoesOn(Movement before, Movement movement) =>
        movement.Number == before.Number + 1 && movement.Payday is not null && movement.Payday == before.Payday && IsAccount(before.From) && IsAccount(movement.From)
        && movement.From is not LedgerEnd.At { Purpose.Kind: PurposeKind.ForDebt }
        && movement.To == before.To && movement.From != before.From && (movement.Date, movement.Reason) == (before.Date, before.Reason);

    private static bool Crosses(Movement movement) => IsAccount(movement.From) != IsAccount(movement.To)
        && Other(movement) is not LedgerEnd.Outside { Kind: OutsideKind.Opening };

    private static LedgerEnd Other(Movement movement) => IsAccount(movement.From) ? movement.To : movement.From;

    private static bool IsAccount(LedgerEnd end) => end is LedgerEnd.At { Place: Place.Account };

    private static bool IsCash(LedgerEnd end) => end is LedgerEnd.At { Place: Place.Cash };
}
