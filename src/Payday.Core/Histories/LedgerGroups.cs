using System.Collections.Immutable;
using System.Runtime.InteropServices;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.Histories;

/// <summary>The ledger grouped by what was done, as people remember it: each movement is in one group.</summary>
public static class LedgerGroups
{
    /// <summary>All groups, in the order of their first movements.</summary>
    public static ImmutableArray<LedgerGroup> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        Dictionary<long, long> counts = Counts(book);
        Dictionary<long, long> undoings = Undoings(book.Ledger);
        Func<long, BookEntry?> entryOf = BookEntry.ByMovement(book);
        var groups = new Dictionary<GroupKey, List<Movement>>();
        Movement? before = null;
        GroupKey key = default;
        foreach (Movement movement in book.Ledger.Movements)
        {
            bool goesOn = key.Kind == LedgerGroupKind.Opening && before is not null && IsOpening(movement) && movement.Reason == before.Reason && movement.Date == before.Date;
            key = undoings.TryGetValue(movement.Number, out long undoing) ? new GroupKey(LedgerGroupKind.Undone, undoing, null)
                : goesOn ? key
                : IsOpening(movement) ? new GroupKey(LedgerGroupKind.Opening, movement.Number, null)
                : PaydayOf(book, movement.Number) is { } payday ? new GroupKey(LedgerGroupKind.Payday, 0, new BookEntry.Payday(payday))
                : counts.TryGetValue(movement.Number, out long together) ? new GroupKey(LedgerGroupKind.Entry, together, null)
                : entryOf(movement.Number) switch
                {
                    null => new GroupKey(LedgerGroupKind.Alone, movement.Number, null),
                    BookEntry.Fill when key.IsFill && before?.Date == movement.Date => key,
                    BookEntry.Fill fill => new GroupKey(LedgerGroupKind.Entry, 0, fill) { IsFill = true },
                    var entry => new GroupKey(LedgerGroupKind.Entry, 0, entry),
                };
            before = movement;
            (CollectionsMarshal.GetValueRefOrAddDefault(groups, key, out _) ??= []).Add(movement);
        }

        return
        [
            .. groups.Select(group => Group(book, entryOf, group.Key, [.. group.Value.OrderBy(movement => movement.Number)])).OrderBy(group => group.Number),
        ];
    }

    // What a count or a purchase took up is older than itself, and not what it is known by.
    private static LedgerGroup Group(Book book, Func<long, BookEntry?> entryOf, GroupKey key, ImmutableArray<Movement> movements)
    {
        BookEntry? entry = key.Entry ?? (key.Kind == LedgerGroupKind.Entry ? entryOf(movements[0].Number) : null);
        LocalDate date = entry switch
        {
            BookEntry.Payday payday => payday.Date,
            BookEntry.Purchase purchase => book.Weeks.Purchases[(int)purchase.Number - 1].Date,
            BookEntry.Count count => count.Date,
            BookEntry.Return back => back.Date,
            _ => movements[^1].Date,
        };
        return new LedgerGroup(key.Kind, entry, date, movements);
    }

    // By movement: the first count of those that were confirmed together, which people know as one.
    private static Dictionary<long, long> Counts(Book book)
    {
        var counts = new Dictionary<long, long>();
        foreach (WeekCount count in book.Weeks.StandingCounts)
        {
            for (long number = count.FirstMovement; number <= count.LastMovement; number++)
            {
                counts[number] = count.Together;
            }

            foreach (long number in count.TakenUp.Movements.Concat(count.Move is { } move ? [move] : []))
            {
                counts[number] = count.Together;
            }
        }

        return counts;
    }

    // By movement, what was undone and what undid it: the first of the movements that undid it all at once, the last first.
    private static Dictionary<long, long> Undoings(Ledger ledger)
    {
        var undoings = new Dictionary<long, long>();
        Movement? before = null;
        long first = 0;
        foreach (Movement movement in ledger.Movements.Where(movement => movement.Reverses is not null))
        {
            bool goesOn = before is not null && movement.Number == before.Number + 1 && movement.Reverses < before.Reverses && (movement.Date, movement.Reason) == (before.Date, before.Reason);
            first = goesOn ? first : movement.Number;
            undoings[movement.Number] = undoings[movement.Reverses!.Value] = first;
            before = movement;
        }

        return undoings;
    }

    private static LocalDate? PaydayOf(Book book, long number)
    {
        int low = 0;
        int high = book.Closed.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = book.Closed[middle].FirstMovement <= number ? (middle + 1, high) : (low, middle);
        }

        return low > 0 && number <= book.Closed[low - 1].LastMovement ? book.Closed[low - 1].Payday : null;
    }

    private static bool IsOpening(Movement movement) =>
        movement.From is LedgerEnd.Outside { Kind: OutsideKind.Opening } || movement.To is LedgerEnd.Outside { Kind: OutsideKind.Opening };

    private readonly record struct GroupKey(LedgerGroupKind Kind, long Number, BookEntry? Entry)
    {
        public bool IsFill { get; init; }
    }
}
