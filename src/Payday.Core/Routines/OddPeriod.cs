namespace Payday.Core.Routines;

/// <summary>What is different about a pay period, and what the routine proposes for it.</summary>
/// <param name="Kind">What sort of difference.</param>
/// <param name="Sentence">One line.</param>
public sealed record OddPeriod(OddKind Kind, string Sentence);

/// <summary>What can be different about a pay period.</summary>
public enum OddKind
{
    /// <summary>A payday before it was not closed.</summary>
    Missed,

    /// <summary>The pay comes on another day than its schedule says.</summary>
    Moved,

    /// <summary>A payday beyond the usual count of its month.</summary>
    Extra,

    /// <summary>More or fewer fill days than usual, or none.</summary>
    FillDays,

    /// <summary>The first week is filled on the payday itself, which is not usual.</summary>
    FillOnPayday,

    /// <summary>The next payday is less than a week away, which is not usual.</summary>
    Short,

    /// <summary>A week of it lies in two years.</summary>
    YearEnd,

    /// <summary>The first payday of its year.</summary>
    YearStart,
}
