using NodaTime;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>One part of a closed payday that goes in the wallet.</summary>
/// <param name="Payday">The payday that brought it.</param>
/// <param name="Week">The fill day, or null for the whole period.</param>
/// <param name="PotId">The pot.</param>
public readonly record struct FillKey(LocalDate Payday, LocalDate? Week, PotId PotId)
{
    /// <summary>The day on which it should be in the wallet: the fill day, or the payday where there is none.</summary>
    public LocalDate Day => Week ?? Payday;
}
