using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>What the bank really gave for a payday's slip, where that isn't what the slip asked for (design, rule 17).</summary>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Date">The day on which it was fetched.</param>
/// <param name="Payday">The payday of the slip.</param>
/// <param name="Got">By note value in minor units: what was given.</param>
/// <param name="Parts">The notes of each pot and week, as they go into the envelopes now.</param>
/// <param name="FirstMovement">The number of its first movement.</param>
/// <param name="LastMovement">The number of its last movement; one less than the first where there are none.</param>
public sealed record NotesReceived(
    long Number, LocalDate Date, LocalDate Payday, Notes Got, ImmutableArray<ClosedPart> Parts, long FirstMovement, long LastMovement)
{
    /// <summary>Whether it was undone; what the slip asked for stands then.</summary>
    public bool Undone { get; init; }

    /// <summary>The parts of one pot, in their order.</summary>
    internal IEnumerable<ClosedPart> PartsOf(PotId potId) => Parts.Where(part => part.PotId == potId);
}
