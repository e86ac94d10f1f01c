using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>The movements out of and into an end that stand, in order, and what it held by them.</summary>
/// <remarks>The course is worked out when it is first asked for, and goes on from there where further movements are written.</remarks>
internal sealed class EndLines
{
    private readonly LedgerEnd end;
    private readonly PackedChanges? packed;
    private readonly Lazy<EndCourse> begun;
    private readonly int behind;
    private EndCourse? course;

    private EndLines(LedgerEnd end, GrowingList<Movement> movements, PackedChanges? packed, Lazy<EndCourse> begun, int behind)
    {
        this.end = end;
        this.packed = packed;
        Movements = movements;
        this.begun = begun;
        this.behind = behind;
    }

    /// <summary>The movements.</summary>
    public GrowingList<Movement> Movements { get; }

    /// <summary>By how much, in minor units, they changed what it holds, and when; no movement is made for it.</summary>
    public IEnumerable<(LocalDate Day, long By)> Changes => (packed?.All ?? []).Concat(Movements.From(packed?.Count ?? 0)
        .Select(movement => (movement.Date, movement.To == end ? movement.Amount.MinorUnits : -movement.Amount.MinorUnits)));

    /// <summary>What it held day by day.</summary>
    public EndCourse Course => course ??= behind == Movements.Count ? begun.Value : begun.Value.With(end, Movements.From(behind));

    /// <summary>An end without movements.</summary>
    public static EndLines None(LedgerEnd end, Currency currency) => new(end, GrowingList<Movement>.Empty, null, new(EndCourse.Nothing(currency)), 0);

    /// <summary>The movements of all ends that stand, as they are in columns, of which none is made for it.</summary>
    /// <param name="columns">The columns.</param>
    /// <param name="movements">The movements of the columns.</param>
    /// <param name="leftOut">The numbers of those that don't stand.</param>
    public static Dictionary<LedgerEnd, EndLines> Of(MovementColumns columns, IReadOnlyList<Movement> movements, HashSet<long> leftOut)
    {
        (int[] indexes, int[] begins) = columns.ByEnd(leftOut);
        return columns.Ends.Select(Lines).ToDictionary(lines => lines.end);

        EndLines Lines(LedgerEnd end, int number)
        {
            (int first, int count) = (begins[number], begins[number + 1] - begins[number]);
            var packed = new PackedChanges(columns.Changes(number, new ArraySegment<int>(indexes, first, count)), count);
            return new EndLines(
                end,
                GrowingList<Movement>.After(new PickedList<Movement>(movements, indexes, first, count)),
                packed,
                new(() => EndCourse.Of(columns.Currency, packed.All)),
                count);
        }
    }

    /// <summary>Those, and further ones.</summary>
    public EndLines Add(ReadOnlySpan<Movement> further) =>
        course is { } known ? new(end, Movements.Add(further), packed, new(known), Movements.Count) : new(end, Movements.Add(further), packed, begun, behind);

    // What the first of the movements changed, as it is in columns.
    private sealed record PackedChanges(IEnumerable<(LocalDate Day, long By)> All, int Count);
}
