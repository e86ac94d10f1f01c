using System.Collections;

namespace Payday.Text;

/// <summary>Lines that come of others, each made when it is looked at.</summary>
/// <param name="of">The others.</param>
/// <param name="make">Makes one of another.</param>
internal sealed class ShownLines<TOf, T>(IReadOnlyList<TOf> of, Func<TOf, T> make) : IReadOnlyList<T>
{
    /// <inheritdoc/>
    public int Count => of.Count;

    /// <inheritdoc/>
    public T this[int index] => make(of[index]);

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => of.Select(make).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
