using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Store.HouseholdFiles;

/// <summary>What the parts of a household file need of each other while they are read.</summary>
/// <param name="currency">The currency of every amount.</param>
/// <param name="start">The start of the household, or null where it could not be read.</param>
/// <param name="notes">The notes in use, largest first; empty where they could not be read.</param>
internal sealed class HouseholdParts(Currency currency, LocalDate? start, ImmutableArray<Money> notes)
{
    public Currency Currency { get; } = currency;

    public LocalDate? Start { get; } = start;

    public ImmutableArray<Money> Notes { get; } = notes;

    /// <summary>Whether the household is stored already: it is read whatever its names are, for some were taken once that no longer are.</summary>
    public bool IsStored { get; init; }

    /// <summary>By bill id: what is held at the start.</summary>
    public ImmutableSortedDictionary<BillId, Money>.Builder SetAside { get; } = ImmutableSortedDictionary.CreateBuilder<BillId, Money>();

    /// <summary>By pot id: what is held at the start.</summary>
    public ImmutableSortedDictionary<PotId, Money>.Builder Held { get; } = ImmutableSortedDictionary.CreateBuilder<PotId, Money>();
}
