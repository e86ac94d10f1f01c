using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Sums;

/// <summary>Two statements of one account that come one after the other.</summary>
/// <param name="Before">The earlier one.</param>
/// <param name="After">The later one.</param>
/// <param name="Link">How they hang together.</param>
/// <param name="Missing">What missing lines come to; null where nothing is missing or it can't be known.</param>
public sealed record StatementStep(Statement Before, Statement After, ChainLink Link, Money? Missing)
{
    /// <summary>The day after the earlier one's end; null where it isn't known.</summary>
    public LocalDate? MissingFrom => Link == ChainLink.Missing ? Before.To?.PlusDays(1) : null;

    /// <summary>How many statements the numbers say are missing; null where there are none.</summary>
    public long? MissingCount => Link == ChainLink.Missing && Before.Number is { } before && After.Number - before - 1 is > 0 and var count ? count : null;
}
