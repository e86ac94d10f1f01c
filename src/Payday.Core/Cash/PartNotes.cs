using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>The notes chosen for a part.</summary>
/// <param name="Part">The part as it was asked for.</param>
/// <param name="Amount">
/// What the part holds after money moved between the weeks of its pot; the amount asked for unless the source
/// is a machine. Over a pot the two add up to the same.
/// </param>
/// <param name="Notes">Value in minor units to count, above zero.</param>
/// <param name="KeptBack">What stays in the account for the pot; with the notes it adds up to <paramref name="Amount"/>.</param>
public sealed record PartNotes(NotePart Part, Money Amount, Notes Notes, Money KeptBack)
{
    /// <summary>What is in the envelope: the amount less what is kept back.</summary>
    public Money Paid => Amount - KeptBack;

    /// <summary>How many notes.</summary>
    public int NoteCount => Notes.Pieces;
}
