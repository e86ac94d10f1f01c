using System.Collections;
using Payday.Store.Edits;

namespace Payday.Store.Contents;

/// <summary>Digests as a snapshot has them, one behind the other.</summary>
/// <param name="bytes">Their bytes.</param>
internal sealed class PackedDigests(ReadOnlyMemory<byte> bytes) : IReadOnlyList<Digest>
{
    /// <inheritdoc/>
    public int Count => bytes.Length / Digest.Length;

    /// <inheritdoc/>
    public Digest this[int index] => Digest.From(bytes.Span[(index * Digest.Length)..]);

    /// <inheritdoc/>
    public IEnumerator<Digest> GetEnumerator()
    {
        for (int i = 0; i < Count; i++)
        {
            yield return this[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
