namespace Payday.Store.Fields;

/// <summary>Texts by number, each once: the number that stands for one is its place here, from 1.</summary>
internal sealed class TextTable
{
    private readonly OrderedDictionary<string, int> texts = new(StringComparer.Ordinal);

    /// <summary>All texts so far, in the order of their numbers.</summary>
    public IReadOnlyCollection<string> All => texts.Keys;

    /// <summary>The number of a text.</summary>
    public int NumberOf(string text)
    {
        if (!texts.TryGetValue(text, out int number))
        {
            number = texts.Count + 1;
            texts.Add(text, number);
        }

        return number;
    }
}
