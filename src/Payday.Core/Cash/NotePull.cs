using System.Collections.Immutable;

namespace Payday.Core.Cash;

/// <summary>Taking an exact amount out of given notes.</summary>
/// <param name="Pulls">By value in minor units: what is taken for the amount.</param>
/// <param name="Gives">What is handed to the other side first; empty where there is no swap.</param>
/// <param name="Gets">What the other side hands over for it, worth the same.</param>
public sealed record NotePull(
    ImmutableSortedDictionary<long, int> Pulls,
    ImmutableSortedDictionary<long, int> Gives,
    ImmutableSortedDictionary<long, int> Gets)
{
    /// <summary>How many notes change places.</summary>
    public int Moved => NoteBag.Count(Pulls) + NoteBag.Count(Gives) + NoteBag.Count(Gets);

    /// <summary>The fewest notes that come to an amount exactly.</summary>
    /// <param name="from">The notes that are there, by value in minor units.</param>
    /// <param name="amount">In minor units, zero or more.</param>
    /// <returns>The pull; or null where the notes can't make it.</returns>
    public static NotePull? Exactly(ImmutableSortedDictionary<long, int> from, long amount) => PullSearch.Find(from, NoteBag.Empty, amount);

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
    public static NotePull? WithSwap(ImmutableSortedDictionary<long, int> from, ImmutableSortedDictionary<long, int> other, long amount) =>
        Exactly(from, amount) ?? PullSearch.Find(from, other, amount);
}
