using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Pots;

/// <summary>A pot's fill as it stands, and how far it can be cut.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="Rank">1 for the pot that is cut last; higher ranks are cut first.</param>
/// <param name="Fill">What it would get, zero or more.</param>
/// <param name="Floor">The least a cut may leave, zero or more; a fill below it is not cut.</param>
/// <param name="Unit">The steps of a cut, above zero; see <see cref="PotUnit"/>.</param>
public sealed record CuttableFill(PotId PotId, int Rank, Money Fill, Money Floor, Money Unit);

/// <summary>A proposed cut of one fill.</summary>
/// <param name="PotId">The pot.</param>
/// <param name="Cut">What is taken off, above zero.</param>
/// <param name="Left">What the pot still gets, its floor or more.</param>
public readonly record struct FillCut(PotId PotId, Money Cut, Money Left);
