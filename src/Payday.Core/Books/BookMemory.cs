namespace Payday.Core.Books;

/// <summary>Something that was worked out from a book once, kept with it until one of the things it comes from is another.</summary>
/// <remarks>
/// It says nothing of the book that the book doesn't say itself, so any two are equal. A book that differs in its draft
/// alone shares it: a routine asks at each key for what takes longer to work out than a key may.
/// </remarks>
internal sealed class BookMemory : IEquatable<BookMemory>
{
    private object? kept;

    /// <summary>What is kept, worked out where it is not yet.</summary>
    public T Of<T>(Book book, Func<Book, T> workOut)
        where T : class
    {
        if (kept is not T known)
        {
            kept = known = workOut(book);
        }

        return known;
    }

    /// <inheritdoc/>
    public bool Equals(BookMemory? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BookMemory);

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
