using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Screens.Shell;

namespace Payday.Screens.Forms;

/// <summary>
/// What was typed in a form so far. It is stored as each field is left, so that a terminal that goes loses none of it, and
/// is forgotten in the same step in which the form is done.
/// </summary>
/// <param name="session">The book that keeps it.</param>
/// <param name="name">The name of the form: a word of its own, the same in every version.</param>
internal sealed class KeptForm(BookSession session, string name)
{
    /// <summary>Whether anything stands in it.</summary>
    public bool IsBegun => Draft is not null;

    private FormDraft? Draft => session.Book.Weeks.FormOf(name);

    /// <summary>What was typed in a field; null where nothing was.</summary>
    public string? this[string field] => Draft?.Texts.GetValueOrDefault(field);

    /// <summary>Keeps what was typed in fields; null empties one.</summary>
    public void Keep(params IEnumerable<(string Field, string? Text)> typed)
    {
        ImmutableSortedDictionary<string, string> before = Draft?.Texts ?? ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);
        ImmutableSortedDictionary<string, string> after = typed.Aggregate(
            before, (texts, one) => one.Text is { } text ? texts.SetItem(one.Field, text) : texts.Remove(one.Field));
        if (after != before)
        {
            Store(after);
        }
    }

    /// <summary>Forgets all of it.</summary>
    public void Forget()
    {
        if (IsBegun)
        {
            Store(ImmutableSortedDictionary<string, string>.Empty);
        }
    }

    /// <summary>Stores what the form was for, and forgets the form in the same step.</summary>
    public void Done(Book after) => session.Take(With(after, ImmutableSortedDictionary<string, string>.Empty));

    private void Store(ImmutableSortedDictionary<string, string> texts) => session.Take(With(session.Book, texts));

    private Book With(Book book, ImmutableSortedDictionary<string, string> texts) =>
        book with { Weeks = book.Weeks.With(new FormDraft(name, texts)) };
}
