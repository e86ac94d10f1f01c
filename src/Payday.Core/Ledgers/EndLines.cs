using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>The movements out of and into an end that stand, in order, and what it held by them.</summary>
/// <remarks>The course is worked out when it is first asked for, and goes on from there where further movements are written.</remarks>
internal sealed class EndLines
{
    private readonly LedgerEnd end;
    private readonly EndCourse begun;
    private readonly int behind;
    private EndCourse? course;

    private EndLines(LedgerEnd end, GrowingList<Movement> movements, EndCourse begun, int behind)
    {
        this.end = end;
        Movements = movements;
        this.begun = begun;
        this.behind = behind;
    }

    /// <summary>The movements.</summary>
    public GrowingList<Movement> Movements { get; }

    /// <summary>What it held day by day.</summary>
    public EndCourse Course => course ??= begun.With(end, Movements.From(behind));

    /// <summary>An end without movements.</summary>
    public static EndLines None(LedgerEnd end, Currency currency) => new(end, GrowingList<Movement>.Empty, EndCourse.Nothing(currency), 0);

    /// <summary>Those, and further ones.</summary>
    public EndLines Add(ReadOnlySpan<Movement> further) =>
        course is { } known ? new(end, Movements.Add(further), known, Movements.Count) : new(end, Movements.Add(further), begun, behind);
}
