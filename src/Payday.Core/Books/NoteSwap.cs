using System.Collections.Immutable;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>Notes of equal worth that change places, so that a pot can give an amount exactly.</summary>
/// <param name="PotId">The pot that can't.</param>
/// <param name="With">The pot that helps, or null for the loose notes at home.</param>
/// <param name="Gives">By value in minor units: what the first pot gives.</param>
/// <param name="Gets">By value in minor units: what it gets for them; the same in all.</param>
public sealed record NoteSwap(
    PotId PotId,
    PotId? With,
    Notes Gives,
    Notes Gets);
