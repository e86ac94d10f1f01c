using System.Collections.Immutable;

namespace Payday.Core.Cash;

/// <summary>Taking an exact amount out of given notes.</summary>
/// <param name="Pulls">By value in minor units: what is taken for the amount.</param>
/// <param name="Gives">What is handed to the other side first; empty where there is no swap.</param>
/// <param name="Gets">What the other side gives for it, worth the same.</param>
public sealed record NotePull(
    Notes Pulls,
    Notes Gives,
    Notes Gets)
{
    /// <summary>How many notes change places.</summary>
    public int Moved => Pulls.Pieces + Gives.Pieces + Gets.Pieces;

    /// <summary>The fewest notes that come to an amount exactly.</summary>
    /// <param name="from">The notes that are there, by value in minor units.</param>
    /// <param name="amount">In minor units, zero or more.</param>
    /// <returns>The pull; or null where the notes can't make it.</returns>
    public static NotePull? Exactly(Notes from, long amount) => PullSearch.Find(from, Notes.None, amount);

    /// <summary>
    /// The fewest notes moved in all, so that an amount comes out exactly once notes of equal worth were swapped.
    /// </summary>
    /// <param name="from">The notes of the side that gives the amount.</param>
    /// <param name="other">The notes of the side that helps, whose worth stays what it is.</param>
    /// <param name="amount">In minor units, zero or more.</param>
    /// <returns>
    /// The pull, with a swap only where there must be one; or null where there is none, or none was found with
    /// <see cref="PullSearch.MostMoved"/> notes.
    /// </returns>
    public static NotePull? WithSwap(Notes from, Notes other, long amount) =>
        Exactly(from, amount) ?? PullSearch.Find(from, other, amount);
}
