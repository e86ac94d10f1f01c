namespace Payday.Core.Books;

/// <summary>Things that were worked out from a book once, kept with it until one of the things they come from is another.</summary>
/// <remarks>
/// They say nothing of the book that the book doesn't say itself, so any two are equal. A book that differs in its draft
/// alone shares them: a routine asks at each key for what takes longer to work out than a key may.
/// </remarks>
internal sealed class BookMemory : IEquatable<BookMemory>
{
    private readonly Dictionary<Type, object> kept = [];

    /// <summary>What is kept of a type, worked out where it is not yet.</summary>
    public T Of<T>(Book book, Func<Book, T> workOut)
        where T : class
    {
        if (kept.TryGetValue(typeof(T), out object? known))
        {
            return (T)known;
        }

        T made = workOut(book);
        kept[typeof(T)] = made;
        return made;
    }

    /// <inheritdoc/>
    public bool Equals(BookMemory? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BookMemory);

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
