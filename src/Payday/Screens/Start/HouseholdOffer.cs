using System.Collections.Immutable;
using Payday.Core.Households;

namespace Payday.Screens.Start;

/// <summary>What a household file offers.</summary>
/// <param name="Household">The household, or null where the file can't be taken.</param>
/// <param name="Faults">All that is wrong with it, a sentence each.</param>
internal sealed record HouseholdOffer(Household? Household, ImmutableArray<string> Faults);
