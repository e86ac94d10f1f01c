using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Core.NotesAtHome;

/// <summary>Notes that were followed through a ledger once, kept as long as it is.</summary>
/// <remarks>
/// A routine asks for them at each key, while all that they come from stays as it is; following them through a ledger
/// of years takes longer than a key may.
/// </remarks>
internal sealed class FollowedNotes
{
    private static readonly ConditionalWeakTable<Ledger, FollowedNotes> Kept = [];

    private readonly Household household;
    private readonly ImmutableArray<ClosedPayday> closed;
    private readonly WeekRecords weeks;
    private readonly PotNotes notes;

    private FollowedNotes(Book book)
    {
        household = book.Household;
        closed = book.Closed;
        weeks = book.Weeks;
        notes = NoteReplay.Of(book);
    }

    /// <summary>What is known from all that happened.</summary>
    public static PotNotes Of(Book book)
    {
        if (!Kept.TryGetValue(book.Ledger, out FollowedNotes? followed) || !followed.IsOf(book))
        {
            followed = new FollowedNotes(book);
            Kept.AddOrUpdate(book.Ledger, followed);
        }

        return followed.notes;
    }

    private bool IsOf(Book book) => ReferenceEquals(household, book.Household) && closed == book.Closed && ReferenceEquals(weeks, book.Weeks);
}
