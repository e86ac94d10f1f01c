using System.Collections.Immutable;
using System.Runtime.InteropServices;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Ledgers;

/// <summary>All movements of a household, in order, and the balances they add up to.</summary>
/// <remarks>
/// A value: adding gives another ledger. Rule (design, section 4): an amount leaves one end and
/// reaches another, so all ends together always add up to zero. An undo leaves no trace in any figure: a movement and
/// its reverse cancel out as if neither had been, for every date. So rules read <see cref="Standing"/> and
/// <see cref="Of(LedgerEnd)"/>; <see cref="Movements"/> is for the list of the ledger and for its numbers alone.
/// </remarks>
public sealed class Ledger
{
    private readonly GrowingList<Movement> movements;

    // What the movements begin with, where they were stored; null where all of them were written here.
    private readonly MovementColumns? columns;

    // Made when they are first asked for, and kept up from there; what is in them never changes, as with the balances.
    private EndIndex? byEnd;
    private Reversals? reversals;

    private Ledger(
        GrowingList<Movement> movements,
        MovementColumns? columns,
        EndIndex? byEnd,
        Reversals? reversals,
        Balances balances)
    {
        this.movements = movements;
        this.columns = columns;
        this.byEnd = byEnd;
        this.reversals = reversals;
        Balances = balances;
    }

    /// <summary>All movements, undone ones and what undid them too; the one at index i has number i + 1.</summary>
    public IReadOnlyList<Movement> Movements => movements;

    /// <summary>What every end holds.</summary>
    public Balances Balances { get; }

    /// <summary>The movements that stand, in order: neither undone nor the undoing of another.</summary>
    public IEnumerable<Movement> Standing => Reversals.IsEmpty ? movements : movements.Where(Reversals.Stands);

    /// <summary>What the movements that stand moved, in order; none is made for it.</summary>
    public IEnumerable<MovedAmount> Moved
    {
        get
        {
            for (int number = 1; number <= movements.Count; number++)
            {
                if (MovedBy(number) is { } moved)
                {
                    yield return moved;
                }
            }
        }
    }

    /// <summary>What a movement moved, without making it; null where it doesn't stand.</summary>
    /// <param name="number">Its number.</param>
    public MovedAmount? MovedBy(long number)
    {
        int at = (int)number - 1;
        if (columns is not null && at < columns.Count)
        {
            return columns.IsReverse(at) || Reversals.By(number) is not null ? null : columns.Moved(at);
        }

        return movements[at] is var movement && Reversals.Stands(movement) ? new MovedAmount(number, movement.Date, movement.From, movement.To, movement.Amount) : null;
    }

    /// <summary>The movements written since, in order.</summary>
    /// <param name="earlier">This ledger as it was once.</param>
    public IEnumerable<Movement> Since(Ledger earlier)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        return Enumerable.Range(earlier.movements.Count, movements.Count - earlier.movements.Count).Select(at => movements[at]);
    }

    /// <summary>The movements of some numbers, in order, without a look at those before: a payday's, of a long life.</summary>
    /// <param name="first">The first.</param>
    /// <param name="last">The last; below the first for none.</param>
    internal IEnumerable<Movement> Between(long first, long last)
    {
        for (int at = (int)first - 1; at < last; at++)
        {
            yield return movements[at];
        }
    }

    private Reversals Reversals => reversals ??= Reversals.None.With(movements);

    /// <summary>The movements out of and into an end that stand, in order.</summary>
    public IReadOnlyList<Movement> Of(LedgerEnd end) => LinesOf(end)?.Movements ?? GrowingList<Movement>.Empty;

    /// <summary>By how much the movements that stand changed what an end holds, and when, in their order; above zero for what went into it.</summary>
    public IEnumerable<(LocalDate Day, Money By)> ChangesOf(LedgerEnd end) =>
        LinesOf(end)?.Changes.Select(change => (change.Day, Money.FromMinorUnits(change.By, Balances.Currency))) ?? [];

    /// <summary>What an end held day by day, by the movements that stand.</summary>
    internal EndCourse CourseOf(LedgerEnd end) => LinesOf(end)?.Course ?? EndCourse.Nothing(Balances.Currency);

    private EndLines? LinesOf(LedgerEnd end) => (byEnd ??= EndIndex.Of(columns, movements, Reversals, Balances.Currency)).Of(end);

    /// <summary>Whether a movement of this ledger is neither undone nor the undoing of another.</summary>
    public bool Stands(Movement movement)
    {
        ArgumentNullException.ThrowIfNull(movement);
        return Reversals.Stands(movement);
    }

    /// <summary>The movement that undid another, or null while that stands.</summary>
    /// <param name="number">The number of the other.</param>
    public Movement? UndoneBy(long number) => Reversals.By(number) is { } by ? movements[(int)(by - 1)] : null;

    /// <summary>A ledger without movements.</summary>
    public static Ledger Empty(Currency currency) => new(GrowingList<Movement>.Empty, null, null, null, Balances.Empty(currency));

    /// <summary>The ledger of movements that have their numbers, as one that was stored.</summary>
    /// <param name="currency">The currency of all of them.</param>
    /// <param name="movements">The movements, the one at index i with number i + 1.</param>
    /// <exception cref="ArgumentException">A movement is not above zero, has the same end twice, or another number.</exception>
    /// <exception cref="OverflowException">A balance leaves the range of 64 bits.</exception>
    public static Ledger Of(Currency currency, ReadOnlySpan<Movement> movements)
    {
        bool isAnyUndone = false;
        for (int i = 0; i < movements.Length; i++)
        {
            Check(movements[i]);
            isAnyUndone |= movements[i].Reverses is not null;
            if (movements[i].Number != i + 1)
            {
                throw new ArgumentException($"Movement {movements[i].Number} is in the place of movement {i + 1}.", nameof(movements));
            }
        }

        return new Ledger(GrowingList<Movement>.Empty.Add(movements), null, null, isAnyUndone ? null : Reversals.None, Balances.Empty(currency).After(movements));
    }

    /// <summary>The ledger of movements in columns, none of which is made before it is looked at, and of what came since.</summary>
    /// <param name="columns">The columns.</param>
    /// <param name="further">The movements since, numbered on.</param>
    /// <exception cref="ArgumentException">A movement since is not above zero, or has the same end twice.</exception>
    /// <exception cref="OverflowException">A balance leaves the range of 64 bits.</exception>
    public static Ledger Of(MovementColumns columns, params ReadOnlySpan<Movement> further)
    {
        foreach (Movement movement in further)
        {
            Check(movement);
        }

        return new Ledger(
            GrowingList<Movement>.After(new MadeList<Movement>(columns.Count, columns.Make)).Add(further),
            columns,
            null,
            Reversals.Of(columns.Reverses).With(further.ToArray()),
            Balances.Of(columns).After(further));
    }

    /// <summary>The ledger with further movements, numbered on from the last.</summary>
    /// <param name="movements">Any numbers they carry are replaced.</param>
    /// <exception cref="ArgumentException">A movement is not above zero, or has the same end twice.</exception>
    /// <exception cref="InvalidOperationException">
    /// They take money from where none is: an end that may not is further below zero than before. Whoever adds them knows
    /// what is there and refuses in words; this is the last line of defence.
    /// </exception>
    /// <exception cref="OverflowException">A balance leaves the range of 64 bits.</exception>
    public Ledger Add(IEnumerable<Movement> movements)
    {
        ArgumentNullException.ThrowIfNull(movements);
        var added = new List<Movement>(movements.TryGetNonEnumeratedCount(out int count) ? count : 0);
        foreach (Movement movement in movements)
        {
            Check(movement);
            int number = Movements.Count + added.Count + 1;
            added.Add(movement.Number == number ? movement : movement with { Number = number });
        }

        ReadOnlySpan<Movement> numbered = CollectionsMarshal.AsSpan(added);
        Balances balances = Balances.After(numbered);
        foreach (LedgerEnd end in added.Select(movement => movement.From).Distinct().Where(end => !LedgerCheck.MayBeNegative(end)))
        {
            if (balances[end].IsNegative && balances[end] < Balances[end])
            {
                throw new InvalidOperationException($"{end.Key} would be {balances[end].ToPlain()}.");
            }
        }

        GrowingList<Movement> all = this.movements.Add(numbered);
        Reversals? after = added.Exists(movement => movement.Reverses is not null) ? Reversals.With(added) : reversals;
        return new Ledger(
            all,
            columns,
            after == reversals ? byEnd?.With(added) : byEnd?.Less(all, added, after!),
            after,
            balances);
    }

    /// <summary>The movements that undo others: the same amounts, the other way.</summary>
    /// <param name="numbers">The numbers of the movements to undo.</param>
    /// <param name="date">The day on which they are undone.</param>
    /// <param name="reason">Why.</param>
    /// <returns>The reverses, last movement first; or why it can't be done.</returns>
    public Result<ImmutableArray<Movement>> Reverse(IEnumerable<long> numbers, LocalDate date, string reason)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        var made = ImmutableArray.CreateBuilder<Movement>();
        foreach (long number in numbers.Distinct().OrderDescending())
        {
            if (number < 1 || number > Movements.Count)
            {
                return Result.Refused<ImmutableArray<Movement>>(new LedgerFault.NoSuchMovement(number));
            }

            Movement movement = Movements[(int)(number - 1)];
            if (Reversals.By(number) is not null)
            {
                return Result.Refused<ImmutableArray<Movement>>(new LedgerFault.UndoneAlready(number));
            }

            if (movement.Reverses is not null)
            {
                return Result.Refused<ImmutableArray<Movement>>(new LedgerFault.UndoesAnother(number));
            }

            made.Add(movement with { Date = date, From = movement.To, To = movement.From, Reason = reason, Reverses = number });
        }

        return Result.Of(made.ToImmutable());
    }

    private static void Check(Movement movement)
    {
        if (!movement.Amount.IsPositive)
        {
            throw new ArgumentException($"A movement of {movement.Amount} moves nothing.", nameof(movement));
        }

        if (movement.From == movement.To)
        {
            throw new ArgumentException($"A movement from {movement.From.Key} to itself moves nothing.", nameof(movement));
        }
    }
}
