using Payday.Core.Books;

namespace Payday.Screens.Shell;

/// <summary>Something worked out from the book, anew where the book is another: what a screen leads to may change it.</summary>
/// <typeparam name="T">What.</typeparam>
/// <param name="session">The book.</param>
/// <param name="workOut">Works it out from the book as it is.</param>
internal sealed class OfBook<T>(BookSession session, Func<T> workOut)
{
    private Book? of;

    /// <summary>It, of the book as it is now.</summary>
    public T Value
    {
        get
        {
            if (!ReferenceEquals(of, session.Book))
            {
                (of, field) = (session.Book, workOut());
            }

            return field;
        }
    } = default!;
}
