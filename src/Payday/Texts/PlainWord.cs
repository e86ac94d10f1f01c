using System.Collections.Immutable;

namespace Payday.Texts;

/// <summary>A word of the program, what it means, and how it stands in texts.</summary>
/// <param name="Word">As the help page shows it.</param>
/// <param name="Meaning">A sentence that goes on after a colon.</param>
/// <param name="Forms">In lower case, each a word or some, such as <c>fill</c> and <c>fills</c>.</param>
internal sealed record PlainWord(string Word, string Meaning, params ImmutableArray<string> Forms)
{
    /// <summary>Whether it stands in a text, whatever the case, as a word of its own and not as a part of another.</summary>
    public bool IsIn(string text) => Forms.Any(form => Stands(text, form));

    private static bool Stands(string text, string form)
    {
        for (int at = text.IndexOf(form, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(form, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            int end = at + form.Length;
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end])))
            {
                return true;
            }
        }

        return false;
    }
}
