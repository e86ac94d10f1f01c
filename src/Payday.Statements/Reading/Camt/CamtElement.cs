namespace Payday.Statements.Reading.Camt;

/// <summary>One element of a camt message by its local name, with all that is in it.</summary>
/// <param name="name">The local name.</param>
/// <param name="line">The line of the file where it begins.</param>
internal sealed class CamtElement(string name, int line)
{
    private List<CamtElement>? children;

    /// <summary>The local name.</summary>
    public string Name { get; } = name;

    /// <summary>The line of the file where it begins.</summary>
    public int Line { get; } = line;

    /// <summary>The text directly in it, without blanks around it.</summary>
    public string Text { get; set; } = "";

    /// <summary>The currency written at an amount; empty for none.</summary>
    public string CurrencyCode { get; init; } = "";

    /// <summary>The elements directly in it, in order.</summary>
    public IReadOnlyList<CamtElement> Children => children ?? [];

    /// <summary>Puts an element in.</summary>
    public void Add(CamtElement child) => (children ??= []).Add(child);

    /// <summary>All elements directly in it with a name.</summary>
    public IEnumerable<CamtElement> All(string child) => Children.Where(one => one.Name == child);

    /// <summary>The first element along a path of names, or null.</summary>
    public CamtElement? Find(params ReadOnlySpan<string> path)
    {
        CamtElement? found = this;
        foreach (string step in path)
        {
            found = found.children?.Find(child => child.Name == step);
            if (found is null)
            {
                return null;
            }
        }

        return found;
    }

    /// <summary>The text of the first element along a path, empty for none.</summary>
    public string TextOf(params ReadOnlySpan<string> path) => Find(path)?.Text ?? "";
}
