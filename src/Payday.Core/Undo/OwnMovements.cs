using System.Collections.Immutable;
using Payday.Core.Books;

namespace Payday.Core.Undo;

/// <summary>A record that stands, with the movements that are its own.</summary>
/// <param name="First">The number of its first movement.</param>
/// <param name="Last">The number of its last; below the first where it has none of its own.</param>
/// <param name="Others">What it wrote besides, and what it took up.</param>
/// <param name="Record">The record.</param>
internal readonly record struct OwnMovements(long First, long Last, ImmutableArray<long> Others, object Record)
{
    /// <summary>All records of a book that have movements and stand, but the closed paydays; a movement is of the first one that has it.</summary>
    public static IEnumerable<OwnMovements> All(Book book)
    {
        WeekRecords weeks = book.Weeks;
        return weeks.StandingReturns.Select(one => new OwnMovements(one.FirstMovement, one.LastMovement, [], one))
            .Concat(weeks.StandingReceived.Select(one => new OwnMovements(one.FirstMovement, one.LastMovement, [], one)))
            .Concat(weeks.Settled.Select(one => new OwnMovements(one.Movement, one.Movement, [], one)))
            .Concat(weeks.StandingCounts.Select(one => new OwnMovements(one.FirstMovement, one.LastMovement, one.Move is { } move ? [move] : [], one)))
            .Concat(weeks.StandingPurchases.Select(one => new OwnMovements(one.FirstMovement, one.LastMovement, one.TakenUp.Movements, one)))
            .Concat(weeks.StandingPayments.Select(one => new OwnMovements(one.FirstMovement, one.LastMovement, [], one)))
            .Concat(weeks.StandingMoves.Select(one => new OwnMovements(one.FirstMovement, one.LastMovement, one.TakenUp.Movements, one)))
            .Concat(weeks.StandingEntries.Select(one => new OwnMovements(one.FirstMovement, one.LastMovement, one.TakenUp.Movements, one)))
            .Concat(weeks.Fills.Where(one => one.Movement is not null).Select(one => new OwnMovements(one.Movement!.Value, one.Movement.Value, [], one)));
    }

    /// <summary>The record that each movement of a book is of, by the number of the movement; null where it is of none.</summary>
    public static object?[] ByMovement(Book book)
    {
        object?[] records = new object?[book.Ledger.Movements.Count + 1];
        foreach (OwnMovements one in All(book))
        {
            for (long number = one.First; number <= one.Last; number++)
            {
                records[number] ??= one.Record;
            }

            foreach (long number in one.Others)
            {
                records[number] ??= one.Record;
            }
        }

        return records;
    }

    /// <summary>Whether a movement is its own.</summary>
    public bool Has(long movement) => (First <= movement && movement <= Last) || Others.Contains(movement);
}
