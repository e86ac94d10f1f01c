using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>All movements of a household, in order, and the balances they add up to.</summary>
/// <remarks>
/// A value: adding gives another ledger. Rule (design, section 4): an amount leaves one end and
/// reaches another, so all ends together always add up to zero.
/// </remarks>
public sealed class Ledger
{
    private readonly ImmutableDictionary<LedgerEnd, ImmutableList<Movement>> byEnd;

    private Ledger(ImmutableList<Movement> movements, ImmutableDictionary<LedgerEnd, ImmutableList<Movement>> byEnd, Balances balances)
    {
        Movements = movements;
        this.byEnd = byEnd;
        Balances = balances;
    }

    /// <summary>The movements; the one at index i has number i + 1.</summary>
    public ImmutableList<Movement> Movements { get; }

    /// <summary>What every end holds.</summary>
    public Balances Balances { get; }

    /// <summary>The movements out of and into an end, in order.</summary>
    public IReadOnlyList<Movement> Of(LedgerEnd end) => byEnd.GetValueOrDefault(end, []);

    /// <summary>The movements that stand: neither undone nor the undoing of another.</summary>
    public IEnumerable<Movement> Live
    {
        get
        {
            HashSet<long> undone = Undone();
            return Movements.Where(movement => movement.Reverses is null && !undone.Contains(movement.Number));
        }
    }

    /// <summary>A ledger without movements.</summary>
    public static Ledger Empty(Currency currency) => new([], ImmutableDictionary<LedgerEnd, ImmutableList<Movement>>.Empty, Balances.Empty(currency));

    /// <summary>The ledger with further movements, numbered on from the last.</summary>
    /// <param name="movements">Any numbers they carry are replaced.</param>
    /// <exception cref="ArgumentException">A movement is not above zero, or has the same end twice.</exception>
    /// <exception cref="OverflowException">A balance leaves the range of 64 bits.</exception>
    public Ledger Add(IEnumerable<Movement> movements)
    {
        ArgumentNullException.ThrowIfNull(movements);
        var added = new List<Movement>();
        foreach (Movement movement in movements)
        {
            if (!movement.Amount.IsPositive)
            {
                throw new ArgumentException($"A movement of {movement.Amount} moves nothing.", nameof(movements));
            }

            if (movement.From == movement.To)
            {
                throw new ArgumentException($"A movement from {movement.From.Key} to itself moves nothing.", nameof(movements));
            }

            added.Add(movement with { Number = Movements.Count + added.Count + 1 });
        }

        ImmutableDictionary<LedgerEnd, ImmutableList<Movement>>.Builder ends = byEnd.ToBuilder();
        foreach (Movement movement in added)
        {
            ends[movement.From] = ends.GetValueOrDefault(movement.From, []).Add(movement);
            ends[movement.To] = ends.GetValueOrDefault(movement.To, []).Add(movement);
        }

        return new Ledger(Movements.AddRange(added), ends.ToImmutable(), Balances.After(added));
    }

    /// <summary>The movements that undo others: the same amounts, the other way.</summary>
    /// <param name="numbers">The numbers of the movements to undo.</param>
    /// <param name="date">The day on which they are undone.</param>
    /// <param name="reason">Why.</param>
    /// <returns>The reverses, last movement first; or why it can't be done.</returns>
    public Read<ImmutableArray<Movement>> Reverse(IEnumerable<long> numbers, LocalDate date, string reason)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        HashSet<long> undone = Undone();
        var reverses = ImmutableArray.CreateBuilder<Movement>();
        foreach (long number in numbers.Distinct().OrderDescending())
        {
            if (number < 1 || number > Movements.Count)
            {
                return Read.Refused<ImmutableArray<Movement>>($"There is no movement {number}.");
            }

            Movement movement = Movements[(int)(number - 1)];
            if (undone.Contains(number))
            {
                return Read.Refused<ImmutableArray<Movement>>($"Movement {number} is undone already.");
            }

            if (movement.Reverses is not null)
            {
                return Read.Refused<ImmutableArray<Movement>>($"Movement {number} itself undoes another; enter the movement again instead.");
            }

            reverses.Add(movement with { Date = date, From = movement.To, To = movement.From, Reason = reason, Reverses = number });
        }

        return Read.Of(reverses.ToImmutable());
    }

    private HashSet<long> Undone() => [.. Movements.Where(movement => movement.Reverses is not null).Select(movement => movement.Reverses!.Value)];
}
