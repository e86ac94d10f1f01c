using System.Collections;

namespace Payday.Text;

/// <summary>Lines that are there, and lines after them that are made when they are looked at.</summary>
/// <param name="first">Those that are there.</param>
/// <param name="then">Those after them.</param>
internal sealed class JoinedLines<T>(IReadOnlyList<T> first, IReadOnlyList<T> then) : IReadOnlyList<T>
{
    /// <inheritdoc/>
    public int Count => first.Count + then.Count;

    /// <inheritdoc/>
    public T this[int index] => index < first.Count ? first[index] : then[index - first.Count];

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => first.Concat(then).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
