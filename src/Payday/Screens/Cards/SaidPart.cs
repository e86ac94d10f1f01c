using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Screens.Cards;

/// <summary>A part as it was said.</summary>
/// <param name="PotId">The pot; null for the buffer.</param>
/// <param name="Amount">What it has; null for the rest.</param>
internal sealed record SaidPart(PotId? PotId, Money? Amount);
