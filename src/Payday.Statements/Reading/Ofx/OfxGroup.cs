namespace Payday.Statements.Reading.Ofx;

/// <summary>The values of one group of tags, in order. A tag may repeat, as MEMO does.</summary>
internal sealed class OfxGroup(string name, int place)
{
    // Far above what the DTD has, so that a damaged file can't gather without end.
    private const int MostValues = 64;

    private readonly List<(string Name, string Value, int Place)> values = [];
    private List<OfxGroup>? subs;

    /// <summary>The tag of the group.</summary>
    public string Name { get; } = name;

    /// <summary>The line of the file where it begins.</summary>
    public int Place { get; } = place;

    /// <summary>Adds a value.</summary>
    public void Add(string tag, string value, int at)
    {
        if (values.Count < MostValues)
        {
            values.Add((tag, value, at));
        }
    }

    /// <summary>The first value of a tag, empty for none.</summary>
    public string Text(string tag) => values.Find(value => value.Name == tag).Value ?? "";

    /// <summary>All values of a tag.</summary>
    public IEnumerable<string> Texts(string tag) => values.Where(value => value.Name == tag).Select(value => value.Value);

    /// <summary>The line of a tag's first value; of the group where it has none.</summary>
    public int PlaceOf(string tag) => values.Find(value => value.Name == tag) is { Place: > 0 } found ? found.Place : Place;

    /// <summary>A group within this one.</summary>
    public OfxGroup? Find(string tag) => subs?.Find(sub => sub.Name == tag);

    /// <summary>A group within this one, begun.</summary>
    public OfxGroup Sub(string tag, int at)
    {
        var sub = new OfxGroup(tag, at);
        subs ??= [];
        if (subs.Count < MostValues)
        {
            subs.Add(sub);
        }

        return sub;
    }
}
