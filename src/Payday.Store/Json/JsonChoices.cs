namespace Payday.Store.Json;

/// <summary>The words a file has for the values of a type, both ways.</summary>
/// <typeparam name="T">The type.</typeparam>
/// <param name="choices">A different word for each value.</param>
public sealed class JsonChoices<T>(params (string Word, T Value)[] choices)
    where T : struct
{
    /// <summary>The words, in the order given.</summary>
    public IReadOnlyList<string> Words { get; } = [.. choices.Select(choice => choice.Word)];

    /// <summary>The value of a word; none for an unknown one.</summary>
    public T? Find(string word)
    {
        foreach ((string known, T value) in choices)
        {
            if (known == word)
            {
                return value;
            }
        }

        return null;
    }

    /// <summary>The word for a value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no word for it.</exception>
    public string WordFor(T value)
    {
        foreach ((string word, T known) in choices)
        {
            if (EqualityComparer<T>.Default.Equals(known, value))
            {
                return word;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "There is no word for this value.");
    }
}
