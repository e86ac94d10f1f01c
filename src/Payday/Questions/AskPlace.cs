using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Books;

namespace Payday.Questions;

/// <summary>The question that is asked now, kept in the book as forms are, so that the next time goes on there.</summary>
internal static class AskPlace
{
    private const string Form = "ask";
    private const string At = " at";

    /// <summary>The parts that were open, from the outermost in, each with its question; none where nothing was.</summary>
    public static IEnumerable<(string Part, string Question)> Of(Book book)
    {
        ImmutableSortedDictionary<string, string>? texts = book.Weeks.FormOf(Form)?.Texts;
        for (int i = 1; texts?.GetValueOrDefault(Number(i)) is { } part; i++)
        {
            yield return (part, texts.GetValueOrDefault(Number(i) + At, ""));
        }
    }

    /// <summary>The book in which they are kept; it is the same where they are already.</summary>
    public static Book In(Book book, IReadOnlyList<(string Part, string Question)> open)
    {
        if (Of(book).SequenceEqual(open))
        {
            return book;
        }

        ImmutableSortedDictionary<string, string> texts = open
            .SelectMany((one, i) => new[] { KeyValuePair.Create(Number(i + 1), one.Part), KeyValuePair.Create(Number(i + 1) + At, one.Question) })
            .ToImmutableSortedDictionary(StringComparer.Ordinal);
        return book with { Weeks = book.Weeks.With(new FormDraft(Form, texts)) };
    }

    private static string Number(int i) => i.ToString(CultureInfo.InvariantCulture);
}
