using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Store.Changes;

/// <summary>All that one action of the person changes; it is stored whole or not at all.</summary>
internal sealed record BookChange
{
    /// <summary>The household as it is now, or null where it stays.</summary>
    public Household? Household { get; init; }

    /// <summary>Movements to add; their numbers follow on from the last one stored.</summary>
    public ImmutableArray<Movement> Movements { get; init; } = [];

    /// <summary>Paydays that were closed.</summary>
    public ImmutableArray<ClosedPayday> Closed { get; init; } = [];

    /// <summary>Closed paydays whose record changed.</summary>
    public ImmutableArray<ClosedPayday> Corrected { get; init; } = [];

    /// <summary>Closed paydays that were reopened.</summary>
    public ImmutableArray<LocalDate> Reopened { get; init; } = [];

    /// <summary>The draft as it is now, or null where it stays or goes.</summary>
    public RoutineDraft? Draft { get; init; }

    /// <summary>Whether the draft goes.</summary>
    public bool DropsDraft { get; init; }

    /// <summary>What happened between paydays, as it is now; or null where it stays.</summary>
    public WeekRecords? Weeks { get; init; }

    /// <summary>What an action changed: whatever is another object in the book after it.</summary>
    /// <param name="before">The book as it is stored; null where nothing is.</param>
    /// <param name="after">The book after the action.</param>
    /// <exception cref="ArgumentException">The ledger doesn't go on from that of the book before: movements are never edited.</exception>
    public static BookChange Between(Book? before, Book after)
    {
        ArgumentNullException.ThrowIfNull(after);
        if (before is null)
        {
            return new BookChange
            {
                Household = after.Household,
                Movements = [.. after.Ledger.Movements],
                Closed = after.Closed,
                Draft = after.Draft,
                Weeks = ReferenceEquals(after.Weeks, WeekRecords.None) ? null : after.Weeks,
            };
        }

        // Only the last closed paydays ever change.
        int same = before.Closed.Zip(after.Closed).TakeWhile(pair => ReferenceEquals(pair.First, pair.Second)).Count();
        ImmutableArray<ClosedPayday> old = before.Closed[same..];
        ImmutableArray<ClosedPayday> now = after.Closed[same..];
        return new BookChange
        {
            Household = ReferenceEquals(before.Household, after.Household) ? null : after.Household,
            Movements = Added(before.Ledger, after.Ledger),
            Closed = [.. now.Where(closed => !Has(old, closed.Payday))],
            Corrected = [.. now.Where(closed => Has(old, closed.Payday) && !old.Any(known => ReferenceEquals(known, closed)))],
            Reopened = [.. old.Where(closed => !Has(now, closed.Payday)).Select(closed => closed.Payday)],
            Draft = ReferenceEquals(before.Draft, after.Draft) ? null : after.Draft,
            DropsDraft = before.Draft is not null && after.Draft is null,
            Weeks = ReferenceEquals(before.Weeks, after.Weeks) ? null : after.Weeks,
        };
    }

    private static bool Has(ImmutableArray<ClosedPayday> paydays, LocalDate payday) => paydays.Any(closed => closed.Payday == payday);

    private static ImmutableArray<Movement> Added(Ledger before, Ledger after)
    {
        int stored = before.Movements.Count;
        return after.Movements.Count >= stored && (stored == 0 || after.Movements[stored - 1] == before.Movements[stored - 1])
            ? [.. after.Since(before)]
            : throw new ArgumentException("The ledger doesn't go on from the one that is stored.", nameof(after));
    }
}
