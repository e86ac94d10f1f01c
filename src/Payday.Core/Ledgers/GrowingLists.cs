namespace Payday.Core.Ledgers;

/// <summary>Makes lists that only grow.</summary>
public static class GrowingList
{
    /// <summary>The list of some items.</summary>
    public static GrowingList<T> Of<T>(params ReadOnlySpan<T> items) => GrowingList<T>.Empty.Add(items);

    /// <summary>The list that begins with another one, of which an item is looked at only where it is asked for.</summary>
    /// <param name="begun">The other one, which doesn't change any more.</param>
    public static GrowingList<T> After<T>(IReadOnlyList<T> begun) => GrowingList<T>.After(begun);
}
