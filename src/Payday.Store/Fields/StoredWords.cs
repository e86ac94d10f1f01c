namespace Payday.Store.Fields;

/// <summary>The words by which documents hold the members of an enum: written down one by one, so that no other name of a member changes what is stored.</summary>
/// <param name="words">Each member with its word. A word that was ever written stays.</param>
internal sealed class StoredWords<T>(params (string Word, T Value)[] words)
    where T : struct, Enum
{
    /// <summary>The words, in the order in which they were written down.</summary>
    public IEnumerable<string> All => words.Select(one => one.Word);

    /// <summary>The word for a member.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It has none.</exception>
    public string WordFor(T value)
    {
        foreach ((string word, T known) in words)
        {
            if (EqualityComparer<T>.Default.Equals(known, value))
            {
                return word;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "There is no stored word for this.");
    }

    /// <summary>The member that a word stands for.</summary>
    /// <exception cref="FormatException">No member has this word.</exception>
    public T ValueOf(string word)
    {
        foreach ((string known, T value) in words)
        {
            if (known == word)
            {
                return value;
            }
        }

        throw new FormatException($"'{word}' is no word for one of {string.Join(", ", All)}.");
    }
}
