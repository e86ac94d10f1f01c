using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Store;

/// <summary>All that one action of the person changes; it is stored whole or not at all.</summary>
public sealed record BookChange
{
    /// <summary>The household as it is now, or null where it stays.</summary>
    public Household? Household { get; init; }

    /// <summary>Movements to add; their numbers follow on from the last one stored.</summary>
    public ImmutableArray<Movement> Movements { get; init; } = [];

    /// <summary>A payday that was closed, or null.</summary>
    public ClosedPayday? Closed { get; init; }

    /// <summary>A closed payday whose record changed, or null.</summary>
    public ClosedPayday? Corrected { get; init; }

    /// <summary>A closed payday that was reopened, or null.</summary>
    public LocalDate? Reopened { get; init; }

    /// <summary>The draft as it is now, or null where it stays or goes.</summary>
    public RoutineDraft? Draft { get; init; }

    /// <summary>Whether the draft goes.</summary>
    public bool DropsDraft { get; init; }

    /// <summary>What happened between paydays, as it is now; or null where it stays.</summary>
    public WeekRecords? Weeks { get; init; }

    /// <summary>What counting, filling, buying by card or returning cash changes: new movements and the records of them.</summary>
    /// <param name="before">The book as it is stored.</param>
    /// <param name="after">The same book with movements added and other records; nothing else of it is stored.</param>
    public static BookChange Between(Book before, Book after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new BookChange { Movements = [.. after.Ledger.Movements.Skip(before.Ledger.Movements.Count)], Weeks = after.Weeks };
    }

    /// <summary>What closing a payday changes.</summary>
    public static BookChange Of(Closing closing)
    {
        ArgumentNullException.ThrowIfNull(closing);
        return new BookChange { Movements = closing.Movements, Closed = closing.Closed, DropsDraft = true, Weeks = closing.Book.Weeks };
    }

    /// <summary>What reopening a payday changes.</summary>
    public static BookChange Of(Reopening reopening)
    {
        ArgumentNullException.ThrowIfNull(reopening);
        return new BookChange { Movements = reopening.Movements, Reopened = reopening.Reopened.Payday, Draft = reopening.Book.Draft, Weeks = reopening.Book.Weeks };
    }

    /// <summary>What undoing a movement changes.</summary>
    public static BookChange Of(Undoing undoing)
    {
        ArgumentNullException.ThrowIfNull(undoing);
        return new BookChange { Movements = [undoing.Reverse], Corrected = undoing.Closed };
    }

    /// <summary>What putting a household in the place of another changes.</summary>
    public static BookChange Of(HouseholdChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return new BookChange
        {
            Household = change.Book.Household,
            Movements = change.Movements,
            Draft = change.Book.Draft,
            DropsDraft = change.Book.Draft is null,
            Weeks = change.Book.Weeks,
        };
    }
}
