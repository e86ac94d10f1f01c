using System.Collections;

namespace Payday.Core.Ledgers;

/// <summary>Some items of another list, by their places there.</summary>
/// <param name="all">The other list.</param>
/// <param name="places">The places, of other lists like this one too.</param>
/// <param name="first">Where those of this one begin.</param>
/// <param name="count">How many there are.</param>
internal sealed class PickedList<T>(IReadOnlyList<T> all, int[] places, int first, int count) : IReadOnlyList<T>
{
    /// <inheritdoc/>
    public int Count => count;

    /// <inheritdoc/>
    public T this[int index] => index >= 0 && index < count ? all[places[first + index]] : throw new ArgumentOutOfRangeException(nameof(index));

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator()
    {
        for (int i = 0; i < count; i++)
        {
            yield return all[places[first + i]];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
